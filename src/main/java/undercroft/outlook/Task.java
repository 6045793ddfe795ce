package undercroft.outlook;

import java.time.Instant;
import java.util.Locale;

/**
 * Something the shelf wants from a person.
 *
 * @param part the lot or the pour it is about, where it is not the whole batch
 */
public record Task(Kind kind, Alert alert, Instant when, String batchId, String part, String what, String why) {
    /** About a whole batch. */
    public Task(Kind kind, Alert alert, Instant when, String batchId, String what, String why) {
        this(kind, alert, when, batchId, "", what, why);
    }

    /**
     * Names the task, the same each time the shelf is looked at. One that has come to {@link Alert#ACT} is another than it
     * was before, so that what was put away comes back when it gets serious.
     */
    public String key() {
        String name = kind.name().toLowerCase(Locale.ROOT).replace('_', '-') + "/" + batchId;
        return name + (part.isEmpty() ? "" : "/" + part) + (alert == Alert.ACT ? "/act" : "");
    }

    /** Kinds of task, most urgent first. */
    public enum Kind {
        COOL_BEFORE_TOUCHING,
        LOOK_AT_THE_OTHERS,
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
