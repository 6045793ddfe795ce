package undercroft.view;

import java.util.List;
import java.util.Optional;
import javafx.geometry.Insets;
import javafx.scene.control.ButtonBar.ButtonData;
import javafx.scene.control.ButtonType;
import javafx.scene.control.Dialog;
import javafx.scene.control.Label;
import javafx.scene.control.ListView;
import javafx.scene.layout.VBox;
import javafx.stage.Window;
import undercroft.view.kit.Looks;
import undercroft.wording.Messages;

/** Offers earlier versions of a cellar that cannot be read. Nothing is moved or replaced unless a person says so. */
public final class RescueDialog {
    private RescueDialog() {}

    /**
     * Shows the fault and the versions, newest first.
     *
     * @return the index of the version to restore after the unreadable file is moved aside; empty to leave all as it is
     */
    public static Optional<Integer> ask(
            Messages messages, Window owner, String fault, List<String> versions, boolean dark) {
        Dialog<Integer> dialog = new Dialog<>();
        // At the start there is no window yet that could own it.
        if (owner.getScene() != null) {
            dialog.initOwner(owner);
        }
        dialog.setTitle(messages.of("rescue.title"));
        Label sentence = new Label(fault);
        sentence.setWrapText(true);
        sentence.setMaxWidth(480);
        Label offer = new Label(messages.of(versions.isEmpty() ? "rescue.none.text" : "rescue.offer.text"));
        offer.setWrapText(true);
        offer.setMaxWidth(480);
        ListView<String> list = new ListView<>();
        list.setId("rescue-versions");
        list.getItems().setAll(versions);
        list.setPrefHeight(180);
        VBox content = new VBox(12, sentence, offer);
        content.setPadding(new Insets(16, 16, 0, 16));
        if (!versions.isEmpty()) {
            content.getChildren().add(list);
            list.getSelectionModel().select(0);
        }
        dialog.getDialogPane().setContent(content);
        ButtonType restore = new ButtonType(messages.of("rescue.restore.button"), ButtonData.OK_DONE);
        ButtonType leave = new ButtonType(messages.of("rescue.leave.button"), ButtonData.CANCEL_CLOSE);
        if (!versions.isEmpty()) {
            dialog.getDialogPane().getButtonTypes().add(restore);
        }
        dialog.getDialogPane().getButtonTypes().add(leave);
        Looks.dress(dialog.getDialogPane().getScene(), dark);
        dialog.setResultConverter(
                pressed -> pressed == restore ? list.getSelectionModel().getSelectedIndex() : null);
        return dialog.showAndWait().filter(index -> index >= 0);
    }
}
