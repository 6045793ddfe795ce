package undercroft.view.shelf;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.layout.FlowPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.VBox;
import javafx.util.StringConverter;
import undercroft.app.bottling.BrewAgain;
import undercroft.app.evidence.EvidenceViewModel;
import undercroft.app.shelf.BatchPage;
import undercroft.app.shelf.BatchViewModel;
import undercroft.app.shelf.CompareViewModel;
import undercroft.app.shelf.ToDoViewModel;
import undercroft.cellar.Batch;
import undercroft.cellar.Lot;
import undercroft.markup.NoBreak;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.lot.LotOutlook;
import undercroft.picture.BatchPicture;
import undercroft.picture.PictureSpan;
import undercroft.plot.PlotStack;
import undercroft.series.Band;
import undercroft.view.kit.Editors;
import undercroft.view.kit.FigureTile;
import undercroft.view.kit.Looks;
import undercroft.view.kit.PlotMenu;
import undercroft.view.kit.PlotsView;
import undercroft.view.kit.WindowContext;
import undercroft.view.kit.keys.KeptFocus;
import undercroft.wording.ShelfWords;

/** The page of the batch that is chosen: what is so, what to do, figures and plots, with its lists beside them. */
final class BatchView extends VBox {
    private static final double LEAST_PLOTS = 268;

    private final BatchViewModel model;
    private final ToDoViewModel toDo;
    private final ToDoActions actions;
    private final WindowContext context;
    private final Consumer<String> planBatch;
    private final CompareViewModel compare;
    private final EvidenceViewModel evidence;
    private final BatchPapers papers;
    private final BatchBar bar;
    private final VBox above = new VBox();
    private final PlotsView plots;
    private final BatchListsView lists;
    private final BatchBody body;
    private String shownLot = "";
    private String shownBatch = "";

    /** {@code back} leads to the shelf, {@code planBatch} to the bottling day of a batch that is not capped. */
    BatchView(
            BatchViewModel model,
            ToDoViewModel toDo,
            ToDoActions actions,
            WindowContext context,
            Runnable back,
            Consumer<String> planBatch,
            CompareViewModel compare,
            EvidenceViewModel evidence) {
        this.model = model;
        this.evidence = evidence;
        this.toDo = toDo;
        this.actions = actions;
        this.context = context;
        this.planBatch = planBatch;
        this.compare = compare;
        papers = new BatchPapers(context, context.messages());
        bar = new BatchBar(context.messages(), back);
        plots = new PlotsView(
                context.messages(), epochSecond -> words().dayAndTime(Instant.ofEpochSecond(epochSecond)));
        lists = new BatchListsView(
                context.messages(),
                context.editors(),
                new StockView(context),
                row -> context.faults().guard(() -> {
                    row.reading().ifPresent(model::remove);
                    row.drawn().ifPresent(model::remove);
                }));
        PlotMenu.on(
                plots,
                context,
                context.messages(),
                () -> model.pageProperty().get().title());
        body = new BatchBody(above, lists, plots);
        getStyleClass().add("batch");
        VBox.setVgrow(body, Priority.ALWAYS);
        plots.setMinHeight(LEAST_PLOTS);
        plots.setPrefHeight(LEAST_PLOTS);
        model.pageProperty().addListener((property, before, after) -> fill());
        toDo.linesProperty().addListener((property, before, after) -> fill());
        context.dark().addListener((property, before, after) -> fill());
        context.forecasts().outlookProperty().addListener((property, before, after) -> {
            if (before == null) {
                fill();
            }
        });
        fill();
    }

    /** Puts the keyboard on the way back. */
    void takeFocus() {
        bar.takeFocus();
    }

    private ShelfWords words() {
        return ShelfWords.of(context.forecasts().outlookProperty().get(), context.messages());
    }

    private void fill() {
        KeptFocus.within(this, this::fillAnew);
    }

    private void fillAnew() {
        BatchPage shown = model.pageProperty().get();
        if (shown == null) {
            boolean known = context.forecasts().outlookProperty().get() != null;
            bar.show(Optional.empty(), List.of());
            getChildren()
                    .setAll(
                            bar,
                            known
                                    ? note("batch.none.title", "batch.none.text")
                                    : note("batch.working.title", "batch.working.text"));
            return;
        }
        bar.show(Optional.of(shown), actions(shown));
        if (shown.lot().isEmpty()) {
            getChildren().setAll(bar, planned(shown));
            return;
        }
        above.getChildren().setAll(new VerdictCard(context.messages(), shown, lines(shown), actions));
        shown.questions()
                .forEach(question -> above.getChildren()
                        .add(new BurstQuestionView(
                                context.messages(),
                                question,
                                (burst, cause) -> context.faults().guard(() -> model.answer(burst, cause)))));
        if (shown.lots().size() > 1) {
            above.getChildren().add(lotPicker(shown));
        }
        above.getChildren().add(figures(shown));
        shown.learned()
                .ifPresent(learned ->
                        above.getChildren().add(wrapped(context.messages().sentence(learned))));
        if (!shown.evidence().isEmpty()) {
            above.getChildren()
                    .add(new EvidenceView(
                            context.messages(),
                            shown.evidence(),
                            () -> evidence.show(shown.batch().id())));
        }
        lists.show(shown);
        getChildren().setAll(bar, body);
        drawPlots(shown, shown.lot().get());
        if (!shown.batch().id().equals(shownBatch)) {
            shownBatch = shown.batch().id();
            body.toTop();
        }
    }

    private static Label wrapped(String sentence) {
        Label label = new Label(NoBreak.units(sentence));
        label.setId("batch-learned");
        label.setWrapText(true);
        label.setMinHeight(USE_PREF_SIZE);
        label.getStyleClass().add("faint");
        return label;
    }

    private List<ToDoViewModel.Line> lines(BatchPage shown) {
        return toDo.linesProperty().get().stream()
                .filter(line -> line.batchId().equals(shown.batch().id()))
                .toList();
    }

    private Node figures(BatchPage shown) {
        HBox figures = new HBox();
        figures.getStyleClass().add("figures");
        for (BatchPage.Figure figure : shown.figures()) {
            FigureTile tile =
                    new FigureTile(context.messages(), figure, context.dark().get());
            HBox.setHgrow(tile, Priority.ALWAYS);
            figures.getChildren().add(tile);
        }
        return figures;
    }

    private void drawPlots(BatchPage shown, LotOutlook lot) {
        CellarOutlook outlook = context.forecasts().outlookProperty().get();
        Band trajectory = lot.carbonation().trajectory();
        Instant capped = shown.batch().batch().cappedAt().orElse(outlook.at());
        Instant end =
                trajectory.size() == 0 ? outlook.at() : Instant.ofEpochSecond(trajectory.timeAt(trajectory.size() - 1));
        long margin = Math.max(3600, (outlook.at().getEpochSecond() - capped.getEpochSecond()) / 40);
        PlotStack stack = BatchPicture.of(
                shown.batch(), lot, words(), capped.minusSeconds(margin), end.plusSeconds(1), outlook.at());
        String key = shown.batch().id() + "/" + lot.lot().id();
        plots.setPalette(Looks.palette(context.dark().get()));
        plots.show(stack, PictureSpan.until(outlook, shown.batch(), lot).getEpochSecond(), key.equals(shownLot));
        shownLot = key;
    }

    private List<BatchBar.Action> actions(BatchPage shown) {
        List<BatchBar.Action> all = new ArrayList<>();
        Editors editors = context.editors();
        Batch batch = shown.batch().batch();
        Optional<Lot> lot = shown.lot().map(LotOutlook::lot);
        if (lot.isPresent() && shown.batch().bottlesLeft() > 0) {
            all.add(action("batch-draw", "batch.action.draw", () -> editors.draw(batch, lot.get())));
            all.add(action("batch-read", "batch.action.read", () -> editors.read(batch, lot.get())));
            all.add(action("batch-move", "batch.action.move", () -> editors.move(batch, lot.get())));
        }
        all.add(action("batch-edit", "batch.action.edit", () -> edit(batch)));
        all.add(action("batch-notes", "batch.action.notes", () -> editors.editNotes(batch)));
        if (lot.isPresent()) {
            if (shown.batch().bottlesLeft() > 0) {
                all.add(action("batch-count", "batch.action.count", () -> editors.count(batch)));
            }
            if (shown.batch().bottlesLeft() > 0) {
                all.add(action(
                        "batch-experiment", "batch.action.experiment", () -> editors.experiment(batch, lot.get())));
            }
            if (lot.get().gauge().isPresent()) {
                String lotId = lot.get().id();
                all.add(action(
                        "batch-experiment-save",
                        "batch.action.experiment-save",
                        () -> papers.saveExperiment(this, batch, lotId)));
            }
            all.add(action("batch-evidence", "evidence.page.open", () -> evidence.show(batch.id())));
            all.add(action("batch-compare", "batch.action.compare", () -> compare.compare(List.of(batch.id()))));
            all.add(action("batch-again", "batch.action.again", () -> brewAgain(batch)));
            all.add(action("batch-labels", "batch.action.labels", () -> papers.saveLabels(this, batch)));
            all.add(action("batch-series", "batch.action.series", () -> papers.saveSeries(this, shown.batch())));
            all.add(action("batch-lists-save", "batch.action.lists", () -> papers.saveLists(this, shown)));
            all.add(action("batch-print", "batch.action.print", () -> papers.print(this, shown)));
        }
        return all;
    }

    private BatchBar.Action action(String id, String key, Runnable act) {
        return new BatchBar.Action(
                id, context.messages().of(key), () -> context.faults().guard(act));
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

    private void brewAgain(Batch batch) {
        Batch planned = new BrewAgain(context.workspace().getCellar(), batch, words().format()).planned();
        context.workspace()
                .change(context.messages().of("undo.batch.again", planned.name()), cellar -> cellar.withBatch(planned));
        planBatch.accept(planned.id());
    }

    /** A batch that is still to be bottled is changed on bottling day. */
    private void edit(Batch batch) {
        if (batch.cappedAt().isEmpty()) {
            planBatch.accept(batch.id());
        } else {
            context.editors().editBatch(batch);
        }
    }

    private Node planned(BatchPage shown) {
        Label headline = new Label(shown.headline());
        headline.setId("headline");
        headline.getStyleClass().add("headline");
        headline.setWrapText(true);
        VBox note = note("batch.planned.title", "batch.planned.text");
        Button finish = new Button(context.messages().of("batch.planned.finish"));
        finish.getStyleClass().add("accent");
        finish.setOnAction(
                event -> context.faults().guard(() -> edit(shown.batch().batch())));
        note.getChildren().add(0, headline);
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
        note.getStyleClass().addAll("empty-note", "card");
        return note;
    }
}
