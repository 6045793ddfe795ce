package undercroft.store.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.LocalTime;
import java.time.MonthDay;
import java.util.Optional;
import java.util.OptionalDouble;
import undercroft.catalogue.LightPlace;
import undercroft.cellar.FollowedLog;
import undercroft.cellar.FollowedTopic;
import undercroft.cellar.LightSetting;
import undercroft.cellar.LitHours;
import undercroft.cellar.Place;
import undercroft.cellar.TemperatureSource;

/** A place as JSON. */
final class PlaceJson {
    private PlaceJson() {}

    static Place read(JsonFields fields) {
        String id = fields.text("id");
        String name = fields.text("name");
        TemperatureSource temperature = fields.object("temperature", PlaceJson::readTemperature);
        double lagHours = fields.number("lagHours");
        LightSetting light = fields.object("light", PlaceJson::readLight);
        Optional<FollowedLog> followed =
                Optional.ofNullable(fields.optionalObject("followed", FollowedJson::readLog, null));
        Optional<FollowedTopic> topic =
                Optional.ofNullable(fields.optionalObject("topic", FollowedJson::readTopic, null));
        OptionalDouble summer = fields.optionalNumber("summerMaximumCelsius");
        return fields.made(() -> new Place(id, name, temperature, lagHours, light, followed, topic, summer));
    }

    static ObjectNode write(Place place) {
        JsonWriter writer = new JsonWriter()
                .put("id", place.id())
                .put("name", place.name())
                .put("temperature", writeTemperature(place.temperature()))
                .put("lagHours", place.lagHours())
                .put("light", writeLight(place.light()));
        place.followed().ifPresent(log -> writer.put("followed", FollowedJson.write(log)));
        place.topic().ifPresent(topic -> writer.put("topic", FollowedJson.write(topic)));
        return writer.putTold("summerMaximumCelsius", place.summerMaximumCelsius())
                .node();
    }

    private static TemperatureSource readTemperature(JsonFields fields) {
        String kind = fields.text("kind");
        return switch (kind) {
            case "logged" -> fields.made(TemperatureSource.Logged::new);
            case "guess" -> readGuess(fields);
            case "yearly" -> readSwing(fields);
            default -> {
                fields.refuseKind(kind, "logged, guess, yearly");
                yield null;
            }
        };
    }

    private static TemperatureSource readGuess(JsonFields fields) {
        double celsius = fields.number("celsius");
        double spread = fields.number("spreadKelvin");
        return fields.made(() -> new TemperatureSource.FixedGuess(celsius, spread));
    }

    private static TemperatureSource readSwing(JsonFields fields) {
        double mean = fields.number("meanCelsius");
        double amplitude = fields.number("amplitudeKelvin");
        MonthDay warmest = fields.parsed("warmestDay", text -> MonthDay.parse("--" + text), "store.fault.day-of-year");
        double spread = fields.number("spreadKelvin");
        return fields.made(() -> new TemperatureSource.YearlySwing(mean, amplitude, warmest, spread));
    }

    private static ObjectNode writeTemperature(TemperatureSource source) {
        JsonWriter writer = new JsonWriter();
        if (source instanceof TemperatureSource.FixedGuess guess) {
            writer.put("kind", "guess").put("celsius", guess.celsius()).put("spreadKelvin", guess.spreadKelvin());
        } else if (source instanceof TemperatureSource.YearlySwing swing) {
            writer.put("kind", "yearly")
                    .put("meanCelsius", swing.meanCelsius())
                    .put("amplitudeKelvin", swing.amplitudeKelvin())
                    .put("warmestDay", swing.warmestDay().toString().substring("--".length()))
                    .put("spreadKelvin", swing.spreadKelvin());
        } else {
            writer.put("kind", "logged");
        }
        return writer.node();
    }

    private static LightSetting readLight(JsonFields fields) {
        LightPlace kind = fields.listed(LightPlace.class, "kind");
        double lux = fields.number("lux");
        double hoursPerDay = fields.number("hoursPerDay");
        boolean measured = fields.flag("measured");
        Optional<LitHours> lit = readLitHours(fields);
        return fields.made(() -> new LightSetting(kind, lux, hoursPerDay, measured, lit));
    }

    /** Both clock times or neither. */
    private static Optional<LitHours> readLitHours(JsonFields fields) {
        if (fields.isAbsent("litFrom") && fields.isAbsent("litUntil")) {
            return Optional.empty();
        }
        String key = "store.fault.time-of-day";
        LocalTime from = fields.parsed("litFrom", LocalTime::parse, key);
        LocalTime until = fields.parsed("litUntil", LocalTime::parse, key);
        return from == null || until == null ? Optional.empty() : Optional.of(new LitHours(from, until));
    }

    private static ObjectNode writeLight(LightSetting light) {
        JsonWriter writer = new JsonWriter()
                .put("kind", light.kind())
                .put("lux", light.lux())
                .put("hoursPerDay", light.hoursPerDay())
                .put("measured", light.measured());
        light.lit()
                .ifPresent(hours -> writer.put("litFrom", hours.from().toString())
                        .put("litUntil", hours.until().toString()));
        return writer.node();
    }
}
