package undercroft.store;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.OptionalDouble;
import undercroft.catalogue.Surroundings;
import undercroft.cellar.Pour;

/** A pour as JSON. */
final class PourJson {
    private PourJson() {}

    static Pour read(JsonFields fields) {
        String id = fields.text("id");
        String batch = fields.text("batch");
        int bottles = fields.whole("bottles");
        Instant at = fields.instant("at");
        String place = fields.text("place");
        Surroundings surroundings =
                fields.optionalListed(Surroundings.class, "surroundings", Surroundings.STILL_FRIDGE);
        OptionalDouble glassCelsius = fields.optionalNumber("glassCelsius");
        String note = fields.note("note");
        return fields.made(() -> new Pour(id, batch, bottles, at, place, surroundings, glassCelsius, note));
    }

    static ObjectNode write(Pour pour) {
        JsonWriter json = new JsonWriter()
                .put("id", pour.id())
                .put("batch", pour.batchId())
                .put("bottles", pour.bottles())
                .put("at", pour.at().toString())
                .put("place", pour.placeId());
        // A fridge with still air is what a pour without the key means.
        if (pour.surroundings() != Surroundings.STILL_FRIDGE) {
            json.put("surroundings", pour.surroundings());
        }
        return json.put("glassCelsius", pour.glassCelsius())
                .put("note", pour.note())
                .node();
    }
}
