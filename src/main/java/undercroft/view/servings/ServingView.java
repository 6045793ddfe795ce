package undercroft.view.servings;

import java.time.Instant;
import java.util.Optional;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import undercroft.app.servings.ServingPage;
import undercroft.app.servings.ServingsViewModel;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Lot;
import undercroft.cellar.Serving;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.serving.ServingPlan;
import undercroft.picture.ChillPicture;
import undercroft.view.kit.AlertSign;
import undercroft.view.kit.Looks;
import undercroft.view.kit.PlotMenu;
import undercroft.view.kit.PlotsView;
import undercroft.view.kit.WindowContext;
import undercroft.wording.AlertWords;
import undercroft.wording.ShelfWords;

/** The pour that is chosen: when to do what, what stands in the way, the beer's temperature, how to pour it. */
final class ServingView extends ScrollPane {
    private final ServingsViewModel model;
    private final WindowContext context;
    private final VBox page = new VBox();
    private final PlotsView plots;
    private String shownServing = "";

    ServingView(ServingsViewModel model, WindowContext context) {
        this.model = model;
        this.context = context;
        plots = new PlotsView(
                context.messages(),
                second -> ShelfWords.of(outlook(), context.messages()).dayAndTime(Instant.ofEpochSecond(second)));
        PlotMenu.on(
                plots,
                context,
                context.messages(),
                () -> model.pageProperty().get().map(ServingPage::title).orElse(""));
        plots.setMinHeight(240);
        plots.setPrefHeight(300);
        page.getStyleClass().add("batch-page");
        setContent(page);
        setFitToWidth(true);
        setFitToHeight(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setFocusTraversable(false);
        getStyleClass().add("batch");
        model.pageProperty().addListener((property, before, after) -> fill());
        context.dark().addListener((property, before, after) -> fill());
        fill();
    }

    private CellarOutlook outlook() {
        return context.forecasts().outlookProperty().get();
    }

    private void fill() {
        page.getChildren().clear();
        Optional<ServingPage> shown = model.pageProperty().get();
        if (shown.isEmpty()) {
            page.getChildren().add(nothing());
            return;
        }
        ServingPage serving = shown.get();
        page.getChildren().addAll(titleRow(serving), wrapped(serving.headline(), "headline", "serving-headline"));
        for (ServingPage.Caution concern : serving.concerns()) {
            page.getChildren().add(concern(concern));
        }
        page.getChildren().add(figures(serving));
        if (ChillPicture.exists(serving.plan())) {
            draw(serving.plan());
            StackPane card = new StackPane(plots);
            card.getStyleClass().addAll("card", "plot-card");
            VBox.setVgrow(card, Priority.ALWAYS);
            page.getChildren().add(card);
        }
        page.getChildren().add(wrapped(serving.why(), "faint", "serving-why"));
        if (!serving.plan().serving().note().isEmpty()) {
            page.getChildren().add(wrapped(serving.plan().serving().note(), "serving-note", "serving-note"));
        }
        Label title = new Label(context.messages().of("servings.pouring.title"));
        title.getStyleClass().add("todo-what");
        VBox note = new VBox(2, title, wrapped(serving.pouring(), "serving-how", "serving-how"));
        note.getStyleClass().add("serving-pouring");
        page.getChildren().add(note);
    }

    private void draw(ServingPlan plan) {
        plots.setPalette(Looks.palette(context.dark().get()));
        plots.show(
                ChillPicture.of(plan, ShelfWords.of(outlook(), context.messages())),
                plan.serving().id().equals(shownServing));
        shownServing = plan.serving().id();
    }

    private Node titleRow(ServingPage shown) {
        Label name = new Label(shown.title());
        name.getStyleClass().add("batch-title");
        name.setId("serving-title");
        name.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(name, Priority.ALWAYS);
        Serving serving = shown.plan().serving();
        HBox row = new HBox(
                name,
                action("serving-take", "servings.action.take", () -> take(shown.plan())),
                action(
                        "serving-edit",
                        "servings.action.edit",
                        () -> context.editors().editServing(serving)),
                action("serving-remove", "servings.action.remove", () -> model.remove(serving)));
        row.getStyleClass().add("batch-title-row");
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    /** Opens the bottles of the pour, once it is poured. */
    private void take(ServingPlan plan) {
        Cellar cellar = context.workspace().getCellar();
        Batch batch = cellar.batch(plan.serving().batchId());
        Lot lot = batch.lot(plan.chilling().lotId());
        context.editors().draw(batch, lot);
    }

    private Button action(String id, String key, Runnable act) {
        Button button = new Button(context.messages().of(key));
        button.setId(id);
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.getStyleClass().add("quiet");
        button.setOnAction(event -> context.faults().guard(act));
        return button;
    }

    private Node concern(ServingPage.Caution concern) {
        Label sentence = new Label(concern.sentence());
        sentence.setWrapText(true);
        sentence.setMinHeight(Region.USE_PREF_SIZE);
        HBox.setHgrow(sentence, Priority.ALWAYS);
        HBox line = new HBox(12, new AlertSign(concern.alert()), sentence);
        line.getStyleClass().addAll("caution", AlertSign.styleClass(concern.alert()));
        line.setAccessibleText(new AlertWords(context.messages()).before(concern.alert(), concern.sentence()));
        return line;
    }

    private static Node figures(ServingPage shown) {
        HBox figures = new HBox();
        figures.getStyleClass().add("serving-figures");
        for (ServingPage.Figure figure : shown.figures()) {
            Label name = styled(figure.label(), "figure-name");
            Label value = styled(figure.value(), "figure-value");
            value.setId("serving-figure-" + figure.id());
            Label detail = wrapped(figure.detail(), "figure-detail", "serving-detail-" + figure.id());
            VBox tile = new VBox(1, name, value, detail);
            tile.getStyleClass().addAll("card", "serving-step");
            tile.setPrefWidth(160);
            tile.setMinWidth(0);
            HBox.setHgrow(tile, Priority.ALWAYS);
            figures.getChildren().add(tile);
        }
        return figures;
    }

    private Node nothing() {
        Label title = styled(context.messages().of("servings.empty.title"), "empty-title");
        Label text = wrapped(context.messages().of("servings.empty.text"), "empty-text", "servings-empty");
        VBox note = new VBox(8, title, text);
        note.getStyleClass().add("empty-note");
        return note;
    }

    private static Label styled(String words, String styleClass) {
        Label label = new Label(words);
        label.getStyleClass().add(styleClass);
        return label;
    }

    private static Label wrapped(String words, String styleClass, String id) {
        Label label = styled(words, styleClass);
        label.setId(id);
        label.setWrapText(true);
        label.setMinHeight(Region.USE_PREF_SIZE);
        return label;
    }
}
