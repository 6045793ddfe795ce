package undercroft.store.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.Optional;
import java.util.OptionalDouble;
import undercroft.catalogue.CoolingMedium;
import undercroft.cellar.Serving;

/** A serving as JSON. */
final class ServingJson {
    private ServingJson() {}

    static Serving read(JsonFields fields) {
        String id = fields.text("id");
        String batch = fields.text("batch");
        int bottles = fields.whole("bottles");
        Instant at = fields.instant("at");
        Optional<String> place = fields.optionalText("place");
        CoolingMedium coolingMedium =
                fields.optionalListed(CoolingMedium.class, "coolingMedium", CoolingMedium.STILL_FRIDGE);
        OptionalDouble glassCelsius = fields.optionalNumber("glassCelsius");
        String note = fields.note("note");
        return fields.made(() -> new Serving(id, batch, bottles, at, place, coolingMedium, glassCelsius, note));
    }

    static ObjectNode write(Serving serving) {
        JsonWriter json = new JsonWriter()
                .put("id", serving.id())
                .put("batch", serving.batchId())
                .put("bottles", serving.bottles())
                .put("at", serving.at().toString());
        serving.placeId().ifPresent(place -> json.put("place", place));
        // A fridge with still air is what a serving without the key means.
        if (serving.coolingMedium() != CoolingMedium.STILL_FRIDGE) {
            json.put("coolingMedium", serving.coolingMedium());
        }
        return json.put("glassCelsius", serving.glassCelsius())
                .put("note", serving.note())
                .node();
    }
}
