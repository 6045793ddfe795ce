package undercroft.calc.spell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import undercroft.calc.spell.BottleHistory.Filling;
import undercroft.series.TimeSeries;

class BottleLagTest {
    private static final int HOUR = 3600;
    private static final int DAY = 24 * HOUR;

    /** Step answer of a first-order lag, 1 − e^(−t/τ): any textbook of control, such as Åström and Murray, chapter 6. */
    @Test
    void aStepOfTheAirIsFollowedExponentially() {
        TimeSeries air = new TimeSeries.Builder()
                .add(0, 10)
                .add(2 * HOUR, 10)
                .add(2 * HOUR + 1, 20)
                .add(6 * HOUR, 20)
                .add(11 * HOUR, 20)
                .build();
        BottleHistory history = BottleLag.of(air, 2 * HOUR, 10 * HOUR, HOUR, 2);
        double start = history.track().valueAt(0);
        for (int hour = 1; hour < 8; hour++) {
            double exact = 20 + (start - 20) * Math.exp(-hour / 2.0);
            assertEquals(exact, history.track().valueAt(hour), 2e-3);
        }
    }

    /** A sine behind a lag: amplitude 1/√(1 + ω²τ²), phase atan(ωτ) (the same textbooks). */
    @Test
    void aDailySwingIsDampedAndDelayed() {
        double lag = 6;
        double omega = 2 * Math.PI / 24;
        TimeSeries air = series(10 * DAY, 600, t -> 18 + 4 * Math.sin(omega * t / HOUR));
        BottleHistory history = BottleLag.of(air, 5L * DAY, 9L * DAY, HOUR, lag);
        double amplitude = 4 / Math.hypot(1, omega * lag);
        for (int i = 0; i < history.track().size(); i++) {
            double hours = history.track().timeAt(i) / (double) HOUR;
            double exact = 18 + amplitude * Math.sin(omega * hours - Math.atan(omega * lag));
            assertEquals(exact, history.track().valueAt(i), 1e-3);
        }
        assertEquals(1, history.coverage());
    }

    @Test
    void withoutALagTheBottlesHaveTheAir() {
        TimeSeries air = series(2 * DAY, 900, t -> 18 + Math.sin(t / 5000));
        BottleHistory history = BottleLag.of(air, HOUR, DAY, HOUR, 0);
        for (int i = 0; i < history.track().size(); i++) {
            assertEquals(
                    air.interpolated(history.track().timeAt(i)), history.track().valueAt(i), 1e-9);
        }
    }

    @Test
    void aGapOfSixHoursIsBridged() {
        TimeSeries air = without(series(6 * DAY, HOUR, t -> 18), 2L * DAY + 1, 2L * DAY + 6 * HOUR);
        BottleHistory history = BottleLag.of(air, 0, 6L * DAY, HOUR, 3);
        assertTrue(history.patches().isEmpty());
        assertEquals(1, history.coverage());
    }

    @Test
    void aGapOfADayIsFilledFromTheSameHoursBeside() {
        DoubleUnaryOperator swing = t -> 18 + 4 * Math.sin(2 * Math.PI * t / DAY);
        TimeSeries whole = series(8 * DAY, HOUR, swing);
        TimeSeries air = without(whole, 3L * DAY + 1, 4L * DAY + 5 * HOUR);
        BottleHistory history = BottleLag.of(air, DAY, 7L * DAY, HOUR, 3);
        BottleHistory full = BottleLag.of(whole, DAY, 7L * DAY, HOUR, 3);
        assertEquals(1, history.patches().size());
        assertEquals(Filling.ESTIMATED, history.patches().get(0).filling());
        for (int i = 0; i < full.track().size(); i++) {
            assertEquals(full.track().valueAt(i), history.track().valueAt(i), 0.05);
        }
        assertTrue(history.track().spreadAt(60) > full.track().spreadAt(60));
        assertTrue(history.isKnownAt(3L * DAY + HOUR));
        assertEquals(1 - 29 / 144.0, history.coverage(), 1e-6);
    }

    @Test
    void aLongGapIsUnknownBetweenTwoBounds() {
        DoubleUnaryOperator swing = t -> 18 + 4 * Math.sin(2 * Math.PI * t / DAY);
        TimeSeries whole = series(30 * DAY, HOUR, swing);
        TimeSeries air = without(whole, 10L * DAY + 1, 14L * DAY);
        BottleHistory history = BottleLag.of(air, DAY, 29L * DAY, HOUR, 3);
        BottleHistory full = BottleLag.of(whole, DAY, 29L * DAY, HOUR, 3);
        assertEquals(Filling.UNKNOWN, history.patches().get(0).filling());
        assertFalse(history.isKnownAt(12L * DAY));
        assertEquals(4 / 28.0, 1 - history.coverage(), 0.01);
        for (int i = full.track().indexAt(10L * DAY + 12 * HOUR);
                i < full.track().indexAt(14L * DAY - HOUR);
                i++) {
            assertTrue(history.coldest().valueAt(i) < full.track().valueAt(i));
            assertTrue(history.warmest().valueAt(i) > full.track().valueAt(i));
        }
        int later = history.track().indexAt(16L * DAY);
        assertEquals(full.track().valueAt(later), history.track().valueAt(later), 1e-3);
        assertEquals(0.5, history.track().spreadAt(later), 0.01);
    }

    @Test
    void whatLiesOutsideTheReadingsIsUnknown() {
        TimeSeries air = series(5 * DAY, HOUR, t -> 18);
        BottleHistory history = BottleLag.of(air, -10L * DAY, 15L * DAY, HOUR, 3);
        assertEquals(2, history.patches().size());
        assertEquals(5 / 25.0, history.coverage(), 0.01);
        assertTrue(history.track().spreadAt(history.track().size() - 1) > 1.4);
    }

    @Test
    void withoutReadingsAllIsUnknown() {
        BottleHistory history = BottleLag.of(TimeSeries.empty(), 0, 2 * HOUR, HOUR, 3);
        assertEquals(0, history.coverage());
        assertFalse(history.isKnownAt(HOUR));
        assertTrue(history.track().spreadAt(1) >= 4);
    }

    @Test
    void readingsThatOnlyComeLaterLeaveTheTimeBeforeUnknown() {
        TimeSeries air = new TimeSeries.Builder()
                .add(40L * DAY, 15)
                .add(40L * DAY + HOUR, 15)
                .build();
        BottleHistory history = BottleLag.of(air, 0, 10L * DAY, HOUR, 3);
        assertEquals(0, history.coverage());
        assertEquals(15, history.track().valueAt(100), 0.5);
    }

    @Test
    void oneReadingADayIsJoinedByLinesAndMarkedAsEstimated() {
        TimeSeries.Builder dial = new TimeSeries.Builder();
        for (int day = 0; day <= 10; day++) {
            dial.add((long) day * DAY, 15 + day);
        }
        BottleHistory history = BottleLag.of(dial.build(), DAY, 9L * DAY, HOUR, 0);
        assertEquals(0, history.coverage());
        for (int i = 0; i < history.track().size(); i++) {
            assertEquals(16 + i / 24.0, history.track().valueAt(i), 1e-9);
        }
        assertTrue(history.isKnownAt(5L * DAY + HOUR));
    }

    @Test
    void aHistoryWithoutLengthIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> BottleLag.of(TimeSeries.empty(), 5, 5, HOUR, 3));
        assertThrows(IllegalArgumentException.class, () -> BottleLag.of(TimeSeries.empty(), 0, 5, HOUR, Double.NaN));
    }

    @Property(tries = 150, seed = "20260104")
    void bottlesNeverLeaveTheRangeOfTheAir(
            @ForAll long seed,
            @ForAll @IntRange(min = 1, max = 300) int size,
            @ForAll @DoubleRange(min = 0, max = 60) double lag) {
        Random random = new Random(seed);
        TimeSeries.Builder builder = new TimeSeries.Builder();
        long time = random.nextInt(3 * DAY);
        double low = 100;
        double high = -100;
        for (int i = 0; i < size; i++) {
            double value = 10 + 15 * random.nextDouble();
            low = Math.min(low, value);
            high = Math.max(high, value);
            builder.add(time, value);
            time += 1 + random.nextInt(random.nextInt(20) == 0 ? 5 * DAY : 2 * HOUR);
        }
        BottleHistory history = BottleLag.of(builder.build(), DAY, DAY + 20L * DAY, HOUR, lag);
        long patched =
                history.patches().stream().mapToLong(p -> p.span().seconds()).sum();
        assertEquals(1 - patched / (20.0 * DAY), history.coverage(), 1e-9);
        for (int i = 0; i < history.track().size(); i++) {
            assertTrue(
                    history.track().valueAt(i) >= low - 1e-9 && history.track().valueAt(i) <= high + 1e-9);
        }
    }

    private static TimeSeries series(int untilSeconds, int step, DoubleUnaryOperator celsius) {
        TimeSeries.Builder builder = new TimeSeries.Builder();
        for (int t = 0; t <= untilSeconds; t += step) {
            builder.add(t, celsius.applyAsDouble(t));
        }
        return builder.build();
    }

    private static TimeSeries without(TimeSeries series, long from, long until) {
        return series.between(Long.MIN_VALUE + 1, from).mergedWith(series.between(until, Long.MAX_VALUE));
    }
}
