package undercroft.store.logger.text;

import java.util.Locale;

/**
 * Takes a date, a time of day, or both apart without deciding the order of the date's parts. One object is used again
 * and again; its fields hold the last text read.
 */
public final class ClockText {
    public static final int NO_OFFSET = Integer.MIN_VALUE;
    public static final long NO_TIME = Long.MIN_VALUE;

    private static final String MONTHS = "janfebmaraprmayjunjulaugsepoctnovdec";

    private final DayNumbers days = new DayNumbers();
    private String text = "";
    private int at;
    private int digits;

    public int first;
    int firstDigits;
    public int second;
    public int third;
    public int thirdDigits;
    boolean namedMonth;
    public char dateSeparator;
    public boolean hasDate;
    public boolean hasClock;
    public boolean twelveHour;
    public int secondOfDay;
    public int offsetSeconds;

    /** Whether the whole text is a date, a time of day, or a date and a time; does not check the calendar. */
    public boolean read(String source) {
        text = source;
        at = 0;
        hasDate = false;
        hasClock = false;
        twelveHour = false;
        namedMonth = false;
        secondOfDay = 0;
        offsetSeconds = NO_OFFSET;
        skipSpaces();
        int start = at;
        int value = number();
        if (digits == 0) {
            return false;
        }
        if (peek() == ':') {
            at = start;
            return clock() && atEnd();
        }
        if (!date(value)) {
            return false;
        }
        hasDate = true;
        if (atEnd()) {
            return true;
        }
        char joint = peek();
        if (joint == 'T' || joint == 't' || joint == ',' || joint == '_') {
            at++;
        } else if (!isSpace(text.charAt(at - 1))) {
            return false;
        }
        return clock() && atEnd();
    }

    private boolean date(int value) {
        first = value;
        firstDigits = digits;
        if (digits == 8) {
            first = value / 10_000;
            firstDigits = 4;
            second = value / 100 % 100;
            third = value % 100;
            thirdDigits = 2;
            dateSeparator = ' ';
            return true;
        }
        dateSeparator = peek();
        if (digits > 4 || "-/. ".indexOf(dateSeparator) < 0) {
            return false;
        }
        at++;
        second = number();
        if (digits == 0) {
            second = month();
            namedMonth = true;
        }
        if (digits > 2 || second == 0 || peek() != dateSeparator) {
            return false;
        }
        at++;
        third = number();
        thirdDigits = digits;
        return digits > 0 && digits <= 4;
    }

    private int month() {
        if (at + 3 > text.length()) {
            return 0;
        }
        int found = MONTHS.indexOf(text.substring(at, at + 3).toLowerCase(Locale.ROOT));
        if (found < 0 || found % 3 != 0) {
            return 0;
        }
        while (Character.isLetter(peek())) {
            at++;
        }
        return found / 3 + 1;
    }

    private boolean clock() {
        skipSpaces();
        int hour = number();
        int minute;
        int seconds = 0;
        if (digits == 4 || digits == 6) {
            seconds = digits == 6 ? hour % 100 : 0;
            minute = digits == 6 ? hour / 100 % 100 : hour % 100;
            hour = digits == 6 ? hour / 10_000 : hour / 100;
        } else {
            if (digits == 0 || digits > 2 || peek() != ':') {
                return false;
            }
            at++;
            minute = number();
            if (digits != 2) {
                return false;
            }
            if (peek() == ':') {
                at++;
                seconds = number();
                if (digits != 2) {
                    return false;
                }
            }
        }
        if (peek() == '.' || peek() == ',') {
            at++;
            while (isDigit(peek())) {
                at++;
            }
        }
        hour = twelveHours(hour);
        secondOfDay = hour * 3600 + minute * 60 + seconds;
        hasClock = true;
        return hour >= 0 && minute < 60 && seconds <= 60 && secondOfDay <= 86_400 && offset();
    }

    private int twelveHours(int hour) {
        skipSpaces();
        char half = Character.toLowerCase(peek());
        if (half != 'a' && half != 'p') {
            return hour;
        }
        at++;
        if (peek() == '.') {
            at++;
        }
        if (Character.toLowerCase(peek()) == 'm') {
            at++;
            if (peek() == '.') {
                at++;
            }
        }
        twelveHour = true;
        if (hour > 12 || (hour == 0 && half == 'p')) {
            return -1;
        }
        return hour % 12 + (half == 'p' ? 12 : 0);
    }

    private boolean offset() {
        skipSpaces();
        if (text.startsWith("UTC", at) || text.startsWith("GMT", at)) {
            at += 3;
            offsetSeconds = 0;
        } else if (peek() == 'Z' || peek() == 'z') {
            at++;
            offsetSeconds = 0;
            if (peek() == '[' && text.endsWith("]")) {
                at = text.length();
            }
            return true;
        }
        char sign = peek();
        if (sign != '+' && sign != '-' && sign != '−') {
            return true;
        }
        at++;
        int hours = number();
        int minutes = 0;
        if (digits == 4) {
            minutes = hours % 100;
            hours /= 100;
        } else if (digits == 0 || digits > 2) {
            return false;
        } else if (peek() == ':') {
            at++;
            minutes = number();
            if (digits != 2) {
                return false;
            }
        }
        if (peek() == '[' && text.endsWith("]")) {
            at = text.length();
        }
        offsetSeconds = (hours * 60 + minutes) * (sign == '+' ? 60 : -60);
        return hours <= 18 && minutes < 60;
    }

    /** Whether the date tells its own order: a year of four digits in front, or a month's name. */
    public boolean tellsItsOrder() {
        return firstDigits == 4 || namedMonth;
    }

    /** Midnight of the date as seconds of a clock without zone, read in the given order; or {@link #NO_TIME}. */
    public long midnight(TimeFormat format) {
        int year;
        int month = second;
        int day;
        if (firstDigits == 4 || (format == TimeFormat.YEAR_FIRST && !namedMonth)) {
            year = firstDigits == 4 ? first : firstDigits == 2 ? 2000 + first : 0;
            day = thirdDigits <= 2 ? third : 0;
        } else {
            year = thirdDigits == 4 ? third : thirdDigits == 2 ? 2000 + third : 0;
            boolean monthFirst = format == TimeFormat.MONTH_FIRST && !namedMonth;
            month = monthFirst ? first : second;
            day = monthFirst ? second : first;
        }
        return days.midnight(year, month, day);
    }

    private int number() {
        int start = at;
        int value = 0;
        while (at < text.length() && at - start < 9 && isDigit(text.charAt(at))) {
            value = value * 10 + text.charAt(at) - '0';
            at++;
        }
        digits = at - start;
        return value;
    }

    private boolean atEnd() {
        skipSpaces();
        return at >= text.length();
    }

    private void skipSpaces() {
        while (at < text.length() && isSpace(text.charAt(at))) {
            at++;
        }
    }

    private char peek() {
        return at < text.length() ? text.charAt(at) : '\0';
    }

    private static boolean isDigit(char c) {
        return c >= '0' && c <= '9';
    }

    static boolean isSpace(char c) {
        return c == ' ' || c == '\t' || c == '\u00a0' || c == '\u202f';
    }
}
