package undercroft.session.change;

import java.util.ArrayList;
import java.util.List;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Reading;

/** Something was found out about a batch. */
public record NoteReading(String batchId, Reading reading) implements CellarChange {
    @Override
    public Cellar applyTo(Cellar cellar) {
        Batch batch = cellar.batch(batchId);
        List<Reading> readings = new ArrayList<>(batch.readings());
        readings.add(reading);
        return cellar.withBatch(batch.withReadings(readings));
    }
}
