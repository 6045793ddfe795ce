package undercroft.series;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;
import java.util.stream.LongStream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;

final class TimeSeriesTest {
    private static final TimeSeries SERIES = TimeSeries.of(new long[] {0, 10, 20, 100}, new double[] {1, 2, 4, 8});

    @Test
    void theLastSampleAtOrBeforeAnInstantIsFound() {
        assertEquals(-1, SERIES.indexAtOrBefore(-1));
        assertEquals(0, SERIES.indexAtOrBefore(9));
        assertEquals(1, SERIES.indexAtOrBefore(10));
        assertEquals(3, SERIES.indexAtOrBefore(1_000));
    }

    @Test
    void betweenSamplesTheValueRunsStraight() {
        assertEquals(3, SERIES.interpolated(15));
        assertEquals(8, SERIES.interpolated(100));
        assertTrue(Double.isNaN(SERIES.interpolated(101)));
        assertTrue(Double.isNaN(SERIES.interpolated(-1)));
    }

    @Test
    void aStretchTakesItsBeginningAndLeavesItsEnd() {
        assertEquals(TimeSeries.of(new long[] {10, 20}, new double[] {2, 4}), SERIES.between(10, 100));
        assertTrue(SERIES.between(30, 90).isEmpty());
    }

    @Test
    void aLongStepIsAGap() {
        assertEquals(List.of(new Span(20, 100)), SERIES.gaps(10));
        assertEquals(List.of(), SERIES.gaps(80));
    }

    @Test
    void disorderAndWhatIsNoNumberAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> TimeSeries.of(new long[] {1, 1}, new double[] {0, 0}));
        assertThrows(IllegalArgumentException.class, () -> TimeSeries.of(new long[] {1}, new double[] {Double.NaN}));
        assertThrows(IllegalArgumentException.class, () -> TimeSeries.of(new long[] {1, 2}, new double[] {1}));
        assertThrows(
                IllegalArgumentException.class,
                () -> new TimeSeries.Builder().add(5, 1).add(5, 2));
    }

    @Property(seed = "20260104")
    void mergingIsWhatASortedMapWouldDo(
            @ForAll @Size(max = 40) List<@IntRange(min = 0, max = 60) Integer> first,
            @ForAll @Size(max = 40) List<@IntRange(min = 0, max = 60) Integer> second) {
        Map<Long, Double> expected = new TreeMap<>();
        TimeSeries one = series(first, 1, expected);
        TimeSeries two = series(second, 2, expected);
        TimeSeries.Builder wanted = new TimeSeries.Builder();
        for (Map.Entry<Long, Double> entry : expected.entrySet()) {
            wanted.add(entry.getKey(), entry.getValue());
        }
        assertEquals(wanted.build(), one.mergedWith(two));
    }

    private static TimeSeries series(List<Integer> times, double value, Map<Long, Double> all) {
        TimeSeries.Builder series = new TimeSeries.Builder();
        times.stream().distinct().sorted().forEach(time -> {
            series.add(time, value);
            all.put((long) time, value);
        });
        return series.build();
    }

    @Test
    void aTrackHoldsAnInstantWithinItsGrid() {
        Track track = Track.of(100, 10, new double[] {1, 2, 3}, new double[] {0, 0, 0});
        assertEquals(0, track.indexAt(50));
        assertEquals(1, track.indexAt(119));
        assertEquals(2, track.indexAt(5_000));
        assertThrows(IllegalArgumentException.class, () -> Track.of(0, 10, new double[] {1}, new double[] {-1}));
        assertThrows(IllegalArgumentException.class, () -> Track.of(0, 0, new double[] {1}, new double[] {0}));
    }

    @Property(tries = 200, seed = "20260104")
    void theLowestAndHighestOfAStretchAreFound(
            @ForAll @IntRange(min = 1, max = 700) int size,
            @ForAll @IntRange(min = 0, max = 699) int from,
            @ForAll long seed) {
        Random random = new Random(seed);
        long[] times = LongStream.range(0, size).toArray();
        double[] values = random.ints(size, -20, 20).asDoubleStream().toArray();
        TimeSeries series = TimeSeries.of(times, values);
        int first = Math.min(from, size - 1);
        int last = first + random.nextInt(size - first);
        double[] stretch = Arrays.copyOfRange(values, first, last + 1);
        double low = Arrays.stream(stretch).min().orElseThrow();
        double high = Arrays.stream(stretch).max().orElseThrow();
        assertEquals(low, series.valueAt(series.lowestBetween(first, last)));
        assertEquals(high, series.valueAt(series.highestBetween(first, last)));
    }
}
