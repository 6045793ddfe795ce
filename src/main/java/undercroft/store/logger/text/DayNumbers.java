package undercroft.store.logger.text;

import java.time.LocalDate;
import java.time.YearMonth;

/** Midnight of a date in seconds of a clock without zone. Remembers the last date, since most lines share it. */
public final class DayNumbers {
    /** No logger is older; a clock that lost its setting often starts at 1970. */
    private static final int FIRST_YEAR = 1980;

    private static final int LAST_YEAR = 2200;

    private int lastKey = -1;
    private long lastMidnight;

    /** {@link ClockText#NO_TIME} for a date the calendar does not have, or of a year no log can be from. */
    long midnight(int year, int month, int day) {
        if (year < FIRST_YEAR || year > LAST_YEAR || month < 1 || month > 12 || day < 1 || day > 31) {
            return ClockText.NO_TIME;
        }
        int key = (year * 13 + month) * 100 + day;
        if (key != lastKey) {
            if (day > YearMonth.of(year, month).lengthOfMonth()) {
                return ClockText.NO_TIME;
            }
            lastMidnight = LocalDate.of(year, month, day).toEpochDay() * 86_400;
            lastKey = key;
        }
        return lastMidnight;
    }

    public static boolean isPlausible(long epochSecond) {
        return epochSecond >= 315_532_800L && epochSecond < 7_289_654_400L;
    }
}
