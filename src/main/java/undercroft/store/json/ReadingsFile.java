package undercroft.store.json;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Reading;
import undercroft.quantity.InvalidInput;

/**
 * Readings of one batch that another program hands over: {@code {"batch": id, "readings": [...]}}, each reading as in
 * {@code cellar.json}.
 */
public record ReadingsFile(String batchId, List<Reading> readings) {
    /** More than a gauge that is read every minute of a month tells. */
    private static final int MOST = 50_000;

    public ReadingsFile {
        readings = List.copyOf(readings);
    }

    /** The readings in the bytes, or the first fault, without the file's name. */
    public static ReadingsFile read(byte[] bytes) {
        if (!new String(bytes, StandardCharsets.UTF_8).strip().startsWith("{")) {
            throw new InvalidInput("", "incoming.fault.no-readings");
        }
        List<InvalidInput> faults = new ArrayList<>();
        JsonFields fields = new JsonFields(JsonText.parse(bytes), "", faults);
        String batchId = fields.text("batch");
        List<Reading> readings = fields.list("readings", ReadingJson::read);
        if (!faults.isEmpty()) {
            throw faults.get(0);
        }
        if (readings.isEmpty() || readings.size() > MOST) {
            throw new InvalidInput("readings", "incoming.fault.reading-count", readings.size(), MOST);
        }
        return new ReadingsFile(batchId, readings);
    }

    public byte[] bytes() {
        return JsonText.print(new JsonWriter()
                .put("batch", batchId)
                .put("readings", readings, ReadingJson::write)
                .node());
    }

    /**
     * The cellar with these readings; those it has already are not taken twice, so that the same file changes nothing.
     *
     * @throws InvalidInput when the cellar has no such batch or lot, or a reading is older than the batch
     */
    public Cellar into(Cellar cellar) {
        Batch batch = cellar.batch(batchId);
        List<Reading> all = new ArrayList<>(batch.readings());
        readings.stream().filter(reading -> !all.contains(reading)).forEach(all::add);
        return all.size() == batch.readings().size() ? cellar : cellar.withBatch(batch.withReadings(all));
    }

    /** The same for a cellar that may know neither batch nor lot, such as one that undo leads back to. */
    public Cellar whereKnown(Cellar cellar) {
        try {
            return into(cellar);
        } catch (InvalidInput unknownThere) {
            return cellar;
        }
    }
}
