package undercroft.calc.light;

/** Orders of time, for figures too uncertain for digits. */
public enum TimeOrder {
    UNDER_A_MINUTE(0),
    MINUTES(1 / 60.0),
    HOURS(1),
    DAYS(24),
    WEEKS(24 * 14),
    MONTHS(24 * 60),
    NEVER(Double.POSITIVE_INFINITY);

    private final double fromHours;

    TimeOrder(double fromHours) {
        this.fromHours = fromHours;
    }

    /** The order of a time of 0 hours or more; infinity is never. */
    public static TimeOrder ofHours(double hours) {
        if (!(hours >= 0)) {
            throw new IllegalArgumentException("hours " + hours);
        }
        TimeOrder found = UNDER_A_MINUTE;
        for (TimeOrder order : values()) {
            found = hours >= order.fromHours ? order : found;
        }
        return found;
    }
}
