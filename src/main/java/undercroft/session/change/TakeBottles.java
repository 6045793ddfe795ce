package undercroft.session.change;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import undercroft.catalogue.PerceivedCarbonation;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Draw;
import undercroft.cellar.Reading;

/**
 * Bottles leave a lot: opened, given away, broken or burst.
 *
 * @param perceivedCarbonation how lively an opened one was, which is a reading of the batch
 */
public record TakeBottles(String batchId, String lotId, Draw draw, Optional<PerceivedCarbonation> perceivedCarbonation)
        implements CellarChange {
    @Override
    public Cellar applyTo(Cellar cellar) {
        Batch changed = cellar.batch(batchId);
        changed = changed.withLot(changed.lot(lotId).withDraw(draw));
        if (perceivedCarbonation.isPresent()) {
            List<Reading> readings = new ArrayList<>(changed.readings());
            readings.add(new Reading.Opened(draw.at(), lotId, perceivedCarbonation.get()));
            changed = changed.withReadings(readings);
        }
        return cellar.withBatch(changed);
    }
}
