package undercroft.calc.spell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;
import undercroft.series.TimeSeries;
import undercroft.series.Track;

class WarmestWeekTest {
    private static final int HOUR = 3600;
    private static final int DAY = 24 * HOUR;
    private static final OptionalDouble NOTHING = OptionalDouble.empty();

    /** A wave of a year with a daily one on it: over the week about its crest the mean falls short of it by hardly anything. */
    @Test
    void aFullYearTellsItsOwnWarmestWeek() {
        TimeSeries air = log(365, day -> 14 + 9 * Math.cos(2 * Math.PI * (day - 200) / 365));
        WarmestWeek warmest = WarmestWeek.of(air, 365L * DAY, OptionalDouble.of(40));
        assertEquals(WarmestWeek.Source.LOGGED, warmest.source());
        assertEquals(23, warmest.celsius(), 0.05);
    }

    @Test
    void aHotWeekIsFoundAndAHotDayIsNot() {
        TimeSeries week = log(365, day -> day >= 180 && day < 187 ? 31 : 18);
        assertEquals(31, WarmestWeek.of(week, 365L * DAY, NOTHING).celsius(), 0.2);
        TimeSeries one = log(365, day -> day == 180 ? 31 : 18);
        assertEquals(18 + 13 / 7.0, WarmestWeek.of(one, 365L * DAY, NOTHING).celsius(), 0.2);
    }

    @Test
    void onlyTheLastTwelveMonthsCount() {
        TimeSeries air = log(800, day -> day < 400 ? 33 : 17);
        WarmestWeek warmest = WarmestWeek.of(air, 799L * DAY, NOTHING);
        assertEquals(17, warmest.celsius(), 1e-9);
        assertEquals(WarmestWeek.Source.LOGGED, warmest.source());
        assertEquals(
                WarmestWeek.Source.ASSUMED,
                WarmestWeek.of(air, 900L * DAY, NOTHING).source());
    }

    @Test
    void aShortLogYieldsToWhatWasEnteredUnlessItSawWarmer() {
        TimeSeries winter = log(120, day -> 12);
        assertEquals(
                new WarmestWeek(26, WarmestWeek.Source.ENTERED),
                WarmestWeek.of(winter, 120L * DAY, OptionalDouble.of(26)));
        TimeSeries hot = log(120, day -> 30);
        WarmestWeek seen = WarmestWeek.of(hot, 120L * DAY, OptionalDouble.of(26));
        assertEquals(WarmestWeek.Source.LOGGED_IN_PART, seen.source());
        assertEquals(30, seen.celsius(), 1e-9);
    }

    @Test
    void aPlaceWithNeitherIsTakenForTwentyEightDegreesAndSaidSo() {
        WarmestWeek assumed = new WarmestWeek(28, WarmestWeek.Source.ASSUMED);
        assertEquals(assumed, WarmestWeek.of(TimeSeries.empty(), 0, NOTHING));
        assertEquals(assumed, WarmestWeek.of(log(90, day -> 15), 90L * DAY, NOTHING));
        assertEquals(
                WarmestWeek.Source.LOGGED_IN_PART,
                WarmestWeek.of(log(90, day -> 29), 90L * DAY, NOTHING).source());
    }

    @Test
    void daysWithoutReadingsDoNotCount() {
        TimeSeries.Builder air = new TimeSeries.Builder();
        TimeSeries full = log(365, day -> 20);
        for (int i = 0; i < full.size(); i++) {
            if (full.timeAt(i) / DAY % 4 != 0) {
                air.add(full.timeAt(i), full.valueAt(i));
            }
        }
        WarmestWeek warmest = WarmestWeek.of(air.build(), 365L * DAY, OptionalDouble.of(25));
        assertEquals(WarmestWeek.Source.ENTERED, warmest.source());
    }

    @Test
    void aGuessedYearReachesItsCrestAndItsSpread() {
        WarmestWeek warmest = WarmestWeek.ofYear(new YearlySwing(14, 6, 210), 2);
        assertEquals(20 + 2 * 1.645, warmest.celsius(), 0.01);
    }

    @Test
    void theWarmestWeekOfATrackIsFoundInItsStretch() {
        double[] values = new double[40 * 24];
        for (int i = 0; i < values.length; i++) {
            values[i] = i >= 20 * 24 && i < 27 * 24 ? 29 : 19;
        }
        Track track = Track.of(0, HOUR, values, new double[values.length]);
        assertEquals(29, WarmestWeek.ahead(track, 0, 40L * DAY).celsius(), 1e-9);
        assertEquals(19, WarmestWeek.ahead(track, 0, 20L * DAY).celsius(), 1e-9);
        assertEquals(29, WarmestWeek.ahead(track, 21L * DAY, 22L * DAY).celsius(), 1e-9);
        assertTrue(WarmestWeek.ahead(track, 17L * DAY, 24L * DAY).celsius() > 19);
    }

    private static TimeSeries log(int days, DoubleUnaryOperator celsius) {
        TimeSeries.Builder air = new TimeSeries.Builder();
        for (int day = 0; day < days; day++) {
            for (int hour = 0; hour < 24; hour++) {
                air.add(day * (long) DAY + (long) hour * HOUR, celsius.applyAsDouble(day));
            }
        }
        air.add(days * (long) DAY, celsius.applyAsDouble(days - 1.0));
        return air.build();
    }
}
