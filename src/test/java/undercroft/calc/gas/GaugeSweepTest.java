package undercroft.calc.gas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GaugeSweepTest {
    private static final int MEMBERS = 257;

    private final double[] grams = new double[MEMBERS];
    private final double[] factor = new double[MEMBERS];
    private final double[] airAmount = new double[MEMBERS];
    private final double[] airTrapped = new double[MEMBERS];
    private final double[] gauge = new double[MEMBERS];

    GaugeSweepTest() {
        for (int i = 0; i < MEMBERS; i++) {
            double share = i / (MEMBERS - 1.0);
            grams[i] = 12 * share * share;
            factor[i] = 0.8 + 0.2 * ((i * 37) % MEMBERS) / MEMBERS;
            airAmount[i] = ((i * 11) % MEMBERS) / (MEMBERS - 1.0);
            airTrapped[i] = ((i * 23) % MEMBERS) / (MEMBERS - 1.0);
        }
        Arrays.fill(gauge, Double.NaN);
    }

    /** Against the bracketing solution, through a year's temperatures, also where the beer comes to fill the bottle. */
    @ParameterizedTest
    @CsvSource({"500, 520", "500, 502", "300, 520"})
    void aSweepFindsWhatEachMemberWouldFindAlone(double fill, double brimful) {
        ClosedBottle bottle = ClosedBottle.of(brimful, fill, 5, 15, 1.01325);
        GaugeSweep sweep = GaugeSweep.of(bottle, MEMBERS);
        for (double celsius = -5; celsius <= 60; celsius += 2.3) {
            sweep.gaugesBar(celsius, grams, factor, airAmount, airTrapped, gauge);
            for (int i = 0; i < MEMBERS; i++) {
                double alone = bottle.at(celsius, grams[i], factor[i], airAmount[i], airTrapped[i])
                        .gaugeBar();
                assertEquals(alone, gauge[i], 1e-4, "member " + i + " at " + celsius);
            }
        }
    }

    @Test
    void aSweepAllocatesNothing() {
        GaugeSweep sweep = GaugeSweep.of(ClosedBottle.of(520, 500, 5, 20, 1.01325), MEMBERS);
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        long thread = Thread.currentThread().getId();
        sweep.gaugesBar(20, grams, factor, airAmount, airTrapped, gauge);
        long before = threads.getThreadAllocatedBytes(thread);
        for (int i = 0; i < 50; i++) {
            sweep.gaugesBar(10 + i * 0.4, grams, factor, airAmount, airTrapped, gauge);
        }
        assertTrue(threads.getThreadAllocatedBytes(thread) - before < 1000);
    }

    @Test
    void refusesArraysOfAnotherLengthAndValuesOutsideTheModel() {
        ClosedBottle bottle = ClosedBottle.of(520, 500, 5, 20, 1.01325);
        assertThrows(IllegalArgumentException.class, () -> GaugeSweep.of(bottle, 0));
        GaugeSweep sweep = GaugeSweep.of(bottle, MEMBERS);
        assertThrows(
                IllegalArgumentException.class,
                () -> sweep.gaugesBar(20, new double[3], factor, airAmount, airTrapped, gauge));
        assertThrows(
                IllegalArgumentException.class, () -> sweep.gaugesBar(70, grams, factor, airAmount, airTrapped, gauge));
        factor[7] = Double.NaN;
        assertThrows(
                IllegalArgumentException.class, () -> sweep.gaugesBar(20, grams, factor, airAmount, airTrapped, gauge));
    }
}
