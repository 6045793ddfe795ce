package undercroft.calc.spell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import undercroft.calc.spell.CleanSeries.Verdict;
import undercroft.series.TimeSeries;

class CleanSeriesTest {
    /** −127 and 85 °C: Maxim's DS18B20 data sheet 19-7487 (disconnected, power-on); the others common practice. */
    @ParameterizedTest
    @ValueSource(doubles = {-127, 85, 999, -999, 9999, -9999, 327.67, 127})
    void whatALostSensorSendsIsDropped(double marker) {
        CleanSeries clean = CleanSeries.of(hourly(20, 20.1, marker, 20.2, 20.1, 20));
        assertEquals(1, clean.count(Verdict.SENTINEL));
        assertEquals(Verdict.SENTINEL, clean.verdictAt(2));
        assertEquals(5, clean.series().size());
        assertEquals(2 * 3600, clean.raw().timeAt(2));
    }

    @Test
    void whatNoPlaceHadIsDropped() {
        CleanSeries clean = CleanSeries.of(hourly(20, 71.5, 20, -60, 20, 20));
        assertEquals(2, clean.count(Verdict.IMPOSSIBLE));
        assertEquals(2, clean.droppedCount());
        assertEquals(4, clean.count(Verdict.KEPT));
    }

    @Test
    void aTenMinuteSpikeOfFortyDegreesIsRepaired() {
        double[] values = new double[1440];
        for (int i = 0; i < values.length; i++) {
            values[i] = i >= 700 && i < 710 ? 40 : 18 + Math.sin(i * Math.PI / 720);
        }
        CleanSeries clean = CleanSeries.of(every(60, values));
        assertEquals(10, clean.count(Verdict.SPIKE));
        assertEquals(1440, clean.series().size());
        for (int i = 700; i < 710; i++) {
            assertEquals(18, clean.series().valueAt(i), 1.1);
        }
    }

    @Test
    void aStepStaysAsItIs() {
        double[] values = new double[200];
        Arrays.fill(values, 0, 100, 12);
        Arrays.fill(values, 100, 200, 21);
        CleanSeries clean = CleanSeries.of(hourly(values));
        assertEquals(200, clean.count(Verdict.KEPT));
    }

    @Test
    void aSwingOfTwentyKelvinsADayStaysAsItIs() {
        double[] values = new double[24 * 60 * 5];
        for (int i = 0; i < values.length; i++) {
            values[i] = 15 + 10 * Math.sin(2 * Math.PI * i / 1440);
        }
        CleanSeries clean = CleanSeries.of(every(60, values));
        assertEquals(values.length, clean.count(Verdict.KEPT));
    }

    @Test
    void anEmptySeriesIsClean() {
        assertEquals(0, CleanSeries.of(TimeSeries.empty()).series().size());
    }

    /** Oracle: the definition (Hampel 1974) by sorting each window, on values that are whole 1/32 K. */
    @Property(tries = 60)
    void theRunningFilterAgreesWithTheDefinition(
            @ForAll long seed,
            @ForAll @IntRange(min = 1, max = 400) int size,
            @ForAll @IntRange(min = 0, max = 8) int noise) {
        Random random = new Random(seed);
        long[] times = new long[size];
        double[] values = new double[size];
        long time = 0;
        for (int i = 0; i < size; i++) {
            time += 60 + random.nextInt(3600);
            times[i] = time;
            double value = 15 + noise * random.nextGaussian() + (random.nextInt(12) == 0 ? random.nextInt(30) - 15 : 0);
            values[i] = Math.rint(Math.max(-39, Math.min(69, value)) * 32) / 32;
        }
        CleanSeries clean = CleanSeries.of(TimeSeries.of(times, values));
        for (int i = 0; i < size; i++) {
            assertEquals(byDefinition(times, values, i), clean.series().valueAt(i), 0, "sample " + i);
        }
    }

    @Property(tries = 100)
    void everySampleIsCountedOnce(@ForAll long seed, @ForAll @IntRange(min = 0, max = 300) int size) {
        Random random = new Random(seed);
        double[] values = random.doubles(size, -150, 150).map(Math::rint).toArray();
        CleanSeries clean = CleanSeries.of(hourly(values));
        int counted = Arrays.stream(Verdict.values()).mapToInt(clean::count).sum();
        assertEquals(size, counted);
        assertEquals(size - clean.droppedCount(), clean.series().size());
        for (int i = 0; i < clean.series().size(); i++) {
            assertTrue(Math.abs(clean.series().valueAt(i)) <= 70);
        }
    }

    private static double byDefinition(long[] times, double[] values, int at) {
        double[] window = java.util.stream.IntStream.range(0, values.length)
                .filter(i -> Math.abs(times[i] - times[at]) <= 6 * 3600)
                .mapToDouble(i -> values[i])
                .sorted()
                .toArray();
        double median = window[(window.length - 1) / 2];
        double[] off =
                Arrays.stream(window).map(x -> Math.abs(x - median)).sorted().toArray();
        // The upper of two middles: more than half must lie nearer for a spike.
        double mad = off[window.length / 2];
        double deviation = Math.abs(values[at] - median);
        boolean spike = window.length >= 5 && deviation > 3 && deviation > 4 * 1.4826 * mad;
        return spike ? median : values[at];
    }

    private static TimeSeries hourly(double... values) {
        return every(3600, values);
    }

    private static TimeSeries every(int seconds, double... values) {
        TimeSeries.Builder builder = new TimeSeries.Builder();
        for (int i = 0; i < values.length; i++) {
            builder.add((long) i * seconds, values[i]);
        }
        return builder.build();
    }
}
