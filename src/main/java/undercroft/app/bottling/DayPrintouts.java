package undercroft.app.bottling;

import java.nio.file.Path;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import undercroft.app.form.Slug;
import undercroft.bottling.BottlingDay;
import undercroft.bottling.Checklist;
import undercroft.bottling.Step;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.outlook.Outlooks;
import undercroft.report.sheet.CrateLabels;
import undercroft.report.sheet.LabelPaper;
import undercroft.report.sheet.Worksheet;
import undercroft.series.TimeSeries;
import undercroft.store.Export;
import undercroft.wording.QuantityFormat;

/** What a bottling day puts on paper. */
public record DayPrintouts(
        String batchName,
        BottlingDay day,
        QuantityFormat words,
        LocalDate today,
        Map<String, TimeSeries> temperatures,
        Instant now) {
    private static final int BOTTLES_IN_CRATE = 24;

    public String worksheet() {
        return Worksheet.of(batchName, day, words, today);
    }

    /** Labels for the crates as they will stand after capping, made when asked for; {@code cellar} still holds the plan. */
    public Supplier<CrateLabels.Sheets> labels(Cellar cellar, CappingForm done) {
        Batch capped = done.capping(cellar).batch();
        Cellar alone = cellar.withServings(List.of()).withBatches(List.of(capped));
        Instant at = capped.cappedAt().orElse(now);
        return () -> CrateLabels.of(
                Outlooks.of(alone, temperatures, at),
                Optional.empty(),
                capped.id(),
                BOTTLES_IN_CRATE,
                LabelPaper.A4,
                now,
                words);
    }

    /** The sheet as plain lines, its title first. */
    public List<String> lines() {
        List<String> lines = new ArrayList<>(List.of(words.of("bottling.papers.title", batchName, words.day(today))));
        DaySheet sheet = new DaySheet(day, words);
        DaySheet.Verdict verdict = sheet.verdict();
        lines.add(words.of("bottling.papers.verdict", verdict.word(), verdict.reason()));
        lines.add(verdict.stake());
        lines.addAll(sheet.said(day.refusals()));
        lines.add(sheet.shares());
        sheet.bottles().forEach(line -> lines.add(words.of("bottling.papers.figure", line.name(), line.filled())));
        sheet.dose().forEach(line -> lines.add(words.of("bottling.papers.figure", line.label(), line.value())));
        lines.add(sheet.heatLimit());
        for (Step step : Checklist.of(day).steps()) {
            lines.add(words.of("bottling.papers.step", words.of(step.words())));
            step.oxygen().map(words::of).ifPresent(lines::add);
            step.caution().map(words::of).ifPresent(lines::add);
        }
        lines.addAll(sheet.supplies());
        lines.removeIf(String::isBlank);
        return lines;
    }

    /** A name for a file, such as {@code pale-ale-worksheet.html}. */
    public String fileName(String kind) {
        return Slug.of(batchName, "batch", List.of()) + "-" + kind + ".html";
    }

    /** Writes a page where the person wants it, who was asked when a file was there. */
    public static Path write(Path file, String page) {
        return Export.ofTexts().file(file, page, Export.Replacing.ANY);
    }
}
