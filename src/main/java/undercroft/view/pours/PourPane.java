package undercroft.view.pours;

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
import javafx.scene.layout.VBox;
import undercroft.app.Texts;
import undercroft.app.pours.PourPage;
import undercroft.app.pours.PoursViewModel;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Lot;
import undercroft.cellar.Pour;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.Concern;
import undercroft.outlook.PourPlan;
import undercroft.outlook.Wording;
import undercroft.report.ChillPicture;
import undercroft.view.AlertSign;
import undercroft.view.Looks;
import undercroft.view.Parts;
import undercroft.view.PlotsView;

/** The pour that is chosen: when to do what, what stands in the way, the beer's temperature, how to pour it. */
final class PourPane extends ScrollPane {
    private final PoursViewModel model;
    private final Parts parts;
    private final VBox page = new VBox();
    private final PlotsView plots;
    private String shownPour = "";

    PourPane(PoursViewModel model, Parts parts) {
        this.model = model;
        this.parts = parts;
        plots = new PlotsView(second -> Wording.of(outlook()).dayAndTime(Instant.ofEpochSecond(second)));
        plots.setMinHeight(240);
        plots.setPrefHeight(300);
        VBox.setVgrow(plots, Priority.ALWAYS);
        page.getStyleClass().add("batch-page");
        setContent(page);
        setFitToWidth(true);
        setFitToHeight(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setFocusTraversable(false);
        getStyleClass().add("batch");
        model.pageProperty().addListener((property, before, after) -> fill());
        parts.dark().addListener((property, before, after) -> fill());
        fill();
    }

    private CellarOutlook outlook() {
        return parts.forecasts().outlookProperty().get();
    }

    private void fill() {
        page.getChildren().clear();
        Optional<PourPage> shown = model.pageProperty().get();
        if (shown.isEmpty()) {
            page.getChildren().add(nothing());
            return;
        }
        PourPage pour = shown.get();
        page.getChildren().addAll(titleRow(pour), wrapped(pour.headline(), "headline", "pour-headline"));
        for (Concern concern : pour.concerns()) {
            page.getChildren().add(concern(concern));
        }
        page.getChildren().add(figures(pour));
        if (ChillPicture.exists(pour.plan())) {
            draw(pour.plan());
            page.getChildren().add(plots);
        }
        page.getChildren().add(wrapped(pour.why(), "faint", "pour-why"));
        if (!pour.plan().pour().note().isEmpty()) {
            page.getChildren().add(wrapped(pour.plan().pour().note(), "pour-note", "pour-note"));
        }
        Label title = new Label(Texts.of("pours.pouring.title"));
        title.getStyleClass().add("tonight-what");
        VBox note = new VBox(2, title, wrapped(PourPlan.POURING_NOTE, "pour-how", "pour-how"));
        note.getStyleClass().add("pour-pouring");
        page.getChildren().add(note);
    }

    private void draw(PourPlan plan) {
        CellarOutlook outlook = outlook();
        plots.setPalette(Looks.palette(parts.dark().get()));
        plots.show(
                ChillPicture.of(
                        plan,
                        outlook.cellar().zone(),
                        outlook.cellar().settings().units(),
                        outlook.at()),
                plan.pour().id().equals(shownPour));
        shownPour = plan.pour().id();
    }

    private Node titleRow(PourPage shown) {
        Label name = new Label(shown.title());
        name.getStyleClass().add("batch-title");
        name.setId("pour-title");
        name.setMaxWidth(Double.MAX_VALUE);
        HBox.setHgrow(name, Priority.ALWAYS);
        Pour pour = shown.plan().pour();
        HBox row = new HBox(
                name,
                action("pour-take", "pours.action.take", () -> take(shown.plan())),
                action("pour-edit", "pours.action.edit", () -> parts.editors().editPour(pour)),
                action("pour-remove", "pours.action.remove", () -> model.remove(pour)));
        row.getStyleClass().add("batch-title-row");
        row.setAlignment(Pos.CENTER_LEFT);
        return row;
    }

    /** Opens the bottles of the pour, once it is poured. */
    private void take(PourPlan plan) {
        Cellar cellar = parts.workspace().getCellar();
        Batch batch = cellar.batch(plan.pour().batchId());
        Lot lot = plan.chilling()
                .map(chilling -> batch.lot(chilling.lotId()))
                .orElse(batch.lots().get(0));
        parts.editors().draw(batch, lot);
    }

    private Button action(String id, String key, Runnable act) {
        Button button = new Button(Texts.of(key));
        button.setId(id);
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.getStyleClass().add("quiet");
        button.setOnAction(event -> parts.faults().guard(act));
        return button;
    }

    private static Node concern(Concern concern) {
        Label sentence = new Label(concern.sentence());
        sentence.setWrapText(true);
        sentence.setMinHeight(Region.USE_PREF_SIZE);
        HBox.setHgrow(sentence, Priority.ALWAYS);
        HBox line = new HBox(12, new AlertSign(concern.alert()), sentence);
        line.getStyleClass().addAll("caution", AlertSign.styleClass(concern.alert()));
        line.setAccessibleText(
                Texts.of("pours.concern.sentence", concern.alert().label(), concern.sentence()));
        return line;
    }

    private static Node figures(PourPage shown) {
        HBox figures = new HBox();
        figures.getStyleClass().add("pour-figures");
        for (PourPage.Figure figure : shown.figures()) {
            Label name = styled(figure.label(), "figure-name");
            Label value = styled(figure.value(), "figure-value");
            value.setId("pour-figure-" + figure.id());
            Label detail = wrapped(figure.detail(), "figure-detail", "pour-detail-" + figure.id());
            VBox tile = new VBox(1, name, value, detail);
            tile.setPrefWidth(160);
            HBox.setHgrow(tile, Priority.ALWAYS);
            figures.getChildren().add(tile);
        }
        return figures;
    }

    private Node nothing() {
        Label title = styled(Texts.of("pours.empty.title"), "empty-title");
        Label text = wrapped(Texts.of("pours.empty.text"), "empty-text", "pours-empty");
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
