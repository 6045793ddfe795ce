package undercroft.view.shelf;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import javafx.scene.Node;
import undercroft.app.form.Slug;
import undercroft.app.shelf.BatchListsCsv;
import undercroft.app.shelf.BatchPage;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.outlook.Outlooks;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.GaugeExperiment;
import undercroft.report.SeriesCsv;
import undercroft.report.experiment.ExperimentCsv;
import undercroft.report.sheet.CrateLabels;
import undercroft.report.sheet.LabelPaper;
import undercroft.series.TimeSeries;
import undercroft.view.kit.LinePrinter;
import undercroft.view.kit.SavedFiles;
import undercroft.view.kit.WindowContext;
import undercroft.wording.Messages;
import undercroft.wording.QuantityFormat;

/** What can be put on paper or into a file of a batch, at any time after it was capped. */
final class BatchPapers {
    private static final int BOTTLES_IN_CRATE = 24;

    private final WindowContext context;
    private final Messages messages;
    private final SavedFiles files;

    BatchPapers(WindowContext context, Messages messages) {
        this.context = context;
        this.messages = messages;
        files = new SavedFiles(context, messages);
    }

    /** Labels tell of the day of capping, whenever they are printed, unless the heat limit is lower by now. */
    void saveLabels(Node from, Batch batch) {
        Cellar cellar = context.workspace().getCellar();
        Map<String, TimeSeries> temperatures = context.workspace().getState().temperatures();
        Instant capped = batch.cappedAt().orElseThrow();
        Instant now = context.clock().instant();
        QuantityFormat words = QuantityFormat.of(messages, cellar.settings().units(), cellar.zone());
        files.save(
                from.getScene().getWindow(),
                name(batch, "labels"),
                "html",
                () -> {
                    Cellar alone = cellar.withServings(List.of()).withBatches(List.of(batch));
                    return CrateLabels.of(
                            Outlooks.of(alone, temperatures, capped),
                            Optional.of(Outlooks.of(alone, temperatures, now).batch(batch.id())),
                            batch.id(),
                            BOTTLES_IN_CRATE,
                            LabelPaper.A4,
                            now,
                            words);
                },
                sheets -> sheets.page().getBytes(StandardCharsets.UTF_8),
                sheets -> context.workspace().changeThroughout(sheets.printed().on(batch.id())));
    }

    /** The experiment with the lot, anonymous, to be passed on. */
    void saveExperiment(Node from, Batch batch, String lotId) {
        Cellar cellar = context.workspace().getCellar();
        Map<String, TimeSeries> temperatures = context.workspace().getState().temperatures();
        Instant now = context.clock().instant();
        files.save(from.getScene().getWindow(), "gauge-experiment", "csv", () -> {
            GaugeExperiment experiment = Outlooks.experiment(cellar, temperatures, now, batch.id(), Optional.of(lotId));
            return ExperimentCsv.of(cellar, experiment).getBytes(StandardCharsets.UTF_8);
        });
    }

    void saveSeries(Node from, BatchOutlook batch) {
        files.save(
                from.getScene().getWindow(),
                name(batch.batch(), "series"),
                "csv",
                () -> SeriesCsv.of(batch).getBytes(StandardCharsets.UTF_8));
    }

    void saveLists(Node from, BatchPage page) {
        files.save(
                from.getScene().getWindow(),
                name(page.batch().batch(), "lists"),
                "csv",
                () -> BatchListsCsv.of(page, messages).getBytes(StandardCharsets.UTF_8));
    }

    void print(Node from, BatchPage page) {
        List<String> lines = new ArrayList<>(List.of(page.title(), page.where(), page.headline()));
        page.figures()
                .forEach(figure ->
                        lines.add(messages.of("batch.print.figure", figure.label(), figure.value(), figure.detail())));
        lines.addAll(page.cautions());
        page.stock().ifPresent(stock -> {
            lines.add(stock.sentence());
            lines.addAll(stock.lots());
        });
        for (List<BatchPage.Row> rows : List.of(page.readings(), page.draws(), page.moves())) {
            rows.forEach(row -> lines.add(messages.of("batch.list.row-sentence", row.when(), row.what(), row.note())));
        }
        lines.add(page.notes());
        lines.removeIf(String::isBlank);
        String answer = LinePrinter.print(messages, from.getScene().getWindow(), lines);
        if (!answer.isEmpty()) {
            context.faults().tell(answer);
        }
    }

    private static String name(Batch batch, String kind) {
        return Slug.of(batch.name(), "batch", List.of()) + "-" + kind;
    }
}
