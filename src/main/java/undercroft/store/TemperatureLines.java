package undercroft.store;

import java.nio.charset.StandardCharsets;
import java.util.function.Consumer;
import undercroft.quantity.Check;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;

/**
 * Reads the lines of a temperature file in one pass over its bytes: {@code 2026-03-29T01:30:00Z,12.375}. Lines that are
 * no such lines, or not later than the one before, are told by their number and left out.
 */
final class TemperatureLines {
    static final String HEADER = "time,celsius";
    static final double COLDEST = -60;
    static final double WARMEST = 100;

    private static final double[] POWERS = {1, 1e1, 1e2, 1e3, 1e4, 1e5, 1e6, 1e7, 1e8, 1e9};
    private static final int TIME_LENGTH = "2026-03-29T01:30:00Z".length();

    private final byte[] bytes;
    private final String name;
    private final Consumer<InvalidInput> faults;
    private final boolean mayEndAnywhere;
    private final TimeSeries.Builder series = new TimeSeries.Builder();
    private int position;
    private int line = 1;

    TemperatureLines(byte[] bytes, String name, Consumer<InvalidInput> faults) {
        this(bytes, name, faults, true);
    }

    /** {@code mayEndAnywhere}: whether a last line without a line break counts as whole. */
    TemperatureLines(byte[] bytes, String name, Consumer<InvalidInput> faults, boolean mayEndAnywhere) {
        this.bytes = bytes;
        this.name = name;
        this.faults = faults;
        this.mayEndAnywhere = mayEndAnywhere;
    }

    /** The samples of all sound lines. A file without heading and without a sound line is another's: one fault is told. */
    TimeSeries read() {
        if (!hasHeading()) {
            faults.accept(new InvalidInput(name, "store.fault.heading", HEADER).onLine(1));
            if (isForeign(bytes)) {
                return series.build();
            }
        }
        return lines();
    }

    /** Whether the bytes are something else altogether, which it would be a loss to overwrite; blank ones are not. */
    static boolean isForeign(byte[] bytes) {
        TemperatureLines lines = new TemperatureLines(bytes, "", fault -> {});
        if (lines.hasHeading() || !lines.lines().isEmpty()) {
            return false;
        }
        for (byte each : bytes) {
            if (each > ' ' || each < 0) {
                return true;
            }
        }
        return false;
    }

    private boolean hasHeading() {
        position = 0;
        skipByteOrderMark();
        int end = endOfLine();
        return new String(bytes, position, Math.min(end - position, HEADER.length() + 1), StandardCharsets.ISO_8859_1)
                .equals(HEADER);
    }

    private TimeSeries lines() {
        int end = endOfLine();
        long previous = Long.MIN_VALUE;
        for (next(end); position < bytes.length; next(end)) {
            end = endOfLine();
            if (end == position) {
                continue;
            }
            long time = time(end);
            double celsius = time == Long.MIN_VALUE ? Double.NaN : celsius(position + TIME_LENGTH + 1, end);
            boolean cutOff = !mayEndAnywhere && end == bytes.length;
            InvalidInput fault =
                    cutOff ? new InvalidInput(name, "store.fault.cut-off") : faultOf(time, celsius, previous);
            if (fault == null) {
                series.add(time, celsius);
                previous = time;
            } else {
                faults.accept(fault.onLine(line));
            }
        }
        return series.build();
    }

    private InvalidInput faultOf(long time, double celsius, long previous) {
        if (time == Long.MIN_VALUE || Double.isNaN(celsius)) {
            return new InvalidInput(name, "store.fault.line-shape");
        }
        if (celsius < COLDEST || celsius > WARMEST) {
            return new InvalidInput(name, Check.RANGE, celsius, COLDEST, WARMEST, "°C");
        }
        if (time == previous) {
            return new InvalidInput(name, "store.fault.same-time");
        }
        return time < previous ? new InvalidInput(name, "store.fault.earlier") : null;
    }

    private void skipByteOrderMark() {
        if (bytes.length >= 3 && bytes[0] == (byte) 0xEF && bytes[1] == (byte) 0xBB && bytes[2] == (byte) 0xBF) {
            position = 3;
        }
    }

    /** Where the line ends, without its line break. */
    private int endOfLine() {
        int end = position;
        while (end < bytes.length && bytes[end] != '\n') {
            end++;
        }
        return end > position && bytes[end - 1] == '\r' ? end - 1 : end;
    }

    private void next(int end) {
        position = end;
        while (position < bytes.length && bytes[position] != '\n') {
            position++;
        }
        position++;
        line++;
    }

    /** Epoch seconds of the time at the start of the line, or the least long. */
    private long time(int end) {
        int p = position;
        if (end < p + TIME_LENGTH + 2
                || bytes[p + 4] != '-'
                || bytes[p + 7] != '-'
                || bytes[p + 10] != 'T'
                || bytes[p + 13] != ':'
                || bytes[p + 16] != ':'
                || bytes[p + 19] != 'Z'
                || bytes[p + 20] != ',') {
            return Long.MIN_VALUE;
        }
        int year = digits(p, 4);
        int month = digits(p + 5, 2);
        int day = digits(p + 8, 2);
        int hour = digits(p + 11, 2);
        int minute = digits(p + 14, 2);
        int second = digits(p + 17, 2);
        boolean exists = year >= 1900
                && year < 2200
                && month >= 1
                && month <= 12
                && day >= 1
                && day <= Calendar.daysIn(year, month)
                && hour >= 0
                && hour < 24
                && minute >= 0
                && minute < 60
                && second >= 0
                && second < 60;
        return exists
                ? Calendar.epochDay(year, month, day) * 86_400 + hour * 3_600L + minute * 60L + second
                : Long.MIN_VALUE;
    }

    /** A number of plain digits, or -1. */
    private int digits(int from, int count) {
        int value = 0;
        for (int i = from; i < from + count; i++) {
            int digit = bytes[i] - '0';
            if (digit < 0 || digit > 9) {
                return -1;
            }
            value = value * 10 + digit;
        }
        return value;
    }

    /** A decimal number of up to nine places on either side of the point, or NaN. */
    private double celsius(int from, int end) {
        boolean negative = bytes[from] == '-';
        long value = 0;
        int before = 0;
        int after = -1;
        for (int i = negative ? from + 1 : from; i < end; i++) {
            int digit = bytes[i] - '0';
            if (bytes[i] == '.' && after < 0) {
                after = 0;
            } else if (digit >= 0 && digit <= 9) {
                value = value * 10 + digit;
                if (after < 0) {
                    before++;
                } else {
                    after++;
                }
            } else {
                return Double.NaN;
            }
            if (before > 6 || after > 9) {
                return Double.NaN;
            }
        }
        if (before == 0 || after == 0) {
            return Double.NaN;
        }
        double magnitude = after < 0 ? value : value / POWERS[after];
        return negative && value != 0 ? -magnitude : magnitude;
    }

    /** Days of the proleptic Gregorian calendar. */
    static final class Calendar {
        private static final int[] DAYS = {31, 28, 31, 30, 31, 30, 31, 31, 30, 31, 30, 31};

        private Calendar() {}

        static int daysIn(int year, int month) {
            boolean leap = year % 4 == 0 && (year % 100 != 0 || year % 400 == 0);
            return month == 2 && leap ? 29 : DAYS[month - 1];
        }

        /**
         * Days since 1970-01-01, for years from 1900 on; March comes first so that the leap day is the last (H. Hinnant,
         * chrono-Compatible Low-Level Date Algorithms, 2013, from memory).
         */
        static long epochDay(int year, int month, int day) {
            int y = month <= 2 ? year - 1 : year;
            int fromMarch = (month + 9) % 12;
            int dayOfYear = (153 * fromMarch + 2) / 5 + day - 1;
            return 365L * y + y / 4 - y / 100 + y / 400 + dayOfYear - 719_468;
        }
    }
}
