package undercroft.store.json;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.ZoneId;
import undercroft.cellar.FollowedLog;
import undercroft.cellar.FollowedTopic;
import undercroft.cellar.PressureTopic;
import undercroft.cellar.PressureUnit;
import undercroft.cellar.TemperatureUnit;

/** What a place follows, as JSON: a logger's growing file, a sensor's topic. */
final class FollowedJson {
    private static final String TAB = "tab";

    private FollowedJson() {}

    static FollowedLog readLog(JsonFields fields) {
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
        ZoneId zone = fields.parsed("zone", ZoneId::of, "store.fault.zone");
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
                "store.fault.sign");
        return sign == null ? ',' : sign;
    }

    private static String sign(char sign) {
        return sign == '\t' ? TAB : String.valueOf(sign);
    }

    static ObjectNode write(FollowedLog log) {
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

    static FollowedTopic readTopic(JsonFields fields) {
        String name = fields.note("name");
        String pointer = fields.note("pointer");
        String timePointer = fields.note("timePointer");
        TemperatureUnit unit = fields.listed(TemperatureUnit.class, "unit");
        double lowest = fields.number("lowestCelsius");
        double highest = fields.number("highestCelsius");
        return fields.made(() -> new FollowedTopic(name, pointer, timePointer, unit, lowest, highest));
    }

    static PressureTopic readPressure(JsonFields fields) {
        String name = fields.note("name");
        String pointer = fields.note("pointer");
        PressureUnit unit = fields.listed(PressureUnit.class, "unit");
        return fields.made(() -> new PressureTopic(name, pointer, unit));
    }

    static ObjectNode write(PressureTopic topic) {
        return new JsonWriter()
                .put("name", topic.name())
                .putTold("pointer", topic.pointer())
                .put("unit", topic.unit())
                .node();
    }

    static ObjectNode write(FollowedTopic topic) {
        return new JsonWriter()
                .put("name", topic.name())
                .putTold("pointer", topic.pointer())
                .putTold("timePointer", topic.timePointer())
                .put("unit", topic.unit())
                .put("lowestCelsius", topic.lowestCelsius())
                .put("highestCelsius", topic.highestCelsius())
                .node();
    }
}
