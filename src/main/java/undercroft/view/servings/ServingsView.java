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
import undercroft.view.kit.WindowContext;
import undercroft.wording.AlertWords;

/** Left the pours to come and which batch to take, right the pour that is chosen. */
public final class ServingsView extends HBox {
    private static final double LIST_SHARE = 0.36;

    private final ServingsViewModel model;
    private final WindowContext context;
    private final VBox list = new VBox();

    public ServingsView(ServingsViewModel model, WindowContext context) {
        this.context = context;
        this.model = model;
        getStyleClass().addAll("middle", "pours");
        setId("pours");
        list.getStyleClass().add("pour-list");
        VBox column = new VBox(header(), list, new ServingChoiceView(model, context));
        column.getStyleClass().add("pour-column");
        ScrollPane scroll = new ScrollPane(column);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setFocusTraversable(false);
        scroll.getStyleClass().add("pour-side");
        scroll.prefWidthProperty().bind(widthProperty().multiply(LIST_SHARE));
        scroll.setMinWidth(320);
        setMinWidth(0);
        scroll.setMaxWidth(640);
        ServingView pane = new ServingView(model, context);
        HBox.setHgrow(pane, Priority.ALWAYS);
        pane.setPrefWidth(600);
        pane.setMinWidth(0);
        getChildren().addAll(scroll, pane);
        model.linesProperty().addListener((property, before, after) -> fill());
        fill();
    }

    private Node header() {
        Label title = new Label(context.messages().of("pours.title"));
        title.getStyleClass().add("section-title");
        title.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(title, Priority.ALWAYS);
        Button add = new Button(context.messages().of("pours.add.button"));
        add.setId("pour-add");
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
            Label none = new Label(context.messages().of("pours.none.text"));
            none.getStyleClass().add("empty-text");
            none.setWrapText(true);
            list.getChildren().add(none);
        }
        model.linesProperty().get().forEach(line -> list.getChildren().add(row(line)));
    }

    private Node row(ServingsViewModel.Line line) {
        Label what = new Label(line.what());
        what.getStyleClass().add("tonight-what");
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
        row.setId("pour-" + line.serving().id());
        row.getStyleClass().add("pour-line");
        if (line.chosen()) {
            row.getStyleClass().add("chosen");
        }
        row.setMaxWidth(Double.MAX_VALUE);
        row.setAccessibleText(new AlertWords(context.messages())
                .before(
                        line.alert(),
                        context.messages().of("pours.line.sentence", line.what(), line.when(), line.chill())));
        row.setOnAction(event -> model.choose(line.serving().id()));
        return row;
    }
}
