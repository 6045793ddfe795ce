package undercroft.app.form.place;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import undercroft.app.form.DateText;
import undercroft.app.form.Measure;
import undercroft.cellar.Cellar;
import undercroft.picture.ImportPicture;
import undercroft.plot.PlotStack;
import undercroft.quantity.UnitSystem;
import undercroft.series.TimeSeries;
import undercroft.store.logger.Finding;
import undercroft.store.logger.ImportMerge;
import undercroft.store.logger.ImportedLog;
import undercroft.store.logger.Reason;
import undercroft.wording.Texts;

/**
 * What bringing a file in would do.
 *
 * @param lines what was kept, repaired and left out and why, one sentence each
 * @param picture what is there already and what would be added
 */
public record ImportResult(ImportedLog log, boolean changesNothing, List<String> lines, PlotStack picture) {
    private static final int LINES_NAMED = 3;

    public ImportResult {
        lines = List.copyOf(lines);
    }

    static ImportResult of(TimeSeries before, ImportedLog log, Cellar cellar) {
        ImportMerge merge = ImportMerge.of(before, log.celsius());
        List<String> lines = new ArrayList<>();
        lines.add(Texts.counted(
                "form.import.kept",
                log.kept(),
                day(log.celsius().firstTime(), cellar.zone()),
                day(log.celsius().lastTime(), cellar.zone())));
        log.findings().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .forEach(entry -> lines.add(finding(entry.getKey(), entry.getValue())));
        lines.add(merged(merge, cellar.settings().units()));
        return new ImportResult(
                log,
                merge.changesNothing(),
                lines,
                ImportPicture.of(
                        before, log.celsius(), cellar.zone(), cellar.settings().units()));
    }

    private static String grouped(long count) {
        return String.format(Locale.ENGLISH, "%,d", count);
    }

    private static String finding(Reason reason, Finding finding) {
        String where =
                finding.lines().stream().limit(LINES_NAMED).map(String::valueOf).collect(Collectors.joining(", "));
        String more = finding.count() > LINES_NAMED ? Texts.of("form.import.and-more", where) : where;
        return Texts.counted(
                reason.drops() ? "form.import.dropped" : "form.import.repaired", finding.count(), reason.words(), more);
    }

    private static String merged(ImportMerge merge, UnitSystem units) {
        if (merge.changesNothing()) {
            return Texts.of("form.import.nothing-new");
        }
        String added = merge.alreadyThere() == 0
                ? Texts.of("form.import.all-new", grouped(merge.added()))
                : Texts.of("form.import.added", grouped(merge.added()), grouped(merge.alreadyThere()));
        if (merge.replaced() == 0) {
            return added;
        }
        String change = Measure.TEMPERATURE_STEP.textWithUnit(merge.largestChange(), units);
        return added + " " + Texts.of("form.import.replaced", grouped(merge.replaced()), change);
    }

    private static String day(long epochSecond, ZoneId zone) {
        return DateText.of(Instant.ofEpochSecond(epochSecond).atZone(zone).toLocalDate());
    }
}
