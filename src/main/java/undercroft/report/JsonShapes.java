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

/** The shapes that every JSON this tool prints is made of. Numbers keep five digits; what is not finite is null. */
final class JsonShapes {
    private static final ObjectMapper MAPPER =
            JsonMapper.builder().enable(SerializationFeature.INDENT_OUTPUT).build();
    private static final MathContext FIVE_DIGITS = new MathContext(5, RoundingMode.HALF_EVEN);

    private JsonShapes() {}

    static ObjectNode object() {
        return JsonNodeFactory.instance.objectNode();
    }

    static void put(ObjectNode node, String key, double value) {
        if (Double.isFinite(value)) {
            BigDecimal rounded = new BigDecimal(value).round(FIVE_DIGITS).stripTrailingZeros();
            node.put(key, rounded.scale() < 0 ? rounded.setScale(0) : rounded);
        } else {
            node.putNull(key);
        }
    }

    static void put(ObjectNode node, String key, Interval interval) {
        ObjectNode shape = node.putObject(key);
        put(shape, "low", interval.low());
        put(shape, "median", interval.median());
        put(shape, "high", interval.high());
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
