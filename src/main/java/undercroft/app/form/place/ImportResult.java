package undercroft.app.form.place;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import undercroft.picture.ImportPicture;
import undercroft.plot.PlotStack;
import undercroft.series.TimeSeries;
import undercroft.store.logger.Finding;
import undercroft.store.logger.ImportMerge;
import undercroft.store.logger.ImportedLog;
import undercroft.store.logger.Reason;
import undercroft.wording.QuantityFormat;

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

    static ImportResult of(QuantityFormat format, TimeSeries before, ImportedLog log) {
        ImportMerge merge = ImportMerge.of(before, log.celsius());
        List<String> lines = new ArrayList<>();
        lines.add(format.of(
                "form.import.kept",
                log.kept(),
                format.shortDay(format.date(Instant.ofEpochSecond(log.celsius().firstTime()))),
                format.shortDay(format.date(Instant.ofEpochSecond(log.celsius().lastTime())))));
        log.findings().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .forEach(entry -> lines.add(finding(format, entry.getKey(), entry.getValue())));
        lines.add(merged(format, merge));
        return new ImportResult(log, merge.changesNothing(), lines, ImportPicture.of(before, log.celsius(), format));
    }

    private static String finding(QuantityFormat format, Reason reason, Finding finding) {
        String where =
                finding.lines().stream().limit(LINES_NAMED).map(String::valueOf).collect(Collectors.joining(", "));
        String more = finding.count() > LINES_NAMED ? format.of("form.import.and-more", where) : where;
        return format.of(
                reason.drops() ? "form.import.dropped" : "form.import.repaired", finding.count(), reason, more);
    }

    private static String merged(QuantityFormat format, ImportMerge merge) {
        if (merge.changesNothing()) {
            return format.of("form.import.nothing-new");
        }
        String added = merge.alreadyThere() == 0
                ? format.of("form.import.all-new", merge.added())
                : format.of("form.import.added", merge.added(), merge.alreadyThere());
        if (merge.replaced() == 0) {
            return added;
        }
        String change = format.kelvin(merge.largestChange());
        return added + " " + format.of("form.import.replaced", merge.replaced(), change);
    }
}
