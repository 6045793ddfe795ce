package undercroft.calc.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import undercroft.catalogue.GlassColour;
import undercroft.catalogue.LightSource;
import undercroft.quantity.InvalidInput;

class BeerSensitivityTest {
    /** Definition of the factor: 25 IBU counts once, 75 and more three times, fully reduced acids a fiftieth. */
    @ParameterizedTest
    @CsvSource({"25, 0, 1", "50, 0, 2", "50, 1, 0.04", "50, 0.5, 1.02", "75, 0, 3", "120, 0, 3", "0, 0, 0"})
    void bitternessCountsOnceForEachTwentyFive(double ibu, double reduced, double factor) {
        assertEquals(factor, BeerSensitivity.factor(ibu, reduced, 8), 1e-12);
    }

    /** Closed form worked by hand: x = 0.279 × EBC, (1 − e^−x)/x over 0.400. */
    @ParameterizedTest
    @CsvSource({"4, 1.51", "8, 1.00", "12, 0.72", "20, 0.45", "40, 0.22", "60, 0.15", "80, 0.11"})
    void darkBeerShadesItself(double ebc, double factor) {
        assertEquals(factor, BeerSensitivity.colourFactor(ebc), 0.01 * factor + 0.005);
    }

    @Test
    void aColourlessBeerIsTheLimitOfPaleBeers() {
        assertEquals(BeerSensitivity.colourFactor(1e-7), BeerSensitivity.colourFactor(0), 1e-6);
        assertEquals(2.5, BeerSensitivity.colourFactor(0), 0.01);
    }

    /** The closed form stands in for the spectral sum over sunlit clear glass; it has to stay within 5 % of it. */
    @ParameterizedTest
    @CsvSource({"4", "12", "20", "40", "80"})
    void theClosedFormFollowsTheSpectralSum(double ebc) {
        double[] sums = new double[2];
        Wall wall = Wall.usual(GlassColour.FLINT);
        for (int nm = 300; nm <= 560; nm += 5) {
            double light = Illumination.perLux(LightSource.SUN).applyAsDouble(nm) * wall.transmittanceFilled(nm);
            sums[0] += light * ActionSpectrum.at(nm, ebc);
            sums[1] += light * ActionSpectrum.at(nm);
        }
        assertEquals(1, BeerSensitivity.colourFactor(ebc) / (sums[0] / sums[1]), 0.05);
    }

    /** Published maxima of riboflavin near 373 and 445 nm; behind beer the action peaks at 450 to 470 nm. */
    @Test
    void theActionSpectrumPeaksInTheBlueAndEndsAt560() {
        assertEquals(1, ActionSpectrum.at(470), 1e-12);
        assertTrue(ActionSpectrum.at(450) > 0.95);
        assertTrue(ActionSpectrum.at(550) < 0.01);
        assertEquals(0, ActionSpectrum.at(561));
        assertEquals(0, ActionSpectrum.at(299));
    }

    /** Regression values of the same equations. */
    @ParameterizedTest
    @CsvSource({"340, 0.05023", "370, 0.21071", "400, 0.27751", "440, 0.87494", "500, 0.28006", "530, 0.01504"})
    void theActionSpectrumStaysAsItWas(double nanometres, double action) {
        assertEquals(action, ActionSpectrum.at(nanometres), 1e-4);
    }

    @Property(tries = 200, seed = "20260104")
    void moreColourOrMoreReducedAcidsNeverMakeBeerMoreSensitive(
            @ForAll @DoubleRange(min = 0, max = 150) double ibu,
            @ForAll @DoubleRange(min = 0, max = 0.9) double reduced,
            @ForAll @DoubleRange(min = 0, max = 150) double ebc) {
        double before = BeerSensitivity.factor(ibu, reduced, ebc);
        assertTrue(before >= 0 && Double.isFinite(before));
        assertTrue(BeerSensitivity.factor(ibu, reduced + 0.1, ebc) <= before);
        assertTrue(BeerSensitivity.factor(ibu, reduced, ebc + 10) <= before);
    }

    @Test
    void impossibleBeersAreRefused() {
        assertThrows(InvalidInput.class, () -> BeerSensitivity.factor(-1, 0, 8));
        assertThrows(InvalidInput.class, () -> BeerSensitivity.factor(25, 1.1, 8));
        assertThrows(InvalidInput.class, () -> BeerSensitivity.factor(25, 0, Double.NaN));
        assertThrows(InvalidInput.class, () -> BeerSensitivity.factor(25, 0, 201));
    }
}
