package undercroft.view.kit;

import java.util.Locale;
import javafx.geometry.HPos;
import javafx.geometry.VPos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.Priority;
import javafx.scene.layout.RowConstraints;
import javafx.scene.layout.VBox;
import undercroft.app.shelf.BatchPage;
import undercroft.wording.Messages;
import undercroft.wording.Why;

/** Where a figure comes from: how it is reckoned, from what, what was taken for granted, and the source. */
final class WhyView extends VBox {
    private static final double WIDTH = 430;

    WhyView(Messages messages, BatchPage.Figure figure) {
        super(6);
        getStyleClass().add("why");
        setId("why");
        setPrefWidth(WIDTH);
        setMaxWidth(WIDTH);
        Why why = figure.why();
        getChildren().addAll(title(why.title()), text(sentence(why.how())));
        if (!why.inputs().isEmpty()) {
            GridPane inputs = grid();
            for (int row = 0; row < why.inputs().size(); row++) {
                Why.Input input = why.inputs().get(row);
                inputs.addRow(row, text(input.name()), strong(input.value()));
            }
            getChildren().addAll(heading(messages, "why.inputs"), inputs);
        }
        if (!why.assumptions().isEmpty()) {
            GridPane assumptions = grid();
            for (int row = 0; row < why.assumptions().size(); row++) {
                Why.Assumption assumption = why.assumptions().get(row);
                Label grade = new Label(messages.nameOf(assumption.grade()));
                grade.getStyleClass().add("grade");
                grade.setMinWidth(USE_PREF_SIZE);
                assumptions.addRow(row, text(sentence(assumption.text())), grade);
            }
            getChildren().addAll(heading(messages, "why.assumptions"), assumptions);
        }
        if (!why.source().isEmpty()) {
            getChildren().addAll(heading(messages, "why.source"), text(sentence(why.source())));
        }
    }

    private static String sentence(String words) {
        return words.isEmpty() ? words : words.substring(0, 1).toUpperCase(Locale.ENGLISH) + words.substring(1);
    }

    private static GridPane grid() {
        GridPane grid = new GridPane(12, 4);
        ColumnConstraints words = new ColumnConstraints();
        words.setHgrow(Priority.ALWAYS);
        words.setMinWidth(WIDTH * 0.42);
        ColumnConstraints values = new ColumnConstraints();
        values.setHalignment(HPos.RIGHT);
        values.setMaxWidth(WIDTH * 0.55);
        grid.getColumnConstraints().addAll(words, values);
        RowConstraints top = new RowConstraints();
        top.setValignment(VPos.TOP);
        grid.getRowConstraints().add(top);
        return grid;
    }

    private static Node title(String words) {
        Label title = new Label(words);
        title.setWrapText(true);
        title.getStyleClass().add("why-title");
        return title;
    }

    private static Node heading(Messages messages, String key) {
        Label heading = new Label(messages.of(key));
        heading.getStyleClass().add("why-heading");
        return heading;
    }

    private static Node strong(String words) {
        Label strong = new Label(words);
        strong.setWrapText(true);
        strong.getStyleClass().add("why-value");
        return strong;
    }

    private static Label text(String words) {
        Label text = new Label(words);
        text.setWrapText(true);
        text.setMinHeight(USE_PREF_SIZE);
        return text;
    }
}
