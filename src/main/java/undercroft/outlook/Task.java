package undercroft.outlook;

import java.time.Instant;

/** Something the shelf wants from a person. */
public record Task(Kind kind, Alert alert, Instant when, String batchId, String what, String why) {
    /** Kinds of task, most urgent first. */
    public enum Kind {
        COOL_BEFORE_TOUCHING,
        MOVE_COOLER,
        COVER_FROM_LIGHT,
        MOVE_WARMER,
        CHILL,
        CHECK_READINGS,
        READ_GAUGE,
        FIRST_TASTE,
        DRINK_SOON,
        CLOSE_BATCH
    }
}
