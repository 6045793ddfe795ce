package undercroft.cellar;

import java.time.ZoneId;
import undercroft.quantity.Check;
import undercroft.quantity.InvalidInput;

/**
 * A logger's file that a place follows, and how it is to be read. Columns count from 0, lines from 1.
 *
 * @param path of the file on this machine
 * @param charset its name as registered, such as UTF-8
 * @param firstLine the first line that may hold data
 * @param dateColumn holds the date, or date and time
 * @param clockColumn holds the time of day; the same as {@code dateColumn} when one column holds both
 * @param timeFormat the order of a date's parts, or that time is a count: a word of the reader's
 * @param unit of the temperatures: a word of the reader's
 * @param zone for times without an offset of their own
 */
public record FollowedLog(
        String path,
        String charset,
        char separator,
        char decimalMark,
        int firstLine,
        int dateColumn,
        int clockColumn,
        int valueColumn,
        String timeFormat,
        String unit,
        ZoneId zone) {
    private static final int MOST_COLUMNS = 10_000;

    public FollowedLog {
        if (path.isBlank()) {
            throw new InvalidInput("path", "cellar.fault.no-file");
        }
        Check.within("firstLine", firstLine, 0, Integer.MAX_VALUE);
        Check.within("dateColumn", dateColumn, 0, MOST_COLUMNS);
        Check.within("clockColumn", clockColumn, 0, MOST_COLUMNS);
        Check.within("valueColumn", valueColumn, 0, MOST_COLUMNS);
    }
}
