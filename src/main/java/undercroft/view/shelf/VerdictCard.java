package undercroft.view.shelf;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import undercroft.app.shelf.BatchPage;
import undercroft.app.shelf.ToDoViewModel;
import undercroft.markup.NoBreak;
import undercroft.outlook.lot.Alert;
import undercroft.view.kit.AlertSign;
import undercroft.wording.Messages;

/** The one sentence about a batch, what to do about it, and what to heed while doing it. */
final class VerdictCard extends VBox {
    VerdictCard(Messages messages, BatchPage page, List<ToDoViewModel.Line> lines, ToDoActions actions) {
        getStyleClass().addAll("verdict", AlertSign.styleClass(page.alert()));
        setId("verdict");
        Label headline = wrapped(page.headline(), "headline");
        headline.setId("headline");
        HBox lead = new HBox(10, headline);
        HBox.setHgrow(headline, Priority.ALWAYS);
        if (page.alert() != Alert.CLEAR) {
            lead.getChildren().add(0, AlertSign.withWord(messages, page.alert()));
        }
        lead.getStyleClass().add("verdict-lead");
        getChildren().add(lead);
        lines.forEach(line -> getChildren().add(step(line, actions)));
        if (!page.cautions().isEmpty()) {
            Label caution = wrapped(String.join(" ", page.cautions()), "verdict-caution");
            caution.setId("caution");
            getChildren().add(caution);
        }
    }

    private static Node step(ToDoViewModel.Line line, ToDoActions actions) {
        Label what = new Label(line.what());
        what.getStyleClass().add("todo-what");
        Label why = wrapped(actions.because(line), "faint");
        VBox said = new VBox(what, why);
        said.setMinWidth(120);
        HBox.setHgrow(said, Priority.ALWAYS);
        HBox step = new HBox(4, said);
        if (!ToDoActions.isToShow(line)) {
            step.getChildren().add(actions.first(line));
        }
        step.getChildren().addAll(actions.done(line), actions.menu(line));
        step.setAlignment(Pos.CENTER_LEFT);
        step.getStyleClass().add("verdict-step");
        return step;
    }

    private static Label wrapped(String words, String styleClass) {
        Label label = new Label(NoBreak.units(words));
        label.getStyleClass().add(styleClass);
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        return label;
    }
}
