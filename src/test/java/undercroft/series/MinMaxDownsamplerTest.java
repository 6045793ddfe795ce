package undercroft.series;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashMap;
import java.util.HashSet;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

/** Held against a slow search of every column for its extremes, the definition of the thinning. */
class MinMaxDownsamplerTest {
    private static final long LONGEST_STEP = 20;

    /** Steps of 1 to 9 s with a longer one now and then, some of them gaps. */
    private static TimeSeries uneven(long seed, int size) {
        Random random = new Random(seed);
        TimeSeries.Builder series = new TimeSeries.Builder();
        long time = random.nextInt(100) - 50L;
        for (int i = 0; i < size; i++) {
            series.add(time, random.nextGaussian());
            time += random.nextInt(12) == 0 ? 10L + random.nextInt(60) : 1L + random.nextInt(9);
        }
        return series.build();
    }

    private static long column(long time, long from, long until, int columns) {
        if (time < from) {
            return -1;
        }
        return time >= until ? columns : (time - from) * columns / (until - from);
    }

    @Property(tries = 400, seed = "20260104")
    void everyColumnKeepsItsExtremesInAtMostFourPoints(
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
            @ForAll @IntRange(min = 1, max = 1500) int size,
            @ForAll @IntRange(min = 1, max = 40) int columns,
            @ForAll @LongRange(min = -100, max = 2500) long from,
            @ForAll @LongRange(min = 1, max = 9000) long span) {
        TimeSeries series = uneven(seed, size);
        long until = from + span;
        ThinnedSeries thinned = MinMaxDownsampler.thin(series, from, until, columns, LONGEST_STEP);

        Map<Long, Integer> pointsIn = new HashMap<>();
        Map<Long, double[]> seen = new HashMap<>();
        for (int i = 0; i < thinned.size(); i++) {
            assertTrue(i == 0 || thinned.timeAt(i) > thinned.timeAt(i - 1), "time rises");
            assertEquals(thinned.valueAt(i), series.valueAt(series.indexAtOrBefore(thinned.timeAt(i))));
            long column = column(thinned.timeAt(i), from, until, columns);
            pointsIn.merge(column, 1, Integer::sum);
            widen(seen, column, thinned.valueAt(i));
        }
        Map<Long, double[]> whole = new HashMap<>();
        for (int i = 0; i < series.size(); i++) {
            long column = column(series.timeAt(i), from, until, columns);
            if (column >= 0 && column < columns) {
                widen(whole, column, series.valueAt(i));
            }
        }
        whole.forEach((column, reach) -> {
            assertEquals(reach[0], seen.get(column)[0]);
            assertEquals(reach[1], seen.get(column)[1]);
        });
        pointsIn.forEach((column, points) ->
                assertTrue(points <= (column >= 0 && column < columns ? 4 : 1), "points in column " + column));
    }

    private static void widen(Map<Long, double[]> reaches, long column, double value) {
        double[] reach = reaches.computeIfAbsent(column, c -> new double[] {value, value});
        reach[0] = Math.min(reach[0], value);
        reach[1] = Math.max(reach[1], value);
    }

    @Property(tries = 400, seed = "20260104")
    void theLineBreaksJustWhereAGapLiesBetweenTwoKeptPoints(
            @ForAll @LongRange(min = 0, max = 1_000_000) long seed,
            @ForAll @IntRange(min = 2, max = 1500) int size,
            @ForAll @IntRange(min = 1, max = 40) int columns) {
        TimeSeries series = uneven(seed, size);
        long from = series.firstTime();
        long until = series.lastTime() + 1;
        ThinnedSeries thinned = MinMaxDownsampler.thin(series, from, until, columns, LONGEST_STEP);
        assertFalse(thinned.breaksBefore(0));
        for (int i = 1; i < thinned.size(); i++) {
            TimeSeries between = series.between(thinned.timeAt(i - 1), thinned.timeAt(i) + 1);
            assertEquals(!between.gaps(LONGEST_STEP).isEmpty(), thinned.breaksBefore(i), "before point " + i);
        }
        Set<Long> kept = new HashSet<>();
        for (int i = 0; i < thinned.size(); i++) {
            kept.add(thinned.timeAt(i));
        }
        for (Span gap : series.gaps(LONGEST_STEP)) {
            if (column(gap.fromInclusive(), from, until, columns)
                    != column(gap.untilExclusive(), from, until, columns)) {
                assertTrue(kept.contains(gap.fromInclusive()) && kept.contains(gap.untilExclusive()), "edges of a gap");
            }
        }
    }

    @Test
    void oneSampleOnEachSideOfTheRangeIsKept() {
        TimeSeries series = TimeSeries.of(new long[] {0, 10, 20, 30, 40, 50}, new double[] {0, 1, 2, 3, 4, 5});
        ThinnedSeries thinned = MinMaxDownsampler.thin(series, 15, 35, 10, 100);
        assertEquals(4, thinned.size());
        assertEquals(10, thinned.timeAt(0));
        assertEquals(40, thinned.timeAt(3));
    }

    @Test
    void valuesThatAreNotKnownBreakTheLineOfABand() {
        double[] level = {1, Double.NaN, 3, 4};
        Band band = Band.of(new long[] {0, 10, 20, 30}, level, level, level, level, level);
        ThinnedSeries thinned = MinMaxDownsampler.thin(band, 0, 31, 100);
        assertEquals(3, thinned.size());
        assertTrue(thinned.breaksBefore(1));
        assertFalse(thinned.breaksBefore(2));
    }

    @Test
    void anEmptySeriesStaysEmptyAndAnEmptyRangeIsRefused() {
        assertEquals(0, MinMaxDownsampler.thin(TimeSeries.empty(), 0, 10, 5, 1).size());
        assertThrows(IllegalArgumentException.class, () -> MinMaxDownsampler.thin(TimeSeries.empty(), 10, 10, 5, 1));
    }

    @Test
    void theExtremesOfABinStandWhereTheyWereRead() {
        TimeSeries series = TimeSeries.of(new long[] {0, 10, 20, 30, 40, 100, 130}, new double[] {5, 9, 1, 4, 6, 7, 7});
        TimeSeries kept = MinMaxDownsampler.extremes(series, 60);
        assertEquals(TimeSeries.of(new long[] {10, 20, 100, 130}, new double[] {9, 1, 7, 7}), kept);
        assertEquals(series, MinMaxDownsampler.extremes(series, 1));
        assertTrue(MinMaxDownsampler.extremes(TimeSeries.empty(), 60).isEmpty());
        assertThrows(IllegalArgumentException.class, () -> MinMaxDownsampler.extremes(series, 0));
    }
}
