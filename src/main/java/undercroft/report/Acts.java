package undercroft.report;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.Cause;

/**
 * Which batches want something done at once, and since when that is known: what was told once is not told again, and
 * something new about the same batch is.
 *
 * @param changed when something new was found last
 * @param byBatch by the id of the batch
 */
public record Acts(Instant changed, Map<String, Act> byBatch) {
    /** What comes and goes with day and night is one thing. */
    private static final Duration REMEMBERED = Duration.ofHours(24);

    public Acts {
        byBatch = Map.copyOf(byBatch);
    }

    /**
     * One batch.
     *
     * @param causes all that was told of it
     * @param since when the newest of them was found
     * @param seen when it last wanted something done at once
     */
    public record Act(Set<String> causes, Instant since, Instant seen) {
        public Act {
            causes = Set.copyOf(causes);
        }
    }

    public static Acts none(Instant at) {
        return new Acts(at, Map.of());
    }

    /** What is known after a look at the shelf. */
    public Acts after(CellarOutlook outlook) {
        Instant now = outlook.at();
        Map<String, Act> all = new TreeMap<>();
        byBatch.forEach((id, act) -> {
            if (act.seen().plus(REMEMBERED).isAfter(now)) {
                all.put(id, act);
            }
        });
        Instant last = changed;
        for (BatchOutlook batch : outlook.batches()) {
            Set<String> causes = causes(batch);
            if (!causes.isEmpty()) {
                Act known = all.getOrDefault(batch.id(), new Act(Set.of(), now, now));
                boolean isNew = !known.causes().containsAll(causes);
                last = isNew ? now : last;
                causes.addAll(known.causes());
                all.put(batch.id(), new Act(causes, isNew ? now : known.since(), now));
            }
        }
        return new Acts(last, all);
    }

    /** The batches of which something new was found since, in the order of the shelf. */
    public List<BatchOutlook> newSince(Acts before, CellarOutlook outlook) {
        return outlook.batches().stream()
                .filter(batch -> isNow(batch.id(), outlook)
                        && !causesOf(before, batch.id()).containsAll(causesOf(this, batch.id())))
                .toList();
    }

    /** Whether a batch wanted something done at once when the shelf was looked at. */
    boolean isNow(String batchId, CellarOutlook outlook) {
        Act act = byBatch.get(batchId);
        return act != null && act.seen().equals(outlook.at());
    }

    private static Set<String> causesOf(Acts acts, String batchId) {
        Act act = acts.byBatch().get(batchId);
        return act == null ? Set.of() : act.causes();
    }

    /** A second burst is news; a peak that is worked out a little otherwise is not. */
    private static Set<String> causes(BatchOutlook batch) {
        Set<String> causes = new TreeSet<>();
        for (Cause cause : batch.verdict().causes()) {
            if (cause.alert() == Alert.ACT) {
                String when = cause.kind() == Cause.Kind.BURST
                        ? cause.since().map(since -> "/" + since).orElse("")
                        : "";
                causes.add(cause.kind().name() + when);
            }
        }
        return causes;
    }
}
