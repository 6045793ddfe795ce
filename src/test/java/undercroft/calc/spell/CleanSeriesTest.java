package undercroft.calc.spell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
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

    /** The commonest logger, ten minutes a sample, on a calm day: one sample of 40 °C, then two. */
    @ParameterizedTest
    @ValueSource(ints = {1, 2})
    void oneOrTwoSamplesOfFortyDegreesAreTakenOutAndCounted(int hot) {
        double[] values = new double[288];
        for (int i = 0; i < values.length; i++) {
            values[i] = i >= 100 && i < 100 + hot ? 40 : day(i);
        }
        CleanSeries clean = CleanSeries.of(every(600, values));
        assertEquals(hot, clean.count(Verdict.SPIKE));
        assertEquals(0, clean.droppedCount());
        for (int i = 0; i < values.length; i++) {
            assertEquals(day(i), clean.series().valueAt(i), i >= 100 && i < 100 + hot ? 0.05 : 0);
            assertEquals(i >= 100 && i < 100 + hot ? Verdict.SPIKE : Verdict.KEPT, clean.verdictAt(i), "sample " + i);
        }
    }

    @Test
    void threeHotSamplesInARowAreWeather() {
        double[] values = new double[288];
        for (int i = 0; i < values.length; i++) {
            values[i] = i >= 100 && i < 103 ? 40 : day(i);
        }
        assertEquals(288, CleanSeries.of(every(600, values)).count(Verdict.KEPT));
    }

    /** Half an hour between samples: the outlier may have lasted most of an hour, so it is believed. */
    @Test
    void aHotHalfHourIsWeatherHoweverFewItsSamples() {
        double[] values = new double[96];
        Arrays.fill(values, 20);
        values[40] = 38;
        assertEquals(1, CleanSeries.of(every(900, values)).count(Verdict.SPIKE));
        assertEquals(0, CleanSeries.of(every(1800, values)).count(Verdict.SPIKE));
        assertEquals(0, CleanSeries.of(every(3600, values)).count(Verdict.SPIKE));
    }

    /** A place under a roof: 20 °C, and 38 °C for five hours of every day. */
    @ParameterizedTest
    @ValueSource(ints = {60, 600, 900, 3600})
    void aHotAfternoonIsKeptWhole(int seconds) {
        double[] values = new double[5 * 86_400 / seconds];
        for (int i = 0; i < values.length; i++) {
            double hour = (double) i * seconds / 3600 % 24;
            values[i] = hour >= 12 && hour < 17 ? 38 : 20;
        }
        CleanSeries clean = CleanSeries.of(every(seconds, values));
        assertEquals(values.length, clean.count(Verdict.KEPT));
        assertEquals(38, highest(clean.series()), 0);
    }

    /** A smooth hump of 15 K over four hours, and one of 12 K within an hour. */
    @ParameterizedTest
    @CsvSource({"4, 15, 600", "4, 15, 60", "4, 15, 1200", "1, 12, 600", "1, 12, 300"})
    void aSmoothHumpIsKeptWhole(double hours, double kelvin, int seconds) {
        double[] values = new double[86_400 / seconds];
        for (int i = 0; i < values.length; i++) {
            double hour = (double) i * seconds / 3600 - 12;
            values[i] = 18 + (Math.abs(hour) < hours / 2 ? kelvin * (1 + Math.cos(2 * Math.PI * hour / hours)) / 2 : 0);
        }
        CleanSeries clean = CleanSeries.of(every(seconds, values));
        assertEquals(values.length, clean.count(Verdict.KEPT));
        assertEquals(18 + kelvin, highest(clean.series()), 0.5);
    }

    @Test
    void anOutlierThatHasNotReturnedIsKept() {
        CleanSeries clean = CleanSeries.of(every(600, 20, 20, 20, 20, 40));
        assertEquals(0, clean.count(Verdict.SPIKE));
        assertEquals(40, clean.series().lastValue());
    }

    @Test
    void aStepBesideAnOutlierIsNotTakenForItsReturn() {
        assertEquals(0, CleanSeries.of(every(600, 20, 20, 20, 40, 30, 30, 30)).count(Verdict.SPIKE));
        assertEquals(0, CleanSeries.of(every(600, 20, 20, 20, 20, 30, 30, 30)).count(Verdict.SPIKE));
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

    /** Weather of any size that takes two hours and more from peak to peak, however it is sampled. */
    @Property(tries = 300, seed = "20260104")
    void noSmoothWeatherLosesAReading(
            @ForAll @DoubleRange(min = 2, max = 48) double periodHours,
            @ForAll @DoubleRange(min = 0, max = 20) double kelvin,
            @ForAll @DoubleRange(min = 0, max = 6.3) double phase,
            @ForAll @IntRange(min = 10, max = 5400) int seconds) {
        double[] values = new double[200];
        for (int i = 0; i < values.length; i++) {
            values[i] = 15 + kelvin * Math.sin(phase + 2 * Math.PI * i * seconds / 3600 / periodHours);
        }
        assertEquals(200, CleanSeries.of(every(seconds, values)).count(Verdict.KEPT));
    }

    /** Whatever comes in, what is taken out is one or two samples long, and a line goes where it was. */
    @Property(tries = 300, seed = "20260104")
    void whatIsTakenOutIsShortAndLiesBetweenItsNeighbours(
            @ForAll long seed,
            @ForAll @IntRange(min = 0, max = 300) int size,
            @ForAll @IntRange(min = 0, max = 4) int noise) {
        Random random = new Random(seed);
        double[] values = new double[size];
        for (int i = 0; i < size; i++) {
            values[i] = 15 + noise * random.nextGaussian() / 4 + (random.nextInt(8) == 0 ? random.nextInt(40) - 20 : 0);
        }
        CleanSeries clean = CleanSeries.of(every(600, values));
        int run = 0;
        for (int i = 0; i < size; i++) {
            run = clean.verdictAt(i) == Verdict.SPIKE ? run + 1 : 0;
            assertTrue(run <= 2, "sample " + i);
            if (run > 0) {
                double low =
                        Math.min(clean.series().valueAt(i - 1), clean.series().valueAt(i + 1));
                double high =
                        Math.max(clean.series().valueAt(i - 1), clean.series().valueAt(i + 1));
                assertTrue(clean.series().valueAt(i) >= low - 1e-9
                        && clean.series().valueAt(i) <= high + 1e-9);
                assertTrue(values[i] > high + 3 || values[i] < low - 3, "sample " + i);
            }
        }
    }

    @Property(tries = 100, seed = "20260104")
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

    /** A calm day at the ten-minute sample of an index. */
    private static double day(int index) {
        return 18 + Math.sin(index * Math.PI / 72);
    }

    private static double highest(TimeSeries series) {
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < series.size(); i++) {
            highest = Math.max(highest, series.valueAt(i));
        }
        return highest;
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
