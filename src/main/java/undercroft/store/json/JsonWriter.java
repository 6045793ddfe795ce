package undercroft.store.json;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Function;
import undercroft.catalogue.Listed;

/** One JSON object while it is written. Keys stand in the order they are put; what is not known is written as null. */
final class JsonWriter {
    private final ObjectNode node = JsonNodeFactory.instance.objectNode();

    ObjectNode node() {
        return node;
    }

    JsonWriter put(String key, String text) {
        node.put(key, text);
        return this;
    }

    /** A text that is left out when it is empty, as keys with a default are. */
    JsonWriter putTold(String key, String text) {
        return text.isEmpty() ? this : put(key, text);
    }

    /** A flag that is left out when it is false. */
    JsonWriter putTold(String key, boolean flag) {
        return flag ? put(key, true) : this;
    }

    /** A number that is left out when it is not known. */
    JsonWriter putTold(String key, OptionalDouble number) {
        return number.isPresent() ? put(key, number.getAsDouble()) : this;
    }

    JsonWriter put(String key, boolean flag) {
        node.put(key, flag);
        return this;
    }

    JsonWriter put(String key, int whole) {
        node.put(key, whole);
        return this;
    }

    /** Whole values are written without decimals; negative zero becomes zero. */
    JsonWriter put(String key, double number) {
        if (number == Math.rint(number) && Math.abs(number) < 1e9) {
            node.put(key, (int) number);
        } else {
            node.put(key, number);
        }
        return this;
    }

    JsonWriter put(String key, OptionalDouble number) {
        if (number.isPresent()) {
            return put(key, number.getAsDouble());
        }
        node.putNull(key);
        return this;
    }

    JsonWriter put(String key, Listed entry) {
        return put(key, entry.id());
    }

    JsonWriter put(String key, ObjectNode object) {
        node.set(key, object);
        return this;
    }

    <T> JsonWriter put(String key, List<T> values, Function<T, ObjectNode> writer) {
        ArrayNode array = node.putArray(key);
        for (T value : values) {
            array.add(writer.apply(value));
        }
        return this;
    }
}
