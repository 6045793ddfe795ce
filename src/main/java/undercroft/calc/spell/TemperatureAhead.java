package undercroft.calc.spell;

import java.util.Arrays;
import java.util.OptionalDouble;
import undercroft.series.Track;

/**
 * The temperature of a place's bottles in the time ahead, with a spread that says how little is known. From a history:
 * the season (one wave fitted to eight months and more, otherwise the mean of the last four weeks), plus today's
 * departure from it, which fades as such departures did (first-order autoregression), plus the usual shape of the day.
 * Without one: a guess or a yearly swing. Figures not learned from the place are assumed. Same input, same outlook.
 */
public final class TemperatureAhead {
    private static final int SEASON_DAYS = 240;
    private static final int RECENT_DAYS = 28;
    private static final double NOW_KELVIN = 0.5;
    private static final double USUAL_MEMORY = 0.8;
    private static final double USUAL_WANDER_KELVIN = 1.5;
    private static final int FEWEST_PAIRS = 10;
    private static final double LAST_VALUE_SECONDS = 6 * 3600;
    // A season that nobody has seen yet: the level may move by so much a day, up to the swing of an unheated room.
    private static final double DRIFT_KELVIN_PER_DAY = 0.05;
    private static final double DRIFT_KELVIN_MOST = 5;

    private final YearlySwing season;
    private final boolean seasonKnown;
    private final DailyCycle habits;
    private final double memory;
    private final double wanderKelvin;
    private final long anchor;
    private final double departure;
    private final double lastResidual;
    private final long lastTime;

    private TemperatureAhead(YearlySwing season, double spreadKelvin) {
        this.season = season;
        this.seasonKnown = true;
        this.habits = null;
        this.memory = 0;
        this.wanderKelvin = spreadKelvin;
        this.anchor = Long.MIN_VALUE;
        this.departure = 0;
        this.lastResidual = 0;
        this.lastTime = Long.MIN_VALUE;
    }

    private TemperatureAhead(BottleHistory history, DailyCycle habits, int lastDay, YearlySwing given) {
        this.habits = habits;
        this.seasonKnown = given != null || habits.knownDays() >= SEASON_DAYS;
        int used = seasonKnown ? habits.days() : Math.min(habits.days(), lastDay + RECENT_DAYS);
        this.season = given != null ? given : season(habits, used, seasonKnown);
        this.memory = memory(habits, used, season);
        this.wanderKelvin = wander(habits, used, season);
        this.anchor = habits.middleOf(lastDay) + DailyCycle.DAY / 2;
        this.departure = habits.meanBefore(lastDay) - season.celsiusAt(habits.middleOf(lastDay));
        Track track = history.track();
        int last = track.indexAt(anchor - 1);
        this.lastTime = track.timeAt(last);
        this.lastResidual = track.valueAt(last) - smoothAt(lastTime);
    }

    /**
     * From what the bottles of the place felt. With less than one known day it is the guess that stands in the history,
     * with the widest spread there.
     */
    public static TemperatureAhead from(BottleHistory history) {
        return from(history, null);
    }

    /** The same with a season that is known otherwise. */
    public static TemperatureAhead from(BottleHistory history, YearlySwing season) {
        DailyCycle habits = DailyCycle.of(history);
        int lastDay = habits.lastKnownDay();
        if (lastDay >= 0) {
            return new TemperatureAhead(history, habits, lastDay, season);
        }
        Track track = history.track();
        double widest = NOW_KELVIN;
        for (int i = 0; i < track.size(); i++) {
            widest = Math.max(widest, track.spreadAt(i));
        }
        return season != null
                ? yearly(season, widest)
                : guess(track.valueAt(track.size() - 1), Math.max(widest, USUAL_WANDER_KELVIN));
    }

    /** A place nobody measures: a temperature and its standard deviation, K, 0 or more, for all time. */
    public static TemperatureAhead guess(double celsius, double spreadKelvin) {
        return yearly(new YearlySwing(celsius, 0, 1), spreadKelvin);
    }

    /** A place of which only the year is known; the spread is a standard deviation, K, 0 or more. */
    public static TemperatureAhead yearly(YearlySwing swing, double spreadKelvin) {
        if (!(spreadKelvin >= 0 && spreadKelvin <= 40)) {
            throw new IllegalArgumentException("no spread: " + spreadKelvin);
        }
        return new TemperatureAhead(swing, spreadKelvin);
    }

    /**
     * The outlook on a regular grid.
     *
     * @param fromInclusive usually the end of the history
     * @param untilExclusive after it
     * @param stepSeconds above 0
     */
    public Track track(long fromInclusive, long untilExclusive, int stepSeconds) {
        if (untilExclusive <= fromInclusive || stepSeconds <= 0) {
            throw new IllegalArgumentException("an outlook needs a positive length and step");
        }
        int size = Math.toIntExact((untilExclusive - fromInclusive + stepSeconds - 1) / stepSeconds);
        double[] values = new double[size];
        double[] spreads = new double[size];
        for (int i = 0; i < size; i++) {
            long time = fromInclusive + (long) i * stepSeconds;
            values[i] = celsiusAt(time);
            spreads[i] = spreadAt(time);
        }
        return Track.of(fromInclusive, stepSeconds, values, spreads);
    }

    /** The season the outlook relaxes to. */
    public YearlySwing season() {
        return season;
    }

    /** Standard deviation of the place's days about its season, K. */
    public double wanderKelvin() {
        return wanderKelvin;
    }

    /** Share of a day's departure that is left a day later; empty for a guess. */
    public OptionalDouble memory() {
        return habits == null ? OptionalDouble.empty() : OptionalDouble.of(memory);
    }

    private double celsiusAt(long time) {
        if (habits == null) {
            return season.celsiusAt(time);
        }
        double sinceLast = Math.max(0, (double) (time - lastTime));
        return smoothAt(time) + lastResidual * Math.exp(-sinceLast / LAST_VALUE_SECONDS);
    }

    private double smoothAt(long time) {
        return season.celsiusAt(time) + departure * Math.pow(memory, daysAhead(time)) + habits.shapeAt(time);
    }

    private double spreadAt(long time) {
        if (habits == null) {
            return wanderKelvin;
        }
        double days = daysAhead(time);
        double wander = wanderKelvin * Math.sqrt(1 - Math.pow(memory, 2 * days));
        double drift = seasonKnown ? 0 : Math.min(DRIFT_KELVIN_MOST, DRIFT_KELVIN_PER_DAY * days);
        return Math.sqrt(NOW_KELVIN * NOW_KELVIN + wander * wander + drift * drift);
    }

    private double daysAhead(long time) {
        return Math.max(0, (double) (time - anchor)) / DailyCycle.DAY;
    }

    private static YearlySwing season(DailyCycle habits, int used, boolean seasonKnown) {
        long[] times = new long[used];
        double[] means = new double[used];
        int size = 0;
        double sum = 0;
        for (int day = 0; day < used; day++) {
            if (!Double.isNaN(habits.meanBefore(day))) {
                times[size] = habits.middleOf(day);
                means[size] = habits.meanBefore(day);
                sum += means[size++];
            }
        }
        return seasonKnown
                ? YearlySwing.fitted(Arrays.copyOf(times, size), Arrays.copyOf(means, size))
                : new YearlySwing(sum / size, 0, 1);
    }

    private static double memory(DailyCycle habits, int used, YearlySwing season) {
        double products = 0;
        double squares = 0;
        int pairs = 0;
        for (int day = 0; day + 1 < used; day++) {
            double later = habits.meanBefore(day) - season.celsiusAt(habits.middleOf(day));
            double earlier = habits.meanBefore(day + 1) - season.celsiusAt(habits.middleOf(day + 1));
            if (!Double.isNaN(later * earlier)) {
                products += later * earlier;
                squares += earlier * earlier;
                pairs++;
            }
        }
        if (pairs < FEWEST_PAIRS || squares == 0) {
            return USUAL_MEMORY;
        }
        return Math.max(0.3, Math.min(0.95, products / squares));
    }

    private static double wander(DailyCycle habits, int used, YearlySwing season) {
        double squares = 0;
        int count = 0;
        for (int day = 0; day < used; day++) {
            double off = habits.meanBefore(day) - season.celsiusAt(habits.middleOf(day));
            if (!Double.isNaN(off)) {
                squares += off * off;
                count++;
            }
        }
        double learned = Math.max(NOW_KELVIN, Math.sqrt(squares / count));
        return count < FEWEST_PAIRS ? Math.max(learned, USUAL_WANDER_KELVIN) : learned;
    }
}
