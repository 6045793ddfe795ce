package undercroft.calc.gas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PressureMemoryTest {
    /** EN 16612: k_mod = 0.663 t^(−1/16), t in hours (formula from memory); ratios to the same at 60 s. */
    @ParameterizedTest
    @CsvSource({"3600, 0.77", "86400, 0.64", "2592000, 0.51", "31557600, 0.44"})
    void lastingStrengthFollowsTheGlassStandard(double seconds, double share) {
        double standard = 0.663 * Math.pow(seconds / 3600, -1 / 16.0) / (0.663 * Math.pow(1 / 60.0, -1 / 16.0));
        assertEquals(standard, PressureMemory.lastingShare(seconds), 1e-12);
        assertEquals(share, PressureMemory.lastingShare(seconds), 0.006);
    }

    @Test
    void aMinuteAtAPressureIsWorthThatPressure() {
        assertEquals(5, PressureMemory.after(0, 5, 60), 1e-12);
        assertEquals(5, PressureMemory.after(PressureMemory.after(0, 5, 20), 5, 40), 1e-12);
    }

    /** A year at the limit of a standard bottle is just about what its minute strength of 12 bar allows: 4.7/0.44 = 10.7. */
    @Test
    void aYearAtTheLimitStaysBelowTheMinuteStrength() {
        double worth = PressureMemory.after(0, 4.7, 365.25 * 86400);
        assertEquals(4.7 / 0.439, worth, 0.02);
        PressureLimits limits = new PressureLimits(3.5, 4.7, 12);
        assertEquals(0.89, PressureMemory.shareOfStrength(worth, limits), 0.01);
    }

    /** The closed form against a fine sum of what the integral is defined as. */
    @Test
    void aRampIsItsIntegral() {
        double sum = 0;
        int slices = 200_000;
        for (int i = 0; i < slices; i++) {
            sum += Math.pow(2 + 4 * (i + 0.5) / slices, 16) * 3600.0 / slices / 60;
        }
        assertEquals(Math.pow(sum, 1 / 16.0), PressureMemory.afterRamp(0, 2, 6, 3600), 1e-9);
        assertEquals(PressureMemory.afterRamp(0, 2, 6, 3600), PressureMemory.afterRamp(0, 6, 2, 3600), 1e-12);
        assertEquals(PressureMemory.after(0, 6, 3600), PressureMemory.afterRamp(0, 6, 6, 3600), 1e-12);
    }

    @Test
    void suctionLeavesNoTrace() {
        assertEquals(0, PressureMemory.after(0, -0.5, 1e7));
        assertEquals(0, PressureMemory.afterRamp(0, -1, -0.1, 1e7));
        assertEquals(PressureMemory.afterRamp(0, 0, 3, 50), PressureMemory.afterRamp(0, -3, 3, 100), 1e-12);
    }

    @Test
    void hugePressuresNeitherOverflowNorDrownSmallOnes() {
        double huge = PressureMemory.after(0, 1e30, 1e8);
        assertTrue(Double.isFinite(huge) && huge > 1e30);
        assertEquals(1e-30 * Math.pow(1e6, 1 / 16.0), PressureMemory.after(0, 1e-30, 6e7), 1e-42);
    }

    @Test
    void aHistoryOfSamplesIsTheSumOfItsSteps() {
        double[] year = new double[8761];
        Arrays.fill(year, 3);
        assertEquals(
                3 / PressureMemory.lastingShare(8760 * 3600.0), PressureMemory.minuteEquivalentBar(year, 3600), 1e-10);
        year[4000] = 6;
        assertTrue(PressureMemory.minuteEquivalentBar(year, 3600) > 6);
        assertEquals(0, PressureMemory.minuteEquivalentBar(new double[] {5}, 60));
        assertEquals(5, PressureMemory.minuteEquivalentBar(new double[] {9, 5, 5, 9}, 1, 3, 60), 1e-12);
    }

    @Property
    void theOrderOfEventsDoesNotMatter(
            @ForAll @DoubleRange(min = 0, max = 10) double first,
            @ForAll @DoubleRange(min = 0, max = 10) double second,
            @ForAll @DoubleRange(min = 1, max = 1e7) double seconds) {
        double oneWay = PressureMemory.after(PressureMemory.after(0, first, seconds), second, 3600);
        double other = PressureMemory.after(PressureMemory.after(0, second, 3600), first, seconds);
        assertEquals(oneWay, other, 1e-12 * (1 + oneWay));
        assertTrue(oneWay
                >= Math.max(PressureMemory.after(0, first, seconds), PressureMemory.after(0, second, 3600)) - 1e-12);
    }

    @Test
    void refusesWhatIsNoHistory() {
        assertThrows(IllegalArgumentException.class, () -> PressureMemory.after(0, Double.NaN, 60));
        assertThrows(IllegalArgumentException.class, () -> PressureMemory.after(-1, 2, 60));
        assertThrows(IllegalArgumentException.class, () -> PressureMemory.afterRamp(0, 1, 2, -60));
        assertThrows(IllegalArgumentException.class, () -> PressureMemory.lastingShare(0));
    }
}
