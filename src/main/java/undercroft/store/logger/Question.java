package undercroft.store.logger;

import undercroft.quantity.Phrase;

/** Something only a person can decide about a file. */
public record Question(About about, Phrase asked) {
    /** Which of the {@link Choices} the answer belongs to. */
    public enum About {
        DATE_ORDER,
        COLUMN,
        UNIT
    }
}
