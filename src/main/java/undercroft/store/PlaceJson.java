package undercroft.store;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.MonthDay;
import java.time.ZoneId;
import java.util.Optional;
import undercroft.catalogue.LightPlace;
import undercroft.cellar.FollowedLog;
import undercroft.cellar.LightSetting;
import undercroft.cellar.Place;
import undercroft.cellar.TemperatureSource;

/** A place as JSON. */
final class PlaceJson {
    private static final String TAB = "tab";

    private PlaceJson() {}

    static Place read(JsonFields fields) {
        String id = fields.text("id");
        String name = fields.text("name");
        TemperatureSource temperature = fields.object("temperature", PlaceJson::readTemperature);
        double lagHours = fields.number("lagHours");
        LightSetting light = fields.object("light", PlaceJson::readLight);
        Optional<FollowedLog> followed =
                Optional.ofNullable(fields.optionalObject("followed", PlaceJson::readFollowed, null));
        return fields.made(() -> new Place(id, name, temperature, lagHours, light, followed));
    }

    static ObjectNode write(Place place) {
        JsonWriter writer = new JsonWriter()
                .put("id", place.id())
                .put("name", place.name())
                .put("temperature", writeTemperature(place.temperature()))
                .put("lagHours", place.lagHours())
                .put("light", writeLight(place.light()));
        place.followed().ifPresent(log -> writer.put("followed", writeFollowed(log)));
        return writer.node();
    }

    private static FollowedLog readFollowed(JsonFields fields) {
        String path = fields.note("path");
        String charset = fields.text("charset");
        char separator = sign(fields, "separator");
        char decimalMark = sign(fields, "decimalMark");
        int firstLine = fields.whole("firstLine");
        int dateColumn = fields.whole("dateColumn");
        int clockColumn = fields.whole("clockColumn");
        int valueColumn = fields.whole("valueColumn");
        String timeFormat = fields.text("timeFormat");
        String unit = fields.text("unit");
        ZoneId zone = fields.parsed("zone", ZoneId::of, "is no time zone; write one such as Europe/Lisbon");
        return fields.made(() -> new FollowedLog(
                path,
                charset,
                separator,
                decimalMark,
                firstLine,
                dateColumn,
                clockColumn,
                valueColumn,
                timeFormat,
                unit,
                zone));
    }

    /** One sign, or the word for one that cannot be seen. */
    private static char sign(JsonFields fields, String key) {
        Character sign = fields.parsed(
                key,
                text -> {
                    if (text.equals(TAB)) {
                        return '\t';
                    }
                    if (text.length() != 1) {
                        throw new IllegalArgumentException("one sign");
                    }
                    return text.charAt(0);
                },
                "is not one sign; write one such as , or ; or the word tab");
        return sign == null ? ',' : sign;
    }

    private static String sign(char sign) {
        return sign == '\t' ? TAB : String.valueOf(sign);
    }

    private static ObjectNode writeFollowed(FollowedLog log) {
        return new JsonWriter()
                .put("path", log.path())
                .put("charset", log.charset())
                .put("separator", sign(log.separator()))
                .put("decimalMark", sign(log.decimalMark()))
                .put("firstLine", log.firstLine())
                .put("dateColumn", log.dateColumn())
                .put("clockColumn", log.clockColumn())
                .put("valueColumn", log.valueColumn())
                .put("timeFormat", log.timeFormat())
                .put("unit", log.unit())
                .put("zone", log.zone().getId())
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
        MonthDay warmest = fields.parsed(
                "warmestDay",
                text -> MonthDay.parse("--" + text),
                "is no day of the year; write month and day, such as 07-28");
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
        return fields.made(() -> new LightSetting(kind, lux, hoursPerDay, measured));
    }

    private static ObjectNode writeLight(LightSetting light) {
        return new JsonWriter()
                .put("kind", light.kind())
                .put("lux", light.lux())
                .put("hoursPerDay", light.hoursPerDay())
                .put("measured", light.measured())
                .node();
    }
}
