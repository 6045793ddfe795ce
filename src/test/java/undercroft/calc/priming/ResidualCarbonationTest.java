package undercroft.calc.priming;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import undercroft.quantity.Carbonation;
import undercroft.quantity.Interval;
import undercroft.quantity.InvalidInput;

class ResidualCarbonationTest {
    private static final double SEA_LEVEL_BAR = 1.01325;

    /**
     * Volumes at 1 atm: water after Weiss 1974 (computed in another program), 0.90, 0.97 and 1.08 of it, and for comparison the manometric
     * formula of brewery analysis (MEBAK), an independent fit to beer: C = 10 P exp(−10.73797 + 2617.25/T).
     */
    @ParameterizedTest
    @CsvSource({
        "0, 1.705",
        "5, 1.405",
        "10, 1.173",
        "15, 0.991",
        "20, 0.846",
        "25, 0.729",
        "30, 0.633",
        "35, 0.554",
        "40, 0.487"
    })
    void residualFollowsTheWaterTableTimesTheBeerFactor(double celsius, double water) {
        Interval volumes = volumes(celsius, SEA_LEVEL_BAR);
        assertEquals(0.90 * water, volumes.low(), 0.002);
        assertEquals(0.97 * water, volumes.median(), 0.002);
        assertEquals(1.08 * water, volumes.high(), 0.002);
        double manometric = 10 * SEA_LEVEL_BAR * Math.exp(-10.73797 + 2617.25 / (celsius + 273.15));
        assertEquals(1, manometric / Carbonation.GRAMS_PER_LITRE_OF_ONE_VOLUME / volumes.median(), 0.06);
    }

    /** International standard atmosphere: 0.89 of sea level at 1000 m, 0.79 at 2000 m (rounded). */
    @ParameterizedTest
    @CsvSource({"0.8988, 0.89", "0.7950, 0.79"})
    void thinAirLeavesLessGas(double atmosphereBar, double share) {
        assertEquals(
                share,
                volumes(20, atmosphereBar).median() / volumes(20, SEA_LEVEL_BAR).median(),
                0.01);
    }

    @Property(tries = 300, seed = "20260104")
    void warmerBeerOrThinnerAirNeverHoldsMore(
            @ForAll @DoubleRange(min = -1, max = 44) double celsius,
            @ForAll @DoubleRange(min = 0.01, max = 1) double warmer,
            @ForAll @DoubleRange(min = 0.55, max = 1.1) double bar) {
        double here = volumes(celsius, bar).median();
        assertTrue(volumes(celsius + warmer, bar).median() < here);
        assertTrue(volumes(celsius, bar - 0.05).median() < here);
        assertTrue(here > 0);
    }

    @Test
    void outsideTheFittedRangeIsRefusedWithThePlace() {
        assertEquals("warmestCelsius", refused(46, 1).where());
        assertEquals("warmestCelsius", refused(-2, 1).where());
        assertEquals("warmestCelsius", refused(Double.NaN, 1).where());
        assertEquals("atmosphereBar", refused(20, 0.4).where());
        assertEquals("atmosphereBar", refused(20, 2).where());
    }

    private static InvalidInput refused(double celsius, double bar) {
        return assertThrows(InvalidInput.class, () -> ResidualCarbonation.gramsPerLitre(celsius, bar));
    }

    private static Interval volumes(double celsius, double bar) {
        return ResidualCarbonation.gramsPerLitre(celsius, bar).times(1 / Carbonation.GRAMS_PER_LITRE_OF_ONE_VOLUME);
    }
}
