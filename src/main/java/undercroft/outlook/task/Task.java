package undercroft.outlook.task;

import java.time.Duration;
import java.time.Instant;
import java.util.Locale;
import java.util.Optional;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.Cause;

/**
 * Something the shelf wants from a person.
 *
 * @param part the lot, the serving, or the day of the burst or label it is about; empty where it is the whole batch
 * @param since the day it goes back to: of a burst, a label, the last reading or the last bottle
 * @param cause the finding it follows from; none for a reminder, which has no alert of its own to give
 */
public record Task(
        Kind kind,
        Alert alert,
        Instant when,
        String batchId,
        String part,
        Optional<Instant> since,
        Optional<Cause> cause) {
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
        COOL_BEFORE_TOUCHING(3),
        THAW_IN_THE_COLD(3),
        LOOK_AT_THE_OTHERS(0),
        OPEN_COLD(3),
        MOVE_COOLER(3),
        MOVE_FROM_FROST(3),
        READ_AFTER_BURST(7),
        COVER_FROM_LIGHT(3),
        MOVE_WARMER(3),
        CHILL(0),
        CHECK_READINGS(14),
        CHECK_CARBONATION(14),
        PRINT_LABEL(0),
        READ_GAUGE(4),
        READ_GAUGE_DAILY(1),
        OPEN_GAUGE_BOTTLE(3),
        FIRST_TASTE(0),
        DRINK_SOON(14),
        CLOSE_BATCH(0);

        private final int restDays;

        Kind(int restDays) {
            this.restDays = restDays;
        }

        /**
         * For how long it is not asked for again once a person says it is done; empty for good. What is about a state, such
         * as light on a shelf, comes back when the state has not changed by then.
         */
        public Optional<Duration> restWhenDone() {
            return restDays == 0 ? Optional.empty() : Optional.of(Duration.ofDays(restDays));
        }
    }
}
