package undercroft.outlook;

import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import undercroft.calc.learning.BatchSummary;
import undercroft.outlook.climate.Climates;
import undercroft.outlook.lot.BatchOutlook;

/**
 * What was worked out of a shelf before, so that only what changed is worked out anew: clean logs, climates of places, and
 * of each batch the newest outlook and the one it has since its last bottle left. It changes nothing but the time an outlook
 * takes. Of any thread; one for each open cellar.
 */
public final class ShelfMemory {
    private final Climates climates = new Climates();
    private final Map<String, Known> living = new ConcurrentHashMap<>();
    private final Map<String, Known> gone = new ConcurrentHashMap<>();

    private final Map<String, Lesson> lessons = new ConcurrentHashMap<>();

    private record Lesson(BatchGrounds grounds, Optional<BatchSummary> summary) {}

    private record Known(BatchGrounds grounds, BatchOutlook outlook) {}

    Climates climates() {
        return climates;
    }

    /** The outlook that stands for these grounds, made if none is known. */
    BatchOutlook outlook(BatchGrounds grounds) {
        Map<String, Known> shelf = grounds.isGone() ? gone : living;
        BatchOutlook outlook = known(grounds);
        if (outlook == null) {
            outlook = grounds.outlook();
        }
        // Grounds that are alike are kept as they are now, so that no older climate is held on to.
        shelf.put(grounds.batchId(), new Known(grounds, outlook));
        return outlook;
    }

    /** The same for a shelf that is only supposed: nothing of it is kept. */
    BatchOutlook supposed(BatchGrounds grounds) {
        BatchOutlook outlook = known(grounds);
        return outlook == null ? grounds.outlook() : outlook;
    }

    /** What a batch teaches by these grounds, made if it is not known. */
    Optional<BatchSummary> lesson(BatchGrounds grounds) {
        return lessons.compute(
                        grounds.batchId(),
                        (id, known) -> known != null && known.grounds().teachAlike(grounds)
                                ? known
                                : new Lesson(grounds, grounds.summary()))
                .summary();
    }

    private BatchOutlook known(BatchGrounds grounds) {
        Known known = (grounds.isGone() ? gone : living).get(grounds.batchId());
        return known != null && known.grounds().areAlike(grounds) ? known.outlook() : null;
    }

    /** Lets go of batches that are not on the shelf any more. */
    void keepOnly(Stream<String> batchIds) {
        Set<String> ids = batchIds.collect(Collectors.toSet());
        living.keySet().retainAll(ids);
        gone.keySet().retainAll(ids);
        lessons.keySet().retainAll(ids);
    }
}
