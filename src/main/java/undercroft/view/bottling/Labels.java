package undercroft.view.bottling;

import java.util.List;
import javafx.geometry.HPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import undercroft.outlook.lot.Alert;
import undercroft.view.kit.AlertSign;
import undercroft.wording.DoseLine;

/** Labels of the kinds these pages use. */
final class Labels {
    private Labels() {}

    static Label of(String text, String... styles) {
        Label label = new Label(text);
        label.setWrapText(true);
        label.setMinHeight(Label.USE_PREF_SIZE);
        label.getStyleClass().addAll(styles);
        return label;
    }

    static Label section(String text) {
        return of(text, "form-section");
    }

    /** A sentence with its shape, for what wants attention. */
    static Node note(Alert alert, String text) {
        Label label = of(text);
        HBox.setHgrow(label, Priority.ALWAYS);
        HBox note = new HBox(10, new AlertSign(alert), label);
        note.getStyleClass().addAll("caution", alert == Alert.ACT ? "alert-act" : "alert-watch");
        return note;
    }

    /** Sentences that should be known, one below the other. */
    static VBox sentences(List<String> all) {
        VBox box = new VBox(5);
        all.forEach(text -> box.getChildren().add(of(text)));
        return box;
    }

    /** Figures with their names. */
    static GridPane figures(List<DoseLine> lines) {
        GridPane grid = new GridPane();
        grid.getStyleClass().add("figure-grid");
        ColumnConstraints names = new ColumnConstraints();
        names.setPercentWidth(42);
        ColumnConstraints values = new ColumnConstraints();
        values.setPercentWidth(58);
        values.setHalignment(HPos.LEFT);
        grid.getColumnConstraints().addAll(names, values);
        for (int i = 0; i < lines.size(); i++) {
            grid.add(of(lines.get(i).label(), "faint"), 0, i);
            grid.add(of(lines.get(i).value(), "figure-line"), 1, i);
        }
        return grid;
    }
}
