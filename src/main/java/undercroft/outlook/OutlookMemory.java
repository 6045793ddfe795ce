package undercroft.outlook;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.atomic.LongAdder;
import undercroft.calc.spell.YeastLimits;
import undercroft.cellar.Batch;
import undercroft.cellar.Place;
import undercroft.outlook.climate.KnownClimates;
import undercroft.outlook.climate.PlaceClimate;
import undercroft.outlook.lot.BatchCalculator;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.series.TimeSeries;

/**
 * What was worked out of a cellar lately. A batch is worked out again when something it depends on changed: what was told
 * of it, the climate of a place it stood in, the day looked at. Temperatures are told hour by hour, and so is what follows
 * from them: within the hour a batch to which nothing happened stands as it stood. A finished one is not followed any
 * further. Of any thread.
 */
public final class OutlookMemory {
    /** For each batch: as it is, on the day looked at, and as it would be. */
    private static final int KEPT = 3;

    private final KnownClimates climates = new KnownClimates();
    private final Map<String, List<Known>> known = new ConcurrentHashMap<>();
    private final LongAdder calculated = new LongAdder();

    private record Known(BatchDependencies on, BatchOutlook outlook) {}

    PlaceClimate climate(
            Place place, TimeSeries raw, YeastLimits limits, long gridFrom, Instant at, long horizon) {
        return climates.of(place, raw, limits, gridFrom, at, horizon);
    }

    /** The outlook of a batch, worked out or remembered. */
    BatchOutlook batch(BatchCalculator calculator, Batch batch) {
        BatchDependencies asked = BatchDependencies.of(calculator, batch);
        List<Known> kept = known.getOrDefault(batch.id(), List.of());
        for (Known each : kept) {
            if (each.on().stillHoldFor(asked)) {
                return each.outlook();
            }
        }
        BatchOutlook made = calculator.outlook(batch);
        calculated.increment();
        List<Known> now = new ArrayList<>(List.of(new Known(asked, made)));
        now.addAll(kept.subList(0, Math.min(kept.size(), KEPT - 1)));
        known.put(batch.id(), List.copyOf(now));
        return made;
    }

    /** Forgets what is not among these batches. */
    void keepOnly(Collection<Batch> batches) {
        known.keySet().retainAll(batches.stream().map(Batch::id).toList());
    }

    /** How many outlooks of batches were worked out so far. */
    public long calculated() {
        return calculated.sum();
    }
}
