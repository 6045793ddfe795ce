package undercroft.cellar;

import undercroft.quantity.Check;
import undercroft.quantity.InvalidInput;

/**
 * A topic whose messages bring the temperatures of a place. What was received is logged like any other reading; the
 * broker and its password are settings of the user's, not of the cellar.
 *
 * @param name of the topic, such as {@code cellar/loft/temperature}
 * @param pointer where the number stands in a JSON message (RFC 6901); empty for a message that is a plain number
 * @param unit of the number
 * @param lowestCelsius a reading below it is nonsense
 * @param highestCelsius a reading above it is nonsense
 */
public record FollowedTopic(
        String name, String pointer, TemperatureUnit unit, double lowestCelsius, double highestCelsius) {
    /** MQTT 5.0 (OASIS 2019), section 4.7.3: at most 65,535 bytes of UTF-8; far less is ever meant. */
    private static final int LONGEST = 1_000;

    public FollowedTopic {
        name = text("name", name);
        pointer = text("pointer", pointer);
        if (name.isEmpty()) {
            throw new InvalidInput("name", "cellar.fault.no-topic");
        }
        if (name.chars().anyMatch(sign -> sign == '#' || sign == '+' || sign < ' ')) {
            throw new InvalidInput("name", "cellar.fault.topic-pattern");
        }
        if (!pointer.isEmpty() && !pointer.startsWith("/")) {
            throw new InvalidInput("pointer", "cellar.fault.pointer");
        }
        Check.within("lowestCelsius", lowestCelsius, -60, 100, "°C");
        Check.within("highestCelsius", highestCelsius, -60, 100, "°C");
        if (lowestCelsius >= highestCelsius) {
            throw new InvalidInput("lowestCelsius", "cellar.fault.lowest-above");
        }
    }

    private static String text(String where, String text) {
        if (text == null || text.length() > LONGEST) {
            throw new InvalidInput(where, "fault.too-long", 1000);
        }
        return text.strip();
    }
}
