package undercroft.calc.conditioning;

import java.util.EnumSet;
import java.util.List;
import java.util.OptionalLong;
import java.util.Set;
import undercroft.catalogue.YeastStrain;
import undercroft.series.Track;

/**
 * Why a batch may never carbonate as planned, so that no date of readiness is promised. Each reason stands for itself; all
 * bounds are assumptions.
 */
public enum Stuck {
    /** The beer is as strong as its yeast can stand, or nearly: within half a percent of the strain's limit. */
    BEYOND_ALCOHOL_LIMIT,
    /** There is next to nothing to ferment: below a twentieth of a volume. */
    NO_SUGAR,
    /** Readings have not moved through days in which working yeast would have moved them. */
    STANDS_STILL;

    private static final double NEAR_LIMIT_PERCENT = 0.5;
    private static final double NOTHING_GRAMS_PER_LITRE = 0.1;
    private static final double STILL_REFERENCE_DAYS = 4;
    private static final double DEVIATIONS = 2;
    private static final double REFERENCE_CELSIUS = 21;
    private static final double SECONDS_PER_DAY = 86_400;

    /**
     * Carbon dioxide in a bottle as a reading tells it.
     *
     * @param epochSecond when
     * @param gramsPerLitre g per litre of beer
     * @param spread its standard deviation, above 0
     */
    public record Level(long epochSecond, double gramsPerLitre, double spread) {}

    /**
     * What can be said before any reading.
     *
     * @param abvPercent strength, % by volume
     * @param fermentableGramsPerLitre carbon dioxide that all that is left to ferment can give, g/L, 0 or more
     */
    public static Set<Stuck> fromTheStart(YeastStrain strain, double abvPercent, double fermentableGramsPerLitre) {
        Set<Stuck> reasons = EnumSet.noneOf(Stuck.class);
        if (abvPercent >= strain.alcoholLimitPercent() - NEAR_LIMIT_PERCENT) {
            reasons.add(BEYOND_ALCOHOL_LIMIT);
        }
        if (fermentableGramsPerLitre < NOTHING_GRAMS_PER_LITRE) {
            reasons.add(NO_SUGAR);
        }
        return reasons;
    }

    /**
     * Since when readings stand still, epoch second of the first that the last one still agrees with; empty when they move,
     * are too few or too close, or are where they should end.
     *
     * <p>Two levels agree within two standard deviations of their difference. They must span four days of work at 21 °C by
     * the yeast's own clock, in which an ordinary yeast makes about two volumes, and lie below the expected end by as much
     * as they may be off.
     *
     * @param levels of one bottle, or of bottles alike, in order of time
     * @param bottle temperature of the beer, °C
     * @param expectedGramsPerLitre carbon dioxide to be expected when all is done, its low end, g/L
     */
    public static OptionalLong stillSince(
            List<Level> levels, YeastStrain strain, Track bottle, double expectedGramsPerLitre) {
        if (levels.size() < 2) {
            return OptionalLong.empty();
        }
        Level last = levels.get(levels.size() - 1);
        if (last.gramsPerLitre() + DEVIATIONS * last.spread() >= expectedGramsPerLitre) {
            return OptionalLong.empty();
        }
        int first = levels.size() - 1;
        while (first > 0 && agrees(levels.get(first - 1), last)) {
            first--;
        }
        long since = levels.get(first).epochSecond();
        return referenceDays(strain, bottle, since, last.epochSecond()) >= STILL_REFERENCE_DAYS
                ? OptionalLong.of(since)
                : OptionalLong.empty();
    }

    private static boolean agrees(Level one, Level other) {
        return Math.abs(one.gramsPerLitre() - other.gramsPerLitre())
                <= DEVIATIONS * Math.hypot(one.spread(), other.spread());
    }

    private static double referenceDays(YeastStrain strain, Track bottle, long from, long until) {
        CardinalTemperatures yeast =
                new CardinalTemperatures(strain.minimumCelsius(), strain.optimumCelsius(), strain.maximumCelsius());
        double reference = yeast.share(REFERENCE_CELSIUS);
        double days = 0;
        for (int i = bottle.indexAt(from); i < bottle.size() && bottle.timeAt(i) < until; i++) {
            long begin = Math.max(from, bottle.timeAt(i));
            long end = Math.min(until, bottle.timeAt(i) + bottle.stepSeconds());
            if (end > begin) {
                days += (end - begin) / SECONDS_PER_DAY * yeast.share(bottle.valueAt(i)) / reference;
            }
        }
        return days;
    }
}
