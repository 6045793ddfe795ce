package undercroft.outlook.lot;

/** How far a batch has come. */
public enum Stage {
    /** Bottling is planned. */
    FILLING,
    CARBONATING,
    CLEARING,
    READY,
    PAST_BEST_BEFORE,
    EMPTY
}
