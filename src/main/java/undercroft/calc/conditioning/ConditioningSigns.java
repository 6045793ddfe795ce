package undercroft.calc.conditioning;

import undercroft.catalogue.YeastStrain;
import undercroft.series.Track;

/**
 * What a batch's recent temperatures do to its yeast. The bounds are assumptions.
 *
 * @param stalled the sugar is not gone and the last two days ran at less than a tenth of the pace at 21 °C
 * @param slow the same at less than 35 %, but not stalled
 * @param tooHot the bottles were above the strain's limit for more than 12 hours without a break, some time since capping
 * @param recentPace mean pace of the last 48 hours against 21 °C, 0 to about 1.7; 1 when nothing has passed yet
 * @param longestHotHours longest unbroken time above the strain's limit since capping, hours
 */
public record ConditioningSigns(
        boolean stalled, boolean slow, boolean tooHot, double recentPace, double longestHotHours) {
    private static final double STALLED_BELOW = 0.10;
    private static final double SLOW_BELOW = 0.35;
    private static final double DONE = 0.95;
    private static final double TOO_HOT_HOURS = 12;
    private static final long RECENT_SECONDS = 48 * 3600L;

    /**
     * Reads the signs at an instant.
     *
     * @param bottle temperature of the bottles, °C
     * @param cappedEpochSecond when they were closed
     * @param epochSecond now; before capping there are no signs
     * @param fractionDone share of the sugar taken up by now, 0 to 1
     */
    public static ConditioningSigns at(
            YeastStrain strain, Track bottle, long cappedEpochSecond, long epochSecond, double fractionDone) {
        CardinalTemperatures yeast =
                new CardinalTemperatures(strain.minimumCelsius(), strain.optimumCelsius(), strain.maximumCelsius());
        double reference = yeast.share(21);
        long recent = Math.max(cappedEpochSecond, epochSecond - RECENT_SECONDS);
        double paceSeconds = 0;
        double seconds = 0;
        long hot = 0;
        long longestHot = 0;
        for (int i = bottle.indexAt(cappedEpochSecond); i + 1 < bottle.size(); i++) {
            long from = Math.max(cappedEpochSecond, bottle.timeAt(i));
            long until = Math.min(epochSecond, bottle.timeAt(i + 1));
            if (from >= until) {
                break;
            }
            double celsius = (bottle.valueAt(i) + bottle.valueAt(i + 1)) / 2;
            hot = celsius > strain.tooHotCelsius() ? hot + until - from : 0;
            longestHot = Math.max(longestHot, hot);
            long counted = until - Math.max(from, recent);
            if (counted > 0) {
                paceSeconds += counted * yeast.share(celsius) / reference;
                seconds += counted;
            }
        }
        double pace = seconds > 0 ? paceSeconds / seconds : 1;
        boolean working = fractionDone < DONE;
        double hotHours = longestHot / 3600.0;
        return new ConditioningSigns(
                working && pace < STALLED_BELOW,
                working && pace >= STALLED_BELOW && pace < SLOW_BELOW,
                hotHours > TOO_HOT_HOURS,
                pace,
                hotHours);
    }
}
