package undercroft.store.json;

import com.fasterxml.jackson.core.JsonPointer;
import com.fasterxml.jackson.databind.JsonNode;
import java.time.DateTimeException;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.util.Optional;
import undercroft.quantity.InvalidInput;

/** The moment in a sensor's message at which it was measured. */
public final class MessageTime {
    /** A number from here on counts milliseconds: as seconds it would be after the year 5000. */
    private static final double MILLISECONDS_FROM = 1e11;

    private MessageTime() {}

    /**
     * Finds it: ISO 8601 with an offset, or seconds or milliseconds since 1970 in UTC.
     *
     * @param pointer where it stands in a JSON object (RFC 6901)
     * @return empty when there is none that is sure
     */
    public static Optional<Instant> of(byte[] message, String pointer) {
        if (message.length > MessageNumber.MOST_BYTES) {
            return Optional.empty();
        }
        try {
            JsonNode found = JsonText.parse(message).at(JsonPointer.compile(pointer));
            if (found.isNumber()) {
                double number = found.asDouble();
                double seconds = number >= MILLISECONDS_FROM ? number / 1_000 : number;
                return Optional.of(Instant.ofEpochSecond((long) Math.floor(seconds)));
            }
            return found.isTextual()
                    ? Optional.of(OffsetDateTime.parse(found.asText().strip()).toInstant())
                    : Optional.empty();
        } catch (InvalidInput | IllegalArgumentException | DateTimeException noSuchThing) {
            return Optional.empty();
        }
    }
}
