package undercroft.store.logger.text;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.time.zone.ZoneOffsetTransition;
import java.time.zone.ZoneRules;

/** A wall clock's offset from UTC, remembered for the day of the last question. */
public final class LocalClock {
    private static final int DAY = 86_400;

    private final ZoneRules rules;
    private long dayFrom = Long.MIN_VALUE;
    private boolean plain;
    private int offset;

    public LocalClock(ZoneId zone) {
        this.rules = zone.getRules();
    }

    /** Whether the day of this local second has one offset from midnight to midnight. */
    public boolean isPlainDay(long localSecond) {
        if (localSecond >= dayFrom && localSecond < dayFrom + DAY && dayFrom != Long.MIN_VALUE) {
            return plain;
        }
        dayFrom = Math.floorDiv(localSecond, (long) DAY) * DAY;
        offset = rules.getValidOffsets(local(dayFrom)).stream()
                .findFirst()
                .map(ZoneOffset::getTotalSeconds)
                .orElse(0);
        plain = !changesWithin(dayFrom, dayFrom + DAY);
        return plain;
    }

    /** The offset of a plain day, after {@link #isPlainDay}. */
    public int offset() {
        return offset;
    }

    private boolean changesWithin(long fromLocal, long untilLocal) {
        ZoneOffsetTransition change = rules.nextTransition(Instant.ofEpochSecond(fromLocal - 2 * DAY));
        while (change != null) {
            long before = change.getDateTimeBefore().toEpochSecond(ZoneOffset.UTC);
            long after = change.getDateTimeAfter().toEpochSecond(ZoneOffset.UTC);
            if (Math.min(before, after) >= untilLocal) {
                return false;
            }
            if (Math.max(before, after) > fromLocal) {
                return true;
            }
            change = rules.nextTransition(change.getInstant());
        }
        return false;
    }

    /** The clock change that makes this local second ambiguous or skips it, or null. */
    public ZoneOffsetTransition changeAt(long localSecond) {
        return rules.getTransition(local(localSecond));
    }

    /** The offset at a local second that no change makes ambiguous or skips. */
    public int offsetAt(long localSecond) {
        return rules.getOffset(local(localSecond)).getTotalSeconds();
    }

    private static LocalDateTime local(long second) {
        return LocalDateTime.ofEpochSecond(second, 0, ZoneOffset.UTC);
    }
}
