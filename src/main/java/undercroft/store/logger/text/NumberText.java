package undercroft.store.logger.text;

/** Reads a cell's number with a known decimal mark, tolerating a unit behind it and separators between thousands. */
public final class NumberText {
    private static final double[] TENS = new double[23];

    static {
        double ten = 1;
        for (int i = 0; i < TENS.length; i++) {
            TENS[i] = ten;
            ten *= 10;
        }
    }

    private NumberText() {}

    /** NaN when the cell is not a number. */
    public static double parse(String cell, char decimalMark) {
        String text = withoutUnit(cell);
        StringBuilder plain = new StringBuilder(text.length());
        int digits = 0;
        int decimals = -1;
        int exponentAt = -1;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            if (c >= '0' && c <= '9') {
                plain.append(c);
                digits += exponentAt < 0 ? 1 : 0;
                decimals += decimals >= 0 && exponentAt < 0 ? 1 : 0;
            } else if (c == '-' || c == '+' || c == '−') {
                if (i != 0 && i - 1 != exponentAt) {
                    return Double.NaN;
                }
                plain.append(c == '+' ? '+' : '-');
            } else if (c == decimalMark && decimals < 0 && exponentAt < 0) {
                plain.append('.');
                decimals = 0;
            } else if ((c == 'e' || c == 'E') && digits > 0 && exponentAt < 0) {
                plain.append('e');
                exponentAt = i;
            } else if (!(decimals < 0 && exponentAt < 0 && parts(c) && digits > 0 && threeDigitsAt(text, i + 1))) {
                return Double.NaN;
            }
        }
        if (digits == 0 || digits > 40) {
            return Double.NaN;
        }
        try {
            double value = Double.parseDouble(plain.toString());
            return Double.isFinite(value) ? value : Double.NaN;
        } catch (NumberFormatException notANumber) {
            return Double.NaN;
        }
    }

    /**
     * The same for plain digits with at most one decimal mark, straight from bytes; NaN when {@link #parse} has to look
     * at it. Up to 15 digits over an exact power of ten give the nearest double, as {@link Double#parseDouble} does.
     */
    public static double parsePlain(byte[] bytes, int from, int until, byte decimalMark) {
        int at = from;
        int end = until;
        while (at < end && bytes[at] == ' ') {
            at++;
        }
        while (end > at && bytes[end - 1] == ' ') {
            end--;
        }
        boolean negative = at < end && bytes[at] == '-';
        if (negative) {
            at++;
        }
        long whole = 0;
        int markAt = -1;
        int digits = 0;
        for (; at < end; at++) {
            int digit = bytes[at] - '0';
            if (digit >= 0 && digit <= 9) {
                whole = whole * 10 + digit;
                digits++;
            } else if (bytes[at] == decimalMark && markAt < 0) {
                markAt = at;
            } else {
                return Double.NaN;
            }
            if (digits > 15) {
                return Double.NaN;
            }
        }
        if (digits == 0) {
            return Double.NaN;
        }
        double value = markAt < 0 ? whole : whole / TENS[end - markAt - 1];
        return negative ? -value : value;
    }

    /** Whether the cell holds no figure at all: empty, dashes, or a word such as NaN. */
    public static boolean isNothing(String cell) {
        return cell.chars().noneMatch(c -> c >= '0' && c <= '9');
    }

    private static boolean parts(char c) {
        return c == '.' || c == ',' || c == '\'' || c == '’' || ClockText.isSpace(c);
    }

    private static boolean threeDigitsAt(String text, int from) {
        for (int i = from; i < from + 3; i++) {
            if (i >= text.length() || text.charAt(i) < '0' || text.charAt(i) > '9') {
                return false;
            }
        }
        return from + 3 == text.length() || !Character.isDigit(text.charAt(from + 3));
    }

    private static String withoutUnit(String cell) {
        int end = cell.length();
        int start = 0;
        while (start < end && ClockText.isSpace(cell.charAt(start))) {
            start++;
        }
        while (end > start && " \t\u00a0\u202f°ºCFK%".indexOf(cell.charAt(end - 1)) >= 0) {
            end--;
        }
        return cell.substring(start, end);
    }
}
