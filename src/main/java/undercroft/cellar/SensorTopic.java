package undercroft.cellar;

import undercroft.quantity.InvalidInput;

/** A topic on which a live sensor speaks, and what its messages mean. */
public sealed interface SensorTopic permits FollowedTopic, PressureTopic {
    /** MQTT 5.0 (OASIS 2019), section 4.7.3: at most 65,535 bytes of UTF-8; far less is ever meant. */
    int LONGEST = 1_000;

    /** Such as {@code cellar/loft/temperature}. */
    String name();

    /** Where the number stands in a JSON message (RFC 6901); empty for a message that is a plain number. */
    String pointer();

    /** Where the moment of measuring stands in a JSON message; empty where the moment of its coming is taken for it. */
    default String timePointer() {
        return "";
    }

    /** A number of a message in the unit that is kept. */
    double kept(double number);

    /** Whether a number that is kept can be one. */
    boolean isPlausible(double kept);

    static String checkedName(String name) {
        String text = text("name", name);
        if (text.isEmpty()) {
            throw new InvalidInput("name", "cellar.fault.no-topic");
        }
        if (text.chars().anyMatch(sign -> sign == '#' || sign == '+' || sign < ' ')) {
            throw new InvalidInput("name", "cellar.fault.topic-pattern");
        }
        return text;
    }

    static String checkedPointer(String where, String pointer) {
        String text = text(where, pointer);
        if (!text.isEmpty() && !text.startsWith("/")) {
            throw new InvalidInput(where, "cellar.fault.pointer");
        }
        return text;
    }

    private static String text(String where, String text) {
        if (text == null || text.length() > LONGEST) {
            throw new InvalidInput(where, "fault.too-long", LONGEST);
        }
        return text.strip();
    }
}
