package undercroft.store.logger;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** Counts lines by reason while a log is read. */
final class Findings {
    private final Map<Reason, Tally> tallies = new EnumMap<>(Reason.class);

    void add(Reason reason, int line) {
        Tally tally = tallies.computeIfAbsent(reason, r -> new Tally());
        if (tally.count++ < Finding.LISTED) {
            tally.lines.add(line);
        }
    }

    Map<Reason, Finding> byReason() {
        Map<Reason, Finding> found = new EnumMap<>(Reason.class);
        tallies.forEach((reason, tally) -> found.put(reason, new Finding(tally.count, tally.lines)));
        return found;
    }

    private static final class Tally {
        private final List<Integer> lines = new ArrayList<>();
        private long count;
    }
}
