package undercroft.quantity;

import java.util.Locale;

/** Range checks that answer with a sentence instead of a number out of range. */
public final class Check {
    private Check() {}

    /** Returns {@code value} when it is finite and within the closed range; otherwise throws {@link InvalidInput}. */
    public static double within(String where, double value, double min, double max, String unit) {
        if (!Double.isFinite(value)) {
            throw new InvalidInput(where, "is not a number; give a number from " + span(min, max, unit));
        }
        if (value < min || value > max) {
            throw new InvalidInput(
                    where, "is " + plain(value) + ", outside what is possible here; give " + span(min, max, unit));
        }
        return value;
    }

    /** Returns {@code value} when it lies within the closed range; otherwise throws {@link InvalidInput}. */
    public static int within(String where, int value, int min, int max) {
        if (value < min || value > max) {
            throw new InvalidInput(where, "is " + value + "; give a whole number from " + min + " to " + max);
        }
        return value;
    }

    /** Returns {@code text} trimmed when something is left and it is not absurdly long. */
    public static String text(String where, String text) {
        if (text == null || text.isBlank()) {
            throw new InvalidInput(where, "is empty; give it a name");
        }
        String trimmed = text.strip();
        if (trimmed.length() > 120) {
            throw new InvalidInput(where, "is longer than 120 characters; shorten it");
        }
        return trimmed;
    }

    /** Returns {@code id} when it is a short slug: lower-case letters, digits and single hyphens. */
    public static String id(String where, String id) {
        if (id == null || id.length() > 60 || !id.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
            throw new InvalidInput(
                    where, "\"" + id + "\" is not an id; use lower-case letters, digits and hyphens, such as loft-2");
        }
        return id;
    }

    private static String span(double min, double max, String unit) {
        String suffix = unit.isEmpty() ? "" : " " + unit;
        return plain(min) + " to " + plain(max) + suffix;
    }

    private static String plain(double value) {
        if (value == Math.rint(value) && Math.abs(value) < 1e9) {
            return String.format(Locale.ROOT, "%.0f", value);
        }
        return String.format(Locale.ROOT, "%.6g", value)
                .replaceAll("(\\.\\d*?)0+$", "$1")
                .replaceAll("\\.$", "");
    }
}
