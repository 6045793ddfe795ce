package undercroft.store.logger;

/** What may be worth saying about a line of a log. */
public enum Reason {
    DUPLICATE(true),
    TWO_VALUES(true),
    UNREADABLE(true),
    NO_VALUE(true),
    SENTINEL(true),
    OUT_OF_RANGE(true),
    OUT_OF_ORDER(false),
    REPEATED_HOUR(false),
    SKIPPED_HOUR(false);

    private final boolean drops;

    Reason(boolean drops) {
        this.drops = drops;
    }

    /** Whether such a line is left out; the others are kept after a correction. */
    public boolean drops() {
        return drops;
    }
}
