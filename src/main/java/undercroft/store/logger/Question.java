package undercroft.store.logger;

/** Something only a person can decide about a file, as one plain sentence. */
public record Question(About about, String sentence) {
    /** Which of the {@link Choices} the answer belongs to. */
    public enum About {
        DATE_ORDER,
        UNIT
    }
}
