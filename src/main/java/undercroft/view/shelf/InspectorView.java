package undercroft.view.shelf;

import java.util.List;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.ColumnConstraints;
import javafx.scene.layout.GridPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import undercroft.app.shelf.BatchPage;
import undercroft.app.shelf.BatchViewModel;
import undercroft.app.shelf.ToDoViewModel;
import undercroft.outlook.lot.Alert;
import undercroft.view.kit.AlertSign;
import undercroft.wording.Messages;

/** The batch that is chosen on the shelf, in short: beside the shelf, or below it in a narrow window. */
final class InspectorView extends StackPane {
    private final Messages messages;

    private static final double LABELS = 104;

    private final BatchViewModel model;
    private final ToDoViewModel toDo;
    private final ToDoActions actions;
    private final Runnable open;
    private boolean beside = true;

    InspectorView(Messages messages, BatchViewModel model, ToDoViewModel toDo, ToDoActions actions, Runnable open) {
        this.messages = messages;
        this.model = model;
        this.toDo = toDo;
        this.actions = actions;
        this.open = open;
        getStyleClass().addAll("inspector", "card");
        setId("inspector");
        model.pageProperty().addListener((property, before, after) -> fill());
        toDo.linesProperty().addListener((property, before, after) -> fill());
        visibleProperty().addListener((property, before, after) -> fill());
        fill();
    }

    void standBeside(boolean isBeside) {
        if (beside != isBeside) {
            beside = isBeside;
            fill();
        }
    }

    private void fill() {
        BatchPage page = model.pageProperty().get();
        if (page == null || !isVisible()) {
            getChildren().clear();
        } else {
            getChildren().setAll(beside ? column(page) : strip(page));
        }
    }

    private Node strip(BatchPage page) {
        Label name = name(page);
        Label headline = headline(page);
        VBox said = new VBox(2, name, headline);
        HBox.setHgrow(said, Priority.ALWAYS);
        HBox strip = new HBox(12, said, openButton());
        if (page.alert() != Alert.CLEAR) {
            strip.getChildren().add(0, AlertSign.withWord(messages, page.alert()));
        }
        strip.setAlignment(Pos.CENTER_LEFT);
        strip.getStyleClass().add("inspector-strip");
        return strip;
    }

    private Node column(BatchPage page) {
        VBox column = new VBox(8);
        column.getStyleClass().add("inspector-column");
        if (page.alert() != Alert.CLEAR) {
            column.getChildren().add(AlertSign.withWord(messages, page.alert()));
        }
        Label where = new Label(page.where());
        where.getStyleClass().add("faint");
        where.setWrapText(true);
        where.setMinHeight(USE_PREF_SIZE);
        column.getChildren().addAll(new VBox(2, name(page), where), headline(page));
        lines(page).forEach(line -> column.getChildren().add(step(line)));
        if (!page.figures().isEmpty()) {
            column.getChildren().add(figures(page));
        }
        ScrollPane scroll = new ScrollPane(column);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setFocusTraversable(false);
        VBox.setVgrow(scroll, Priority.ALWAYS);
        HBox foot = new HBox(openButton());
        foot.getStyleClass().add("inspector-foot");
        return new VBox(scroll, foot);
    }

    private List<ToDoViewModel.Line> lines(BatchPage page) {
        return toDo.linesProperty().get().stream()
                .filter(line -> line.batchId().equals(page.batch().id()))
                .toList();
    }

    private Node step(ToDoViewModel.Line line) {
        Label what = new Label(line.what());
        what.getStyleClass().add("todo-what");
        what.setWrapText(true);
        what.setMinHeight(USE_PREF_SIZE);
        Label why = new Label(actions.because(line));
        why.getStyleClass().add("faint");
        why.setWrapText(true);
        why.setMinHeight(USE_PREF_SIZE);
        HBox buttons = new HBox(actions.first(line), actions.done(line), actions.menu(line));
        buttons.getStyleClass().add("todo-actions");
        VBox step = new VBox(2, what, why, buttons);
        step.getStyleClass().add("inspector-step");
        return step;
    }

    private static Node figures(BatchPage page) {
        GridPane figures = new GridPane(8, 4);
        figures.getStyleClass().add("inspector-figures");
        figures.getColumnConstraints().add(new ColumnConstraints(LABELS));
        int row = 0;
        for (BatchPage.Figure figure : page.figures()) {
            Label label = new Label(figure.label());
            label.getStyleClass().add("faint");
            Label value = new Label(figure.value());
            value.getStyleClass().add("inspector-value");
            value.setWrapText(true);
            figures.addRow(row++, label, value);
        }
        return figures;
    }

    private static Label name(BatchPage page) {
        Label name = new Label(page.title());
        name.getStyleClass().add("inspector-name");
        name.setId("inspector-name");
        name.setWrapText(true);
        return name;
    }

    private static Label headline(BatchPage page) {
        Label headline = new Label(page.headline());
        headline.setId("inspector-headline");
        headline.setWrapText(true);
        headline.setMinHeight(USE_PREF_SIZE);
        return headline;
    }

    private Button openButton() {
        Button button = new Button(messages.of("shelf.inspector.open"));
        button.setId("open-batch");
        button.setMinWidth(USE_PREF_SIZE);
        button.getStyleClass().add("accent");
        button.setOnAction(event -> open.run());
        return button;
    }
}
