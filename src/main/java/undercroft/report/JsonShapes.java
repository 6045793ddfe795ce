package undercroft.report;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.SerializationFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.time.Instant;
import java.util.Optional;
import undercroft.quantity.Interval;

/**
 * The shapes that every JSON this tool prints is made of. Numbers keep five digits, the ends of a range rounded away
 * from its middle; what is not finite is null.
 */
final class JsonShapes {
    private static final ObjectMapper MAPPER =
            JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();
    private static final int DIGITS = 5;

    private JsonShapes() {}

    static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    static void put(ObjectNode node, String key, double value) {
        put(node, key, value, RoundingMode.HALF_EVEN);
    }

    /** A number not to be passed: rounded down. */
    static void putLimit(ObjectNode node, String key, double value) {
        put(node, key, value, RoundingMode.FLOOR);
    }

    private static void put(ObjectNode node, String key, double value, RoundingMode rounding) {
        if (Double.isFinite(value)) {
            // Through the shortest decimal: the binary fraction of 5.8 lies below 5.8, and would round down to 5.7999.
            BigDecimal rounded = BigDecimal.valueOf(value)
                    .round(new MathContext(DIGITS, rounding))
                    .stripTrailingZeros();
            node.put(key, rounded.scale() < 0 ? rounded.setScale(0) : rounded);
        } else {
            node.putNull(key);
        }
    }

    static void put(ObjectNode node, String key, Interval interval) {
        ObjectNode shape = node.putObject(key);
        put(shape, "low", interval.low(), RoundingMode.FLOOR);
        put(shape, "median", interval.median());
        put(shape, "high", interval.high(), RoundingMode.CEILING);
    }

    static void put(ObjectNode node, String key, Optional<Instant> instant) {
        if (instant.isPresent()) {
            node.put(key, instant.get().toString());
        } else {
            node.putNull(key);
        }
    }

    static String text(ObjectNode node) {
        try {
            return MAPPER.writeValueAsString(node) + "\n";
        } catch (JsonProcessingException impossible) {
            throw new IllegalStateException(impossible);
        }
    }
}
