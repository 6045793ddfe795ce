package undercroft.calc.spell;

import java.util.OptionalDouble;
import undercroft.series.TimeSeries;
import undercroft.series.Track;

/**
 * How warm a place gets in the warmest week of its year, which is what bottles must bear that stay there.
 *
 * @param celsius mean of that week, °C
 * @param source what it rests on
 */
public record WarmestWeek(double celsius, Source source) {
    /** Where the figure comes from, best first. */
    public enum Source {
        /** The highest mean of seven days in twelve months of which at least 300 days are logged. */
        LOGGED,
        /** Fewer days are logged; the warmest that was seen, which is above what was entered, if anything was. */
        LOGGED_IN_PART,
        /** What the user said of the place's hottest days. */
        ENTERED,
        /** Nothing is known: {@link #UNKNOWN_CELSIUS}. */
        ASSUMED
    }

    /** What a place nobody knows anything of is taken to reach, °C (assumed: a hot week in a dwelling). */
    public static final double UNKNOWN_CELSIUS = 28;

    private static final int FEWEST_DAYS = 300;
    private static final int WEEK = 7;
    private static final int DAY = 86_400;
    private static final int YEAR_DAYS = 365;
    private static final long BRIDGED = 6 * 3600;
    private static final double LEAST_OF_A_DAY = 0.5;
    private static final double NINETY_FIVE_PERCENT = 1.6448536269514722;

    /**
     * From a place's log.
     *
     * @param air clean readings, °C; may be empty
     * @param untilInclusive the instant looked at, epoch second; the twelve months end there
     * @param summerMaximumCelsius what the user entered for the place
     */
    public static WarmestWeek of(TimeSeries air, long untilInclusive, OptionalDouble summerMaximumCelsius) {
        double[] days = dayMeans(air, untilInclusive);
        int logged = 0;
        for (double mean : days) {
            logged += Double.isNaN(mean) ? 0 : 1;
        }
        if (logged == 0) {
            return entered(summerMaximumCelsius);
        }
        double warmest = highestWeek(days);
        if (logged >= FEWEST_DAYS) {
            return new WarmestWeek(warmest, Source.LOGGED);
        }
        if (summerMaximumCelsius.isEmpty()) {
            return warmest > UNKNOWN_CELSIUS
                    ? new WarmestWeek(warmest, Source.LOGGED_IN_PART)
                    : new WarmestWeek(UNKNOWN_CELSIUS, Source.ASSUMED);
        }
        return warmest > summerMaximumCelsius.getAsDouble()
                ? new WarmestWeek(warmest, Source.LOGGED_IN_PART)
                : entered(summerMaximumCelsius);
    }

    /** From what the user said of the place alone. */
    public static WarmestWeek entered(OptionalDouble summerMaximumCelsius) {
        return summerMaximumCelsius.isPresent()
                ? new WarmestWeek(summerMaximumCelsius.getAsDouble(), Source.ENTERED)
                : new WarmestWeek(UNKNOWN_CELSIUS, Source.ASSUMED);
    }

    /**
     * From a year that is guessed: the height of its wave and what the spread adds at 95 %.
     *
     * @param spreadKelvin standard deviation, 0 or more
     */
    public static WarmestWeek ofYear(YearlySwing swing, double spreadKelvin) {
        return new WarmestWeek(
                swing.meanCelsius() + swing.amplitudeKelvin() + NINETY_FIVE_PERCENT * spreadKelvin, Source.ENTERED);
    }

    /**
     * The warmest week of a stretch of a track.
     *
     * @param celsius its mean, °C
     * @param spreadKelvin standard deviation of the temperature in it, K
     */
    public record Ahead(double celsius, double spreadKelvin) {}

    /**
     * The warmest seven days on end in a stretch of a track; all of the stretch where it is shorter.
     *
     * @param fromInclusive epoch second
     * @param untilExclusive epoch second; both are held to the track
     */
    public static Ahead ahead(Track bottles, long fromInclusive, long untilExclusive) {
        int first = bottles.indexAt(fromInclusive);
        int last = Math.max(first, bottles.indexAt(untilExclusive - 1));
        int week = Math.max(1, Math.min(last - first + 1, WEEK * DAY / bottles.stepSeconds()));
        double sum = 0;
        double highest = Double.NEGATIVE_INFINITY;
        int end = first;
        for (int i = first; i <= last; i++) {
            sum += bottles.valueAt(i);
            if (i - first >= week) {
                sum -= bottles.valueAt(i - week);
            }
            if (i - first >= week - 1 && sum / week > highest) {
                highest = sum / week;
                end = i;
            }
        }
        double spread = 0;
        for (int i = end - week + 1; i <= end; i++) {
            spread += bottles.spreadAt(i) / week;
        }
        return new Ahead(highest, spread);
    }

    /** Means of the days of the last year, counted back from the instant, NaN where less than half of one is logged. */
    private static double[] dayMeans(TimeSeries air, long until) {
        double[] sums = new double[YEAR_DAYS];
        double[] seconds = new double[YEAR_DAYS];
        long begin = until - (long) YEAR_DAYS * DAY;
        for (int i = Math.max(0, air.indexAtOrBefore(begin)); i + 1 < air.size() && air.timeAt(i) < until; i++) {
            long length = air.timeAt(i + 1) - air.timeAt(i);
            if (length > BRIDGED) {
                continue;
            }
            long from = Math.max(begin, air.timeAt(i));
            long end = Math.min(until, air.timeAt(i + 1));
            while (from < end) {
                int day = (int) ((from - begin) / DAY);
                long next = Math.min(end, begin + (day + 1L) * DAY);
                double middle = ((from + next) / 2.0 - air.timeAt(i)) / length;
                sums[day] += (next - from) * (air.valueAt(i) + middle * (air.valueAt(i + 1) - air.valueAt(i)));
                seconds[day] += next - from;
                from = next;
            }
        }
        double[] means = new double[YEAR_DAYS];
        for (int day = 0; day < YEAR_DAYS; day++) {
            means[day] = seconds[day] >= LEAST_OF_A_DAY * DAY ? sums[day] / seconds[day] : Double.NaN;
        }
        return means;
    }

    /** The highest mean of seven days on end; where no seven are logged on end, the warmest day. */
    private static double highestWeek(double[] days) {
        double highest = Double.NEGATIVE_INFINITY;
        double warmestDay = Double.NEGATIVE_INFINITY;
        double sum = 0;
        int run = 0;
        for (int day = 0; day < days.length; day++) {
            if (Double.isNaN(days[day])) {
                run = 0;
                sum = 0;
                continue;
            }
            warmestDay = Math.max(warmestDay, days[day]);
            sum += days[day];
            run++;
            if (run > WEEK) {
                sum -= days[day - WEEK];
                run = WEEK;
            }
            if (run == WEEK) {
                highest = Math.max(highest, sum / WEEK);
            }
        }
        return highest == Double.NEGATIVE_INFINITY ? warmestDay : highest;
    }
}
