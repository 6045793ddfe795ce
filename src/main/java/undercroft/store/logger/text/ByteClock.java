package undercroft.store.logger.text;

/**
 * Reads the commonest ways to write a time straight from bytes: {@code 2024-01-31T12:00} or {@code 31.01.2024 12:00}, with
 * a T or a blank, seconds, a fraction, and Z or {@code +01:00} behind it. Whatever else stands there is left to
 * {@link ClockText}.
 */
public final class ByteClock {
    private final DayNumbers days = new DayNumbers();
    private final TimeFormat format;

    private long lastEight;
    private short lastTwo;
    private long lastMidnight = ClockText.NO_TIME;

    public int offsetSeconds;

    public ByteClock(TimeFormat format) {
        this.format = format;
    }

    /** Seconds of a clock without zone; {@link ClockText#NO_TIME} when the text is not of this form. */
    public long read(byte[] b, int start, int end) {
        int from = start;
        int until = end;
        while (from < until && b[from] == ' ') {
            from++;
        }
        while (until > from && b[until - 1] == ' ') {
            until--;
        }
        if (until - from < 16 || (b[from + 10] != ' ' && b[from + 10] != 'T') || b[from + 13] != ':') {
            return ClockText.NO_TIME;
        }
        long midnight = midnight(b, from);
        int hour = two(b, from + 11);
        int minute = two(b, from + 14);
        int second = 0;
        int at = from + 16;
        if (at + 3 <= until && b[at] == ':') {
            second = two(b, at + 1);
            at += 3;
            if (at < until && b[at] == '.') {
                at++;
                while (at < until && b[at] >= '0' && b[at] <= '9') {
                    at++;
                }
            }
        }
        if (midnight == ClockText.NO_TIME
                || (hour | minute | second) < 0
                || hour > 23
                || minute > 59
                || second > 59
                || !offset(b, at, until)) {
            return ClockText.NO_TIME;
        }
        return midnight + (hour * 60 + minute) * 60L + second;
    }

    /** Neighbouring lines mostly share their date, and then its ten bytes. */
    private long midnight(byte[] b, int at) {
        long eight = EightBytes.at(b, at);
        short two = (short) ((b[at + 8] << 8) | (b[at + 9] & 0xFF));
        if (eight != lastEight || two != lastTwo || lastMidnight == ClockText.NO_TIME) {
            lastMidnight = newMidnight(b, at);
            lastEight = eight;
            lastTwo = two;
        }
        return lastMidnight;
    }

    private long newMidnight(byte[] b, int at) {
        if (isMark(b[at + 4]) && b[at + 7] == b[at + 4]) {
            return midnight(two(b, at), two(b, at + 2), two(b, at + 5), two(b, at + 8));
        }
        if (format == TimeFormat.YEAR_FIRST || !isMark(b[at + 2]) || b[at + 5] != b[at + 2]) {
            return ClockText.NO_TIME;
        }
        int first = two(b, at);
        int second = two(b, at + 3);
        boolean dayFirst = format == TimeFormat.DAY_FIRST;
        return midnight(two(b, at + 6), two(b, at + 8), dayFirst ? second : first, dayFirst ? first : second);
    }

    private long midnight(int century, int year, int month, int day) {
        return (century | year | month | day) < 0 ? ClockText.NO_TIME : days.midnight(century * 100 + year, month, day);
    }

    private static boolean isMark(byte b) {
        return b == '-' || b == '/' || b == '.';
    }

    private boolean offset(byte[] b, int at, int until) {
        offsetSeconds = ClockText.NO_OFFSET;
        if (at == until) {
            return true;
        }
        if (at + 1 == until && b[at] == 'Z') {
            offsetSeconds = 0;
            return true;
        }
        if (at + 6 != until || (b[at] != '+' && b[at] != '-') || b[at + 3] != ':') {
            return false;
        }
        int hours = two(b, at + 1);
        int minutes = two(b, at + 4);
        offsetSeconds = (hours * 60 + minutes) * (b[at] == '+' ? 60 : -60);
        return hours >= 0 && hours <= 18 && minutes >= 0 && minutes < 60;
    }

    private static int two(byte[] b, int at) {
        int tens = b[at] - '0';
        int ones = b[at + 1] - '0';
        return tens < 0 || tens > 9 || ones < 0 || ones > 9 ? -1 : tens * 10 + ones;
    }
}
