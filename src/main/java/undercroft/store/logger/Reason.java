package undercroft.store.logger;

/** What may be worth saying about a line of a log. */
public enum Reason {
    DUPLICATE(true, "the same time and value again"),
    TWO_VALUES(true, "another value for a time already there; the first one stays"),
    UNREADABLE(true, "no time or number can be read"),
    NO_VALUE(true, "a time without a value"),
    SENTINEL(true, "a figure loggers write for a missing or faulty probe"),
    OUT_OF_RANGE(true, "outside −60 to 80 °C"),
    OUT_OF_ORDER(false, "earlier than a line before it; sorted in"),
    REPEATED_HOUR(false, "in the hour that comes twice when summer time ends; told apart by the order of the lines"),
    SKIPPED_HOUR(false, "in the hour that does not exist when summer time begins; moved on by the clock change");

    private final boolean drops;
    private final String words;

    Reason(boolean drops, String words) {
        this.drops = drops;
        this.words = words;
    }

    /** Whether such a line is left out; the others are kept after a correction. */
    public boolean drops() {
        return drops;
    }

    public String words() {
        return words;
    }
}
