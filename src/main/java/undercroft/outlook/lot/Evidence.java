package undercroft.outlook.lot;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import undercroft.calc.conditioning.ReadingsVerdict.Agreement;
import undercroft.cellar.Batch;
import undercroft.cellar.Draw;
import undercroft.cellar.Lot;

/**
 * What was seen of a batch, beside what is calculated: it concerns every lot, since all hold the same beer.
 *
 * @param readings whether its readings fit what is calculated
 * @param bursts bottles that burst lately, in time
 */
public record Evidence(Agreement readings, List<Burst> bursts) {
    /** So long after a burst the others are still to be looked at. */
    private static final long BURST_MEMORY_SECONDS = 30 * 86_400;

    public Evidence {
        bursts = List.copyOf(bursts);
    }

    /** Bottles of a lot that burst together. */
    public record Burst(String lotId, Instant at, int bottles) {}

    static Evidence of(Batch batch, Instant at, Agreement readings) {
        List<Burst> bursts = new ArrayList<>();
        for (Lot lot : batch.lots()) {
            for (Draw draw : lot.draws()) {
                boolean lately = !draw.at().isAfter(at) && draw.at().isAfter(at.minusSeconds(BURST_MEMORY_SECONDS));
                if (draw.fate() == Draw.Fate.BURST && lately) {
                    bursts.add(new Burst(lot.id(), draw.at(), draw.count()));
                }
            }
        }
        bursts.sort(Comparator.comparing(Burst::at));
        return new Evidence(readings, bursts);
    }
}
