package undercroft.outlook.lot;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import undercroft.calc.conditioning.ConditioningEnsemble;
import undercroft.calc.conditioning.Explanation;
import undercroft.calc.conditioning.ReadingsVerdict.Agreement;
import undercroft.cellar.Batch;
import undercroft.cellar.BurstCause;
import undercroft.cellar.Draw;
import undercroft.cellar.Lot;
import undercroft.cellar.Reading;

/**
 * What was seen of a batch, beside what is calculated: it concerns every lot, since all hold the same beer.
 *
 * @param readings whether its readings fit what is calculated
 * @param bursts bottles that burst, in time; a burst is never forgotten
 * @param lastMeasured when a gauge or a gravity was last read
 * @param before what explained the batch before anything was read of it or burst
 * @param now what explains it with all that was seen
 */
public record Evidence(
        Agreement readings, List<Burst> bursts, Optional<Instant> lastMeasured, Explanation before, Explanation now) {
    public Evidence {
        bursts = List.copyOf(bursts);
    }

    /**
     * Bottles of a lot that burst together.
     *
     * @param cause what the user holds to be why, once asked
     */
    public record Burst(String lotId, Instant at, int bottles, Optional<BurstCause> cause) {}

    /** Whether a gauge or a gravity that was read after a burst agrees with what is calculated. */
    boolean isBorneOut(Burst burst) {
        return readings == Agreement.AGREES
                && lastMeasured.filter(read -> read.isAfter(burst.at())).isPresent();
    }

    static Evidence of(Batch batch, Instant at, ConditioningEnsemble ensemble) {
        List<Burst> bursts = new ArrayList<>();
        for (Lot lot : batch.lots()) {
            for (Draw draw : lot.draws()) {
                if (draw.fate() == Draw.Fate.BURST && !draw.at().isAfter(at)) {
                    bursts.add(new Burst(lot.id(), draw.at(), draw.count(), draw.cause()));
                }
            }
        }
        bursts.sort(Comparator.comparing(Burst::at));
        return new Evidence(
                ensemble.verdict().agreement(),
                bursts,
                batch.readings().stream()
                        .filter(reading -> reading instanceof Reading.Gauge || reading instanceof Reading.Density)
                        .map(Reading::at)
                        .filter(read -> !read.isAfter(at))
                        .max(Instant::compareTo),
                ConditioningEnsemble.of(ensemble.refermentation(), ensemble.size())
                        .explanation(),
                ensemble.explanation());
    }
}
