package undercroft.view.shelf;

import java.time.Instant;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.geometry.Pos;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import undercroft.app.shelf.BatchPage;
import undercroft.app.shelf.BatchViewModel;
import undercroft.cellar.Batch;
import undercroft.cellar.Lot;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.lot.Cause;
import undercroft.outlook.lot.LotOutlook;
import undercroft.picture.BatchPicture;
import undercroft.picture.PictureSpan;
import undercroft.plot.PlotStack;
import undercroft.series.Band;
import undercroft.view.kit.CautionView;
import undercroft.view.kit.Editors;
import undercroft.view.kit.FigureTile;
import undercroft.view.kit.Looks;
import undercroft.view.kit.PlotsView;
import undercroft.view.kit.WindowContext;
import undercroft.wording.ShelfWords;


/** The page of the batch that is chosen. */
public final class BatchView extends ScrollPane {
    private final BatchViewModel model;
    private final WindowContext context;
    private final Consumer<String> planBatch;
    private final VBox page = new VBox();
    private final PlotsView plots;
    private final BatchListsView lists;
    private String shownLot = "";

    public BatchView(BatchViewModel model, WindowContext context, Consumer<String> planBatch) {
        this.model = model;
        this.context = context;
        this.planBatch = planBatch;
        plots = new PlotsView(context.messages(), epochSecond -> words().dayAndTime(Instant.ofEpochSecond(epochSecond)));
        lists = new BatchListsView(context.messages(), 
                context.editors(),
                new StockView(context),
                row -> context.faults().guard(() -> {
                    row.reading().ifPresent(model::remove);
                    row.drawn().ifPresent(model::remove);
                }));
        page.getStyleClass().add("batch-page");
        page.setId("batch-page");
        setContent(page);
        setFitToWidth(true);
        setFitToHeight(true);
        setHbarPolicy(ScrollBarPolicy.NEVER);
        setFocusTraversable(false);
        getStyleClass().add("batch");
        VBox.setVgrow(plots, Priority.ALWAYS);
        plots.setMinHeight(360);
        plots.setPrefHeight(360);
        model.pageProperty().addListener((property, before, after) -> fill());
        context.dark().addListener((property, before, after) -> fill());
        context.forecasts().outlookProperty().addListener((property, before, after) -> {
            if (before == null) {
                fill();
            }
        });
        fill();
    }

    private ShelfWords words() {
        return ShelfWords.of(context.forecasts().outlookProperty().get(), context.messages());
    }

    private void fill() {
        BatchPage shown = model.pageProperty().get();
        page.getChildren().clear();
        if (shown == null) {
            boolean known = context.forecasts().outlookProperty().get() != null;
            page.getChildren()
                    .add(
                            known
                                    ? note("batch.none.title", "batch.none.text")
                                    : note("batch.working.title", "batch.working.text"));
            return;
        }
        Label headline = new Label(shown.headline());
        headline.getStyleClass().add("headline");
        headline.setId("headline");
        headline.setWrapText(true);
        headline.setMinHeight(USE_PREF_SIZE);
        page.getChildren().addAll(titleRow(shown), headline);
        if (shown.lot().isEmpty()) {
            page.getChildren().add(planned(shown.batch().batch()));
            return;
        }
        if (shown.lots().size() > 1) {
            page.getChildren().add(lotPicker(shown));
        }
        if (!shown.cautions().isEmpty()) {
            page.getChildren()
                    .add(new CautionView(context.messages(), shown.lot().get().verdict().alert(Cause.Topic.PRESSURE), shown.cautions()));
        }
        HBox figures = new HBox();
        figures.getStyleClass().add("figures");
        for (BatchPage.Figure figure : shown.figures()) {
            FigureTile tile = new FigureTile(context.messages(), figure, context.dark().get());
            HBox.setHgrow(tile, Priority.ALWAYS);
            figures.getChildren().add(tile);
        }
        lists.show(shown);
        page.getChildren().addAll(figures, plots, lists);
        drawPlots(shown, shown.lot().get());
    }

    private void drawPlots(BatchPage shown, LotOutlook lot) {
        CellarOutlook outlook = context.forecasts().outlookProperty().get();
        Band trajectory = lot.carbonation().trajectory();
        Instant capped = shown.batch().batch().cappedAt().orElse(outlook.at());
        Instant end =
                trajectory.size() == 0 ? outlook.at() : Instant.ofEpochSecond(trajectory.timeAt(trajectory.size() - 1));
        long margin = Math.max(3600, (outlook.at().getEpochSecond() - capped.getEpochSecond()) / 40);
        PlotStack stack = BatchPicture.of(
                shown.batch(),
                lot,
                ShelfWords.of(outlook, context.messages()),
                capped.minusSeconds(margin),
                end.plusSeconds(1),
                outlook.at());
        String key = shown.batch().id() + "/" + lot.lot().id();
        plots.setPalette(Looks.palette(context.dark().get()));
        plots.show(stack, PictureSpan.until(outlook, shown.batch(), lot).getEpochSecond(), key.equals(shownLot));
        shownLot = key;
    }

    private Node titleRow(BatchPage shown) {
        Label name = new Label(shown.title());
        name.getStyleClass().add("batch-title");
        name.setId("batch-title");
        HBox.setHgrow(name, Priority.ALWAYS);
        name.setMaxWidth(Double.MAX_VALUE);
        HBox row = new HBox(name);
        row.getStyleClass().add("batch-title-row");
        row.setAlignment(Pos.CENTER_LEFT);
        Editors editors = context.editors();
        Batch batch = shown.batch().batch();
        Optional<Lot> lot = shown.lot().map(LotOutlook::lot);
        if (lot.isPresent() && shown.batch().bottlesLeft() > 0) {
            row.getChildren()
                    .addAll(
                            action("batch.action.draw", () -> editors.draw(batch, lot.get())),
                            action("batch.action.read", () -> editors.read(batch, lot.get())),
                            action("batch.action.move", () -> editors.move(batch, lot.get())));
        }
        row.getChildren().add(action("batch.action.edit", () -> edit(batch)));
        return row;
    }

    private Button action(String key, Runnable act) {
        Button button = new Button(context.messages().of(key));
        button.setMinWidth(Region.USE_PREF_SIZE);
        button.getStyleClass().add("quiet");
        button.setOnAction(event -> act.run());
        return button;
    }

    private Node lotPicker(BatchPage shown) {
        ComboBox<BatchPage.LotChoice> picker = new ComboBox<>();
        picker.setId("lot-picker");
        picker.getItems().addAll(shown.lots());
        picker.setConverter(new StringConverter<>() {
            @Override
            public String toString(BatchPage.LotChoice choice) {
                return choice == null ? "" : choice.label();
            }

            @Override
            public BatchPage.LotChoice fromString(String text) {
                throw new UnsupportedOperationException("a lot is chosen, not typed");
            }
        });
        shown.lots().stream().filter(BatchPage.LotChoice::chosen).findFirst().ifPresent(picker::setValue);
        picker.setAccessibleText(context.messages().of("batch.lot.sentence"));
        picker.setOnAction(event -> model.chooseLot(picker.getValue().lotId()));
        FlowPane row = new FlowPane(picker);
        row.getStyleClass().add("lot-row");
        return row;
    }

    /** A batch that is still to be bottled is changed on bottling day. */
    private void edit(Batch batch) {
        if (batch.cappedAt().isEmpty()) {
            planBatch.accept(batch.id());
        } else {
            context.editors().editBatch(batch);
        }
    }

    private Node planned(Batch batch) {
        VBox note = note("batch.planned.title", "batch.planned.text");
        Button finish = new Button(context.messages().of("batch.planned.finish"));
        finish.getStyleClass().add("accent");
        finish.setOnAction(event -> context.faults().guard(() -> edit(batch)));
        note.getChildren().add(finish);
        return note;
    }

    private VBox note(String titleKey, String textKey) {
        Label title = new Label(context.messages().of(titleKey));
        title.getStyleClass().add("empty-title");
        Label text = new Label(context.messages().of(textKey));
        text.getStyleClass().add("empty-text");
        text.setWrapText(true);
        VBox note = new VBox(8, title, text);
        note.getStyleClass().add("empty-note");
        return note;
    }

    PlotsView plots() {
        return plots;
    }
}
