package undercroft.calc.light;

import undercroft.catalogue.Listed;

/** Orders of time in words, for figures too uncertain for digits. */
public enum DurationWords implements Listed {
    UNDER_A_MINUTE("under-a-minute", "under a minute", 0),
    MINUTES("minutes", "minutes", 1 / 60.0),
    HOURS("hours", "hours", 1),
    DAYS("days", "days", 24),
    WEEKS("weeks", "weeks", 24 * 14),
    MONTHS("months", "months", 24 * 60),
    NEVER("never", "never", Double.POSITIVE_INFINITY);

    private final String id;
    private final String label;
    private final double fromHours;

    DurationWords(String id, String label, double fromHours) {
        this.id = id;
        this.label = label;
        this.fromHours = fromHours;
    }

    @Override
    public String id() {
        return id;
    }

    @Override
    public String label() {
        return label;
    }

    /** The word for a time of 0 hours or more; infinity is never. */
    public static DurationWords ofHours(double hours) {
        if (!(hours >= 0)) {
            throw new IllegalArgumentException("hours " + hours);
        }
        DurationWords found = UNDER_A_MINUTE;
        for (DurationWords word : values()) {
            found = hours >= word.fromHours ? word : found;
        }
        return found;
    }

    /** Both ends of a span in words, such as {@code minutes to hours}, or one word when they agree. */
    public static String between(double fromHours, double toHours) {
        DurationWords from = ofHours(fromHours);
        DurationWords to = ofHours(toHours);
        return from == to ? from.label : from.label + " to " + to.label;
    }
}
