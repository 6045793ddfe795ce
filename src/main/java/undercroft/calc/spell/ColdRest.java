package undercroft.calc.spell;

import undercroft.series.Track;

/**
 * How long bottles have been cold since something happened to them, such as a time over their working pressure. A closed
 * box that has been cold for a day holds bottles as cold as it is all through, and they are at their lowest pressure.
 *
 * @param celsius the bottles at the instant looked at, °C
 * @param hours unbroken time at or below {@link #COLD_CELSIUS} up to that instant, no longer than since it happened; 0 when
 *     they are not cold
 */
public record ColdRest(double celsius, double hours) {
    /** What counts as cold, °C (assumed: a household's fridge or a winter's cellar). */
    public static final double COLD_CELSIUS = 8;

    /** How long a closed box wants to be cold through, hours (assumed; a stack of boxes lags by up to half a day). */
    public static final double LONG_ENOUGH_HOURS = 24;

    /**
     * Reads the end of a track.
     *
     * @param bottles temperature of the bottles, °C
     * @param sinceInclusive when it happened, epoch second
     * @param atInclusive the instant looked at, held to the track
     */
    public static ColdRest since(Track bottles, long sinceInclusive, long atInclusive) {
        int last = bottles.indexAt(atInclusive);
        int first = last + 1;
        while (first > 0
                && bottles.valueAt(first - 1) <= COLD_CELSIUS
                && (first > last || bottles.timeAt(first) > sinceInclusive)) {
            first--;
        }
        double seconds = first > last ? 0 : atInclusive - Math.max(sinceInclusive, bottles.timeAt(first));
        return new ColdRest(bottles.valueAt(last), Math.max(0, seconds) / 3600);
    }

    /** Whether they have been cold for a day. */
    public boolean isLongEnough() {
        return hours >= LONG_ENOUGH_HOURS;
    }
}
