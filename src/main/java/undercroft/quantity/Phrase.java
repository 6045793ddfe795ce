package undercroft.quantity;

import java.util.List;

/**
 * Something to be said, language not yet chosen: the key of a sentence in the bundles of {@code wording}, and what the
 * sentence names. Rooms that must not know a language hand this on.
 *
 * @param key for example {@code fault.range}
 * @param arguments texts, numbers, quantities, enum constants, or other phrases
 */
public record Phrase(String key, List<Object> arguments) {
    public Phrase {
        arguments = List.copyOf(arguments);
    }

    public static Phrase of(String key, Object... arguments) {
        return new Phrase(key, List.of(arguments));
    }
}
