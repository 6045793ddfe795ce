package undercroft.calc.spell;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Arrays;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.hipparchus.stat.descriptive.rank.Median;
import org.junit.jupiter.api.Test;

class RunningMedianTest {
    /** Oracle: Hipparchus' median of each window. */
    @Property(tries = 150, seed = "20260104")
    void itIsTheMedianOfEachWindow(
            @ForAll long seed,
            @ForAll @IntRange(min = 1, max = 200) int size,
            @ForAll @IntRange(min = 1, max = 60) int window) {
        Random random = new Random(seed);
        double[] values = new double[size];
        for (int i = 0; i < size; i++) {
            values[i] = random.nextInt(7) == 0 ? Double.NaN : Math.rint(random.nextGaussian() * 20) / 4;
        }
        double[] medians = RunningMedian.trailing(values, window, 1);
        for (int i = 0; i < size; i++) {
            int until = Math.min(size, Math.max(i + 1, window));
            double[] known = Arrays.stream(values, Math.max(0, until - window), until)
                    .filter(x -> !Double.isNaN(x))
                    .toArray();
            double expected = known.length == 0 ? Double.NaN : new Median().evaluate(known);
            assertEquals(expected, medians[i], 1e-12);
        }
    }

    @Test
    void tooFewValuesHaveNoMedian() {
        double[] medians = RunningMedian.trailing(new double[] {1, Double.NaN, Double.NaN, 4, 5}, 2, 2);
        assertArrayEquals(new double[] {Double.NaN, Double.NaN, Double.NaN, Double.NaN, 4.5}, medians);
    }
}
