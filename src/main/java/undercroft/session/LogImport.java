package undercroft.session;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.UnaryOperator;
import java.util.stream.Collectors;
import undercroft.cellar.Cellar;
import undercroft.cellar.TemperatureSource;
import undercroft.series.TimeSeries;
import undercroft.store.logger.Finding;
import undercroft.store.logger.ImportMerge;
import undercroft.store.logger.ImportedLog;
import undercroft.store.logger.Reason;
import undercroft.wording.QuantityFormat;

/**
 * Brings a logger's file into a place: the one way, for window and command. A place whose temperature was a guess takes the
 * log as its source from then on.
 *
 * @param merge what the log of the place would hold then
 * @param becomesSource whether the place believed a guess until now
 */
public record LogImport(String placeId, ImportedLog log, ImportMerge merge, boolean becomesSource) {
    private static final int LINES_NAMED = 3;

    /** What would be done; nothing is changed by asking. {@code known} is what is logged for the place. */
    public static LogImport of(Cellar cellar, String placeId, TimeSeries known, ImportedLog log) {
        boolean guessed = !(cellar.place(placeId).temperature() instanceof TemperatureSource.Logged);
        return new LogImport(
                placeId,
                log,
                ImportMerge.of(known, log.celsius()),
                guessed && !log.celsius().isEmpty());
    }

    public boolean changesNothing() {
        return merge.changesNothing() && !becomesSource;
    }

    /** Undoable as {@code what}. */
    public void into(Workspace workspace, String what) {
        into(workspace, what, UnaryOperator.identity());
    }

    /** The same in one step with another change of the cellar. */
    public void into(Workspace workspace, String what, UnaryOperator<Cellar> also) {
        if (!merge.changesNothing()) {
            workspace.changeTemperatures(what, placeId, merge.series(), also);
        } else {
            workspace.change(what, cellar -> also.apply(becomesSource ? withSource(cellar) : cellar));
        }
    }

    /** Without a window. Blocks on a disk. */
    public void into(CellarRepository repository) {
        if (!merge.changesNothing()) {
            repository.saveTemperatures(placeId, merge.series());
        }
        if (becomesSource) {
            repository.save(withSource(repository.cellar()));
        }
    }

    private Cellar withSource(Cellar cellar) {
        return cellar.withPlace(cellar.place(placeId).withTemperature(new TemperatureSource.Logged()));
    }

    /** What was repaired, left out and why, and what changes, one sentence each. */
    public List<String> lines(QuantityFormat words) {
        List<String> lines = new ArrayList<>();
        log.findings().entrySet().stream()
                .sorted(Map.Entry.comparingByKey())
                .forEach(entry -> lines.add(finding(entry.getKey(), entry.getValue(), words)));
        if (merge.changesNothing()) {
            lines.add(words.of("form.import.nothing-new"));
        } else if (merge.alreadyThere() == 0) {
            lines.add(words.of("form.import.all-new", merge.added()));
        } else {
            lines.add(words.of("form.import.added", merge.added(), merge.alreadyThere()));
        }
        if (merge.replaced() > 0) {
            lines.add(words.of("form.import.replaced", merge.replaced(), words.kelvin(merge.largestChange())));
        }
        if (becomesSource) {
            lines.add(words.of("form.import.source"));
        }
        return lines;
    }

    private static String finding(Reason reason, Finding finding, QuantityFormat words) {
        String where =
                finding.lines().stream().limit(LINES_NAMED).map(String::valueOf).collect(Collectors.joining(", "));
        String more = finding.count() > LINES_NAMED ? words.of("form.import.and-more", where) : where;
        return words.of(reason.drops() ? "form.import.dropped" : "form.import.repaired", finding.count(), reason, more);
    }
}
