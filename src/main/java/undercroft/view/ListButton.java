package undercroft.view;

import java.util.List;
import java.util.function.Consumer;
import javafx.event.ActionEvent;
import javafx.geometry.Pos;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.Tooltip;
import javafx.scene.layout.HBox;
import javafx.scene.layout.VBox;
import org.controlsfx.control.PopOver;
import undercroft.app.ShelfLists;
import undercroft.app.Texts;

/** Opens a short list of the whole shelf; gone while the list is empty. */
final class ListButton extends Button {
    private static final double WIDTH = 560;

    private final String key;
    private final Parts parts;
    private final Consumer<String> chooseBatch;
    private List<ShelfLists.Entry> entries = List.of();

    /** {@code key} names the text that says how many there are. */
    ListButton(String key, Parts parts, Consumer<String> chooseBatch) {
        this.key = key;
        this.parts = parts;
        this.chooseBatch = chooseBatch;
        getStyleClass().add("quiet");
        setMinWidth(USE_PREF_SIZE);
        managedProperty().bind(visibleProperty());
        setVisible(false);
        setOnAction(event -> open());
    }

    void show(List<ShelfLists.Entry> newEntries) {
        entries = newEntries;
        setText(Texts.of(key, entries.size()));
        setVisible(!entries.isEmpty());
    }

    private void open() {
        VBox list = new VBox(2);
        entries.forEach(entry -> list.getChildren().add(line(entry)));
        Popovers.show(this, list, PopOver.ArrowLocation.TOP_LEFT, parts.dark().get());
    }

    private Button line(ShelfLists.Entry entry) {
        Label what = new Label(entry.what());
        what.getStyleClass().add("tonight-what");
        Label why = new Label(entry.why());
        why.getStyleClass().add("faint");
        HBox content = new HBox(10, new AlertSign(entry.alert()), new VBox(what, why));
        content.setAlignment(Pos.CENTER_LEFT);
        Button line = new Button(null, content);
        line.getStyleClass().add("tonight-line");
        line.setPrefWidth(WIDTH);
        line.setAlignment(Pos.CENTER_LEFT);
        line.setAccessibleText(Texts.of("tonight.line.sentence", entry.alert().label(), entry.what(), entry.why()));
        line.setTooltip(new Tooltip(line.getAccessibleText()));
        line.addEventHandler(ActionEvent.ACTION, event -> {
            line.getScene().getWindow().hide();
            chooseBatch.accept(entry.batchId());
        });
        return line;
    }
}
