package undercroft.store;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.Instant;
import undercroft.catalogue.BottleFeel;
import undercroft.catalogue.PerceivedCarbonation;
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
        String gauge = fields.text("gauge");
        double barGauge = fields.number("barGauge");
        return fields.made(() -> new Reading.Gauge(at, lot, gauge, barGauge));
    }

    private static Reading readSqueeze(JsonFields fields) {
        Instant at = fields.instant("at");
        String lot = fields.text("lot");
        BottleFeel feel = fields.listed(BottleFeel.class, "feel");
        return fields.made(() -> new Reading.Squeeze(at, lot, feel));
    }

    private static Reading readOpened(JsonFields fields) {
        Instant at = fields.instant("at");
        String lot = fields.text("lot");
        PerceivedCarbonation perceivedCarbonation = fields.listed(PerceivedCarbonation.class, "liveliness");
        return fields.made(() -> new Reading.Opened(at, lot, perceivedCarbonation));
    }

    private static Reading readDensity(JsonFields fields) {
        Instant at = fields.instant("at");
        double specificGravity = fields.number("specificGravity");
        return fields.made(() -> new Reading.Density(at, specificGravity));
    }

    static ObjectNode write(Reading reading) {
        JsonWriter writer = new JsonWriter();
        String at = reading.at().toString();
        if (reading instanceof Reading.Gauge gauge) {
            writer.put("kind", "gauge")
                    .put("at", at)
                    .put("lot", gauge.lotId())
                    .put("gauge", gauge.gauge())
                    .put("barGauge", gauge.barGauge());
        } else if (reading instanceof Reading.Squeeze squeeze) {
            writer.put("kind", "squeeze")
                    .put("at", at)
                    .put("lot", squeeze.lotId())
                    .put("feel", squeeze.feel());
        } else if (reading instanceof Reading.Opened opened) {
            writer.put("kind", "opened")
                    .put("at", at)
                    .put("lot", opened.lotId())
                    .put("liveliness", opened.perceivedCarbonation());
        } else if (reading instanceof Reading.Density density) {
            writer.put("kind", "gravity").put("at", at).put("specificGravity", density.specificGravity());
        }
        return writer.node();
    }
}
