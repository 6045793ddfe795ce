package undercroft.store.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import java.util.function.Supplier;
import undercroft.catalogue.BottleFeel;
import undercroft.catalogue.PerceivedCarbonation;
import undercroft.cellar.Origin;
import undercroft.cellar.Reading;

/** A reading as JSON; {@code kind} tells which. */
final class ReadingJson {
    private ReadingJson() {}

    static Reading read(JsonFields fields) {
        String kind = fields.text("kind");
        return switch (kind) {
            case "gauge" -> readGauge(fields);
            case "squeeze" -> readSqueeze(fields);
            case "opened" -> readOpened(fields);
            case "gravity" -> readDensity(fields);
            default -> {
                fields.refuseKind(kind, "gauge, squeeze, opened, gravity");
                yield null;
            }
        };
    }

    private static Reading readGauge(JsonFields fields) {
        Instant at = fields.instant("at");
        String lot = fields.text("lot");
        Supplier<Origin> origin = origin(fields);
        double gaugeBar = fields.number("gaugeBar");
        return fields.made(() -> new Reading.Gauge(at, lot, gaugeBar, origin.get()));
    }

    private static Reading readSqueeze(JsonFields fields) {
        Instant at = fields.instant("at");
        String lot = fields.text("lot");
        BottleFeel feel = fields.listed(BottleFeel.class, "feel");
        Supplier<Origin> origin = origin(fields);
        return fields.made(() -> new Reading.Squeeze(at, lot, feel, origin.get()));
    }

    private static Reading readOpened(JsonFields fields) {
        Instant at = fields.instant("at");
        String lot = fields.text("lot");
        PerceivedCarbonation perceivedCarbonation = fields.listed(PerceivedCarbonation.class, "perceivedCarbonation");
        Supplier<Origin> origin = origin(fields);
        return fields.made(() -> new Reading.Opened(at, lot, perceivedCarbonation, origin.get()));
    }

    private static Reading readDensity(JsonFields fields) {
        Instant at = fields.instant("at");
        double specificGravity = fields.number("specificGravity");
        Supplier<Origin> origin = origin(fields);
        return fields.made(() -> new Reading.Density(at, specificGravity, origin.get()));
    }

    private static Supplier<Origin> origin(JsonFields fields) {
        String bottle = fields.note("bottle");
        String instrument = fields.note("instrument");
        String taster = fields.note("taster");
        return () -> new Origin(bottle, instrument, taster);
    }

    static ObjectNode write(Reading reading) {
        JsonWriter writer = new JsonWriter();
        String at = reading.at().toString();
        if (reading instanceof Reading.Gauge gauge) {
            writer.put("kind", "gauge").put("at", at).put("lot", gauge.lotId()).put("gaugeBar", gauge.gaugeBar());
        } else if (reading instanceof Reading.Squeeze squeeze) {
            writer.put("kind", "squeeze")
                    .put("at", at)
                    .put("lot", squeeze.lotId())
                    .put("feel", squeeze.feel());
        } else if (reading instanceof Reading.Opened opened) {
            writer.put("kind", "opened")
                    .put("at", at)
                    .put("lot", opened.lotId())
                    .put("perceivedCarbonation", opened.perceivedCarbonation());
        } else if (reading instanceof Reading.Density density) {
            writer.put("kind", "gravity").put("at", at).put("specificGravity", density.specificGravity());
        }
        Origin origin = reading.origin();
        return writer.putTold("bottle", origin.bottle())
                .putTold("instrument", origin.instrument())
                .putTold("taster", origin.taster())
                .node();
    }
}
