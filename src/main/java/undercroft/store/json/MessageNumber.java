package undercroft.store.json;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import java.nio.charset.StandardCharsets;
import java.util.OptionalDouble;
import undercroft.quantity.InvalidInput;

/** The number in a sensor's message. */
public final class MessageNumber {
    /** A message with a number in it is far smaller. */
    static final int MOST_BYTES = 100_000;

    private MessageNumber() {}

    /**
     * Finds it.
     *
     * @param pointer where it stands in a JSON object (RFC 6901); empty for a message that is a plain number
     * @return empty when there is none that is finite
     */
    public static OptionalDouble of(byte[] message, String pointer) {
        if (message.length > MOST_BYTES) {
            return OptionalDouble.empty();
        }
        if (pointer.isEmpty()) {
            return plain(new String(message, StandardCharsets.UTF_8));
        }
        try {
            JsonNode found = JsonText.parse(message).at(JsonPointer.compile(pointer));
            return found.isNumber() || found.isTextual() ? plain(found.asText()) : OptionalDouble.empty();
        } catch (InvalidInput | IllegalArgumentException noSuchThing) {
            return OptionalDouble.empty();
        }
    }

    private static OptionalDouble plain(String text) {
        try {
            double value = Double.parseDouble(text.strip());
            return Double.isFinite(value) ? OptionalDouble.of(value) : OptionalDouble.empty();
        } catch (NumberFormatException noNumber) {
            return OptionalDouble.empty();
        }
    }
}
