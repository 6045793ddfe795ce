package undercroft.calc.ageing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;
import org.junit.jupiter.api.Test;
import undercroft.catalogue.FillingMethod;
import undercroft.series.Track;

class MeanKineticTemperatureTest {
    /** USP general chapter 1160: 83.144 kJ/mol and 8.3144e-3 kJ/(mol K), so that the quotient is 10,000 K. */
    @Test
    void theActivationEnergyIsTenThousandKelvin() {
        assertEquals(10_000, MeanKineticTemperature.KILOJOULES_PER_MOLE / Arrhenius.GAS_CONSTANT, 1e-9);
    }

    /** The formula of USP 1160 worked out here with another program; no complete published example could be read. */
    @Test
    void agreesWithValuesComputedElsewhere() {
        assertEquals(19.69772136370875, MeanKineticTemperature.of(5, 25), 1e-9);
        assertEquals(23.6444539343305, MeanKineticTemperature.of(20, 20, 20, 30), 1e-9);
        assertEquals(21.210992532693183, MeanKineticTemperature.of(new double[] {20, 40}, new double[] {51, 1}), 1e-9);
        assertEquals(23.27589888904646, MeanKineticTemperature.of(new double[] {22, 38}, new double[] {29, 1}), 1e-9);
    }

    /** The formula worked out here with another program; the plain mean is 6.4 °C. */
    @Test
    void oneWarmReadingAmongFourColdOnesLiftsItToEight() {
        assertEquals(8.108857214794, MeanKineticTemperature.of(4, 4, 4, 4, 16), 1e-9);
    }

    /** Haynes 1971, J. Pharm. Sci. 60:927: never below the mean, never above the highest. */
    @Property(tries = 200, seed = "20260104")
    void liesBetweenTheMeanAndTheHighest(
            @ForAll @Size(min = 1, max = 30) List<@DoubleRange(min = -20, max = 45) Double> read) {
        double[] celsius = read.stream().mapToDouble(Double::doubleValue).toArray();
        double mean = Arrays.stream(celsius).average().orElseThrow();
        double highest = Arrays.stream(celsius).max().orElseThrow();
        double kinetic = MeanKineticTemperature.of(celsius);
        assertTrue(kinetic >= mean - 1e-9 && kinetic <= highest + 1e-9, mean + " " + kinetic + " " + highest);
        double[] sorted = celsius.clone();
        Arrays.sort(sorted);
        assertEquals(kinetic, MeanKineticTemperature.of(sorted), 1e-9, "order does not matter");
    }

    @Property(tries = 100, seed = "20260104")
    void ofAConstantTemperatureIsThatTemperature(@ForAll @DoubleRange(min = -20, max = 60) double celsius) {
        assertEquals(celsius, MeanKineticTemperature.of(celsius, celsius, celsius), 1e-9);
        Track track = Track.constant(0, 3600, 100, celsius);
        assertEquals(celsius, MeanKineticTemperature.of(track, 5000, 200_000), 1e-9);
    }

    @Test
    void aTracksStretchesCountByTheirTime() {
        // A straight rise within one grid step has the mean of its ends, hence 51 steps at 20, one at 30, one at 40.
        double[] celsius = new double[53];
        Arrays.fill(celsius, 20);
        celsius[51] = 40;
        celsius[52] = 40;
        Track track = Track.of(0, 3600, celsius, new double[53]);
        double[] weights = {50, 1, 1};
        assertEquals(
                MeanKineticTemperature.of(new double[] {20, 30, 40}, weights),
                MeanKineticTemperature.of(track, 0, 52 * 3600L),
                1e-9);
        assertEquals(40, MeanKineticTemperature.of(track, 51 * 3600L, 52 * 3600L), 1e-9);
        assertEquals(40, MeanKineticTemperature.of(track, 60 * 3600L, 70 * 3600L), 1e-9);
    }

    @Test
    void lifeUsedAtTheMeanKineticTemperatureIsLifeUsed() {
        double[] celsius = new double[2000];
        for (int i = 0; i < celsius.length; i++) {
            celsius[i] = 14 + 9 * Math.sin(i / 37.0) + 2 * Math.sin(i / 3.0);
        }
        Track track = Track.of(0, 3600, celsius, new double[2000]);
        long until = 1999 * 3600L;
        double mean = MeanKineticTemperature.of(track, 0, until);
        double used =
                ShelfLife.daysUsed(track, 0, until, FillingMethod.FOAM_CAPPED).median();
        assertEquals(used, ShelfLife.rateAt(mean).median() * until / 86400, 1e-9 * used);
    }

    @Test
    void refusesNothingAndImpossibleWeights() {
        assertThrows(IllegalArgumentException.class, MeanKineticTemperature::of);
        assertThrows(
                IllegalArgumentException.class, () -> MeanKineticTemperature.of(new double[] {20}, new double[] {0}));
        assertThrows(
                IllegalArgumentException.class,
                () -> MeanKineticTemperature.of(new double[] {Double.NaN}, new double[] {1}));
    }
}
