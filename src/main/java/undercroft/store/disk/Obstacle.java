package undercroft.store.disk;

import java.io.IOException;
import undercroft.quantity.Phrase;

/** Something is in the way of reading or writing that the system itself would not mind. */
final class Obstacle extends IOException {
    private static final long serialVersionUID = 1L;

    private final transient Phrase phrase;

    Obstacle(String key, Object... arguments) {
        super(key);
        this.phrase = Phrase.of(key, arguments);
    }

    Phrase phrase() {
        return phrase == null ? Phrase.of(getMessage()) : phrase;
    }
}
