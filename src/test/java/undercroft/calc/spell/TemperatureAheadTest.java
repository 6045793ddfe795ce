package undercroft.calc.spell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.Random;
import java.util.function.LongToDoubleFunction;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import undercroft.series.TimeSeries;
import undercroft.series.Track;

class TemperatureAheadTest {
    private static final int HOUR = 3600;
    private static final int DAY = 24 * HOUR;
    private static final long NOW = 1_700_000_000;

    @Test
    void aYearlySwingIsRecoveredFromTwoYears() {
        YearlySwing place = new YearlySwing(14, 6, 210);
        TemperatureAhead ahead = TemperatureAhead.from(history(730, place::celsiusAt));
        assertEquals(14, ahead.season().meanCelsius(), 0.01);
        assertEquals(6, ahead.season().amplitudeKelvin(), 0.01);
        assertEquals(210, ahead.season().warmestDay(), 0.5);
        Track track = ahead.track(NOW, NOW + 180L * DAY, HOUR);
        for (int i = 0; i < track.size(); i++) {
            assertEquals(place.celsiusAt(track.timeAt(i)), track.valueAt(i), 0.1);
        }
    }

    @Test
    void theWarmestDayOfASwingIsTheOneNamed() {
        YearlySwing swing = new YearlySwing(12, 7, 213);
        assertEquals(19, swing.celsiusAt(Instant.parse("2026-08-01T12:00:00Z").getEpochSecond()), 0.01);
        assertEquals(5, swing.celsiusAt(Instant.parse("2026-01-30T12:00:00Z").getEpochSecond()), 0.01);
    }

    @Test
    void itStartsWhereTheHistoryEndsAndRelaxesToTheUsual() {
        Random random = new Random(4);
        double[] off = {0};
        BottleHistory history = history(40, time -> {
            off[0] = 0.98 * off[0] + 0.3 * random.nextGaussian();
            return 18 + off[0] + (time > NOW - 2L * DAY ? 5 : 0);
        });
        TemperatureAhead ahead = TemperatureAhead.from(history);
        Track track = ahead.track(NOW, NOW + 60L * DAY, HOUR);
        double last = history.track().valueAt(history.track().size() - 1);
        assertEquals(last, track.valueAt(0), 0.6);
        assertEquals(ahead.season().meanCelsius(), track.valueAt(40 * 24), 0.2);
        assertTrue(track.valueAt(24) > track.valueAt(10 * 24));
    }

    @Test
    void theShapeOfTheDayGoesOn() {
        BottleHistory history = history(60, time -> 18 + 2 * Math.sin(2 * Math.PI * time / DAY));
        Track track = TemperatureAhead.from(history).track(NOW, NOW + 5L * DAY, HOUR);
        for (int i = 24; i < track.size(); i++) {
            assertEquals(18 + 2 * Math.sin(2 * Math.PI * track.timeAt(i) / DAY), track.valueAt(i), 0.15);
        }
    }

    /** A first-order autoregression keeps σ²(1 − ρ^2d) of its variance unknown after d days (Box and Jenkins). */
    @Test
    void theSpreadGrowsFromHalfAKelvinToThePlacesOwnVariability() {
        Random random = new Random(11);
        double[] level = {0};
        BottleHistory history = history(700, time -> {
            if (Math.floorMod(time - NOW, (long) DAY) == 0) {
                level[0] = 0.7 * level[0] + 2 * Math.sqrt(1 - 0.49) * random.nextGaussian();
            }
            return 15 + level[0];
        });
        TemperatureAhead ahead = TemperatureAhead.from(history);
        assertEquals(0.7, ahead.memory().orElseThrow(), 0.1);
        assertEquals(2, ahead.wanderKelvin(), 0.3);
        Track track = ahead.track(NOW, NOW + 60L * DAY, HOUR);
        assertEquals(0.5, track.spreadAt(0), 0.05);
        for (int i = 1; i < track.size(); i++) {
            assertTrue(track.spreadAt(i) >= track.spreadAt(i - 1));
        }
        assertEquals(Math.hypot(0.5, ahead.wanderKelvin()), track.spreadAt(track.size() - 1), 0.01);
    }

    @Test
    void aSeasonNobodySawWidensTheSpread() {
        Track track = TemperatureAhead.from(history(40, time -> 18)).track(NOW, NOW + 120L * DAY, HOUR);
        assertTrue(track.spreadAt(100 * 24) > 4);
        assertEquals(18, track.valueAt(100 * 24), 1e-6);
    }

    @Test
    void aLongUnknownEndIsCountedAsTimeAlreadyGone() {
        TimeSeries.Builder air = new TimeSeries.Builder();
        for (long time = NOW - 60L * DAY; time < NOW - 20L * DAY; time += HOUR) {
            air.add(time, 16 + Math.sin(2 * Math.PI * time / (5.0 * DAY)));
        }
        BottleHistory history = BottleLag.of(air.build(), NOW - 60L * DAY, NOW, HOUR, 3);
        Track track = TemperatureAhead.from(history).track(NOW, NOW + DAY, HOUR);
        assertTrue(track.spreadAt(0) > 1.2);
        assertEquals(16, track.valueAt(0), 0.5);
    }

    @Test
    void aGuessIsAFlatLineWithItsSpread() {
        Track track = TemperatureAhead.guess(19, 3).track(0, 10L * DAY, HOUR);
        assertEquals(240, track.size());
        assertEquals(19, track.valueAt(200), 1e-12);
        assertEquals(3, track.spreadAt(200));
    }

    @Test
    void withoutAnyReadingItIsTheWideGuess() {
        BottleHistory history = BottleLag.of(TimeSeries.empty(), NOW - 5L * DAY, NOW, HOUR, 3);
        Track track = TemperatureAhead.from(history).track(NOW, NOW + DAY, HOUR);
        assertTrue(track.spreadAt(0) >= 4);
        YearlySwing year = new YearlySwing(12, 7, 213);
        Track yearly = TemperatureAhead.from(history, year).track(NOW, NOW + DAY, HOUR);
        assertEquals(year.celsiusAt(NOW), yearly.valueAt(0), 1e-9);
    }

    @Test
    void nonsenseIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> TemperatureAhead.guess(Double.NaN, 1));
        assertThrows(IllegalArgumentException.class, () -> TemperatureAhead.guess(18, -1));
        TemperatureAhead guess = TemperatureAhead.guess(18, 1);
        assertThrows(IllegalArgumentException.class, () -> guess.track(5, 5, HOUR));
    }

    @Property(tries = 60, seed = "20260104")
    void theSameHistoryGivesTheSameFiniteOutlook(
            @ForAll long seed,
            @ForAll @IntRange(min = 1, max = 400) int days,
            @ForAll @DoubleRange(min = 0, max = 6) double wander) {
        BottleHistory history = history(days, random(seed, wander));
        Track once = TemperatureAhead.from(history).track(NOW, NOW + 200L * DAY, 6 * HOUR);
        Track again = TemperatureAhead.from(history(days, random(seed, wander))).track(NOW, NOW + 200L * DAY, 6 * HOUR);
        for (int i = 0; i < once.size(); i++) {
            assertEquals(once.valueAt(i), again.valueAt(i));
            assertEquals(once.spreadAt(i), again.spreadAt(i));
            assertTrue(once.spreadAt(i) >= 0.5);
        }
    }

    private static LongToDoubleFunction random(long seed, double wander) {
        Random random = new Random(seed);
        return time -> 17 + wander * random.nextGaussian();
    }

    private static BottleHistory history(int days, LongToDoubleFunction celsius) {
        double[] values = new double[days * 24];
        long from = NOW - (long) days * DAY;
        for (int i = 0; i < values.length; i++) {
            values[i] = celsius.applyAsDouble(from + (long) i * HOUR);
        }
        return BottleHistory.known(Track.of(from, HOUR, values, new double[values.length]));
    }
}
