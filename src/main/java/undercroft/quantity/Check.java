package undercroft.quantity;

/** Range checks that answer with a sentence instead of a number out of range. */
public final class Check {
    /** Key of the fault of a number outside its range; its arguments are the number, the range and its unit. */
    public static final String RANGE = "fault.range";

    /** Key of the fault of a whole number outside its range; its arguments are the number and the range. */
    public static final String COUNT = "fault.count";

    /** The same for a number without unit. */
    public static final String RANGE_BARE = "fault.range-bare";

    private static final int LONGEST_TEXT = 120;

    private Check() {}

    /** Returns {@code value} when it is finite and within the closed range; otherwise throws {@link InvalidInput}. */
    public static double within(String where, double value, double min, double max, String unit) {
        if (!Double.isFinite(value)) {
            throw new InvalidInput(where, keyed("fault.not-a-number", "fault.not-a-number-bare", unit), min, max, unit);
        }
        if (value < min || value > max) {
            throw new InvalidInput(where, keyed(RANGE, RANGE_BARE, unit), value, min, max, unit);
        }
        return value;
    }

    /** Returns {@code value} when it lies within the closed range; otherwise throws {@link InvalidInput}. */
    public static int within(String where, int value, int min, int max) {
        if (value < min || value > max) {
            throw new InvalidInput(where, COUNT, value, min, max);
        }
        return value;
    }

    /** Returns {@code text} trimmed when something is left and it is not absurdly long. */
    public static String text(String where, String text) {
        if (text == null || text.isBlank()) {
            throw new InvalidInput(where, "fault.empty");
        }
        String trimmed = text.strip();
        if (trimmed.length() > LONGEST_TEXT) {
            throw new InvalidInput(where, "fault.too-long", LONGEST_TEXT);
        }
        return trimmed;
    }

    /** Returns {@code id} when it is a short slug: lower-case letters, digits and single hyphens. */
    public static String id(String where, String id) {
        if (id == null || id.length() > 60 || !id.matches("[a-z0-9]+(-[a-z0-9]+)*")) {
            throw new InvalidInput(where, "fault.id", String.valueOf(id));
        }
        if (isDevice(id)) {
            throw new InvalidInput(where, "fault.id-device", id);
        }
        return id;
    }

    /**
     * Whether one system takes a file of that name for a device, whatever its ending: a cellar goes from system to system
     * (Microsoft, "Naming Files, Paths, and Namespaces").
     */
    public static boolean isDevice(String id) {
        return id.matches("con|prn|aux|nul|com[0-9]|lpt[0-9]");
    }

    private static String keyed(String key, String bareKey, String unit) {
        return unit.isEmpty() ? bareKey : key;
    }
}
