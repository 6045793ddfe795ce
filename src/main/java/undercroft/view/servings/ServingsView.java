package undercroft.view.servings;

import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import undercroft.app.servings.ServingForm;
import undercroft.app.servings.ServingsViewModel;
import undercroft.view.kit.AlertSign;
import undercroft.view.kit.Widths;
import undercroft.view.kit.WindowContext;
import undercroft.wording.AlertWords;

/** Left the servings to come and which batch to take, right the serving that is chosen. */
public final class ServingsView extends HBox {
    private static final double LIST_SHARE = 0.36;
    private static final double LEAST_SIDE = 320;
    /** Less than this, and list, serving and choice stand below each other. */
    private static final double BESIDE = 1000;

    private final ServingsViewModel model;
    private final WindowContext context;
    private final VBox list = new VBox();
    private final VBox column = new VBox();
    private final ScrollPane side = new ScrollPane();
    private final VBox below = new VBox(12);
    private final Node header;
    private final ServingView pane;
    private final ServingChoiceView choice;

    public ServingsView(ServingsViewModel model, WindowContext context) {
        this.context = context;
        this.model = model;
        getStyleClass().addAll("middle", "servings");
        setId("servings");
        list.getStyleClass().add("serving-list");
        column.getStyleClass().add("serving-column");
        side.setContent(column);
        choice = new ServingChoiceView(model, context);
        header = header();
        pane = new ServingView(model, context);
        ScrollPane scroll = side;
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setFocusTraversable(false);
        scroll.getStyleClass().add("serving-side");
        scroll.prefWidthProperty().bind(widthProperty().multiply(LIST_SHARE));
        scroll.setMinWidth(LEAST_SIDE);
        setMinWidth(0);
        scroll.setMaxWidth(640);
        HBox.setHgrow(pane, Priority.ALWAYS);
        HBox.setHgrow(below, Priority.ALWAYS);
        pane.setPrefWidth(600);
        pane.setMinWidth(0);
        below.setMinWidth(0);
        arrange(true);
        Widths.follow(this, width -> arrange(width >= BESIDE));
        model.linesProperty().addListener((property, before, after) -> fill());
        fill();
    }

    private void arrange(boolean beside) {
        if (getChildren().contains(beside ? side : below)) {
            return;
        }
        if (beside) {
            below.getChildren().clear();
            pane.setMinHeight(0);
            column.getChildren().setAll(header, list, choice);
            getChildren().setAll(side, pane);
        } else {
            column.getChildren().clear();
            pane.setMinHeight(USE_PREF_SIZE);
            getChildren().clear();
            below.getChildren().setAll(header, list, pane, choice);
            getChildren().setAll(below);
        }
    }

    private Node header() {
        Label title = new Label(context.messages().of("servings.title"));
        title.getStyleClass().add("section-title");
        title.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(title, Priority.ALWAYS);
        Button add = new Button(context.messages().of("servings.add.button"));
        add.setId("serving-add");
        add.setMinWidth(Region.USE_PREF_SIZE);
        add.getStyleClass().add("quiet");
        add.setOnAction(event -> context.editors().addServing(ServingForm.Wish.OPEN));
        HBox row = new HBox(title, new CalendarMenu(context), add);
        row.setAlignment(Pos.CENTER_LEFT);
        row.getStyleClass().add("shelf-header");
        return row;
    }

    private void fill() {
        list.getChildren().clear();
        if (model.linesProperty().get().isEmpty()) {
            Label none = new Label(context.messages().of("servings.none.text"));
            none.getStyleClass().add("empty-text");
            none.setWrapText(true);
            list.getChildren().add(none);
        }
        model.linesProperty().get().forEach(line -> list.getChildren().add(row(line)));
    }

    private Node row(ServingsViewModel.Line line) {
        Label what = new Label(line.what());
        what.getStyleClass().add("todo-what");
        what.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(what, Priority.ALWAYS);
        Label when = new Label(line.when());
        when.setMinWidth(Region.USE_PREF_SIZE);
        Label chill = new Label(line.chill());
        chill.getStyleClass().add("faint");
        VBox words = new VBox(2, new HBox(8, what, when), chill);
        HBox.setHgrow(words, Priority.ALWAYS);
        HBox content = new HBox(10, new AlertSign(line.alert()), words);
        content.setAlignment(Pos.CENTER_LEFT);
        Button row = new Button(null, content);
        row.setId("serving-" + line.serving().id());
        row.getStyleClass().add("serving-line");
        if (line.chosen()) {
            row.getStyleClass().add("chosen");
        }
        row.setMaxWidth(Double.MAX_VALUE);
        row.setAccessibleText(new AlertWords(context.messages())
                .before(
                        line.alert(),
                        context.messages().of("servings.line.sentence", line.what(), line.when(), line.chill())));
        row.setOnAction(event -> model.choose(line.serving().id()));
        return row;
    }
}
