package undercroft.calc.gas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class CarbonDioxideSolubilityTest {
    /** The coefficients of Weiss 1974 worked out here with another program; his table's value at 0 °C (from memory). */
    @ParameterizedTest
    @CsvSource({"0, 0.07758", "10, 0.05366", "20, 0.03910", "25, 0.03397", "30, 0.02983", "40, 0.02370"})
    void k0IsWhatThePublishedCoefficientsGive(double celsius, double expected) {
        assertEquals(expected, CarbonDioxideSolubility.k0(celsius), 6e-6);
    }

    /** log K(CO2(g)) of the geochemistry database phreeqc.dat (December 2025), an independent fit: within 2 %. */
    @ParameterizedTest
    @CsvSource({"0", "10", "20", "25", "30", "40"})
    void k0AgreesWithAGeochemistryDatabase(double celsius) {
        double t = celsius + 273.15;
        double log = 10.5624 - 2.3547e-2 * t - 3972.8 / t + 5.8746e5 / (t * t) + 1.9194e-5 * t * t;
        assertEquals(1, CarbonDioxideSolubility.k0(celsius) / Math.pow(10, log), 0.02);
    }

    /** Carroll, Slupsky and Mather 1991, eq. 4 (ln H21 in MPa): the known spread is 3 % at 0 °C, 2.5 % when warm. */
    @ParameterizedTest
    @CsvSource({"0, 0.03", "5, 0.015", "10, 0.01", "20, 0.018", "25, 0.021", "30, 0.023", "40, 0.025", "60, 0.025"})
    void carrollsCorrelationAgreesWithinTheKnownSpread(double celsius, double tolerance) {
        double t = celsius + 273.15;
        double henryBar = 10 * Math.exp(-6.8346 + 1.2817e4 / t - 3.7668e6 / (t * t) + 2.997e8 / (t * t * t));
        assertEquals(
                1, waterMolesPerLitre(celsius) / henryBar / (CarbonDioxideSolubility.k0(celsius) / 1.01325), tolerance);
    }

    /** IAPWS G7-04 (2004): outside its range at 0 °C, within 1.5 % from 15 to 40 °C. */
    @ParameterizedTest
    @CsvSource({"5, 0.045", "15, 0.02", "20, 0.015", "30, 0.015", "40, 0.015", "60, 0.04"})
    void theIapwsGuidelineAgreesWithinTheKnownSpread(double celsius, double tolerance) {
        double henryBar = 10 * iapwsHenryMegapascals(celsius + 273.15, WaterVapour.saturationBar(celsius) / 10);
        assertEquals(
                1, waterMolesPerLitre(celsius) / henryBar / (CarbonDioxideSolubility.k0(celsius) / 1.01325), tolerance);
    }

    /** The guideline's own check value for CO2: ln(kH / 1 GPa) = −1.7508 at 300 K (from memory); p* there 3.5368 kPa. */
    @Test
    void theIapwsOracleReproducesItsCheckValue() {
        assertEquals(-1.7508, Math.log(iapwsHenryMegapascals(300, 3.5368e-3) / 1000), 1e-3);
    }

    /** Span and Wagner 1996, second virial coefficient computed with a reference library: −149.6, −127.9, −110.2. */
    @ParameterizedTest
    @CsvSource({"0, -149.6", "20, -127.9", "40, -110.2"})
    void theSecondVirialCoefficientFollowsTheReferenceEquation(double celsius, double expected) {
        assertEquals(expected, CarbonDioxideSolubility.secondVirial(celsius), 1);
    }

    /** Real CO2 at 0 °C and 1 atm: 1.9768 g/L (Span and Wagner 1996), the size of a "volume". */
    @Test
    void theVirialGasHasTheDensityOfAVolume() {
        double rt = 83.14462618 * 273.15;
        double z = 1 + CarbonDioxideSolubility.secondVirial(0) * 1.01325 / rt;
        assertEquals(1.9768, CarbonDioxideSolubility.MOLAR_MASS * 1.01325 * 1000 / (z * rt), 5e-4);
    }

    /** Lange's Handbook and others: Bunsen coefficients 1.713, 1.194, 0.878, 0.665, 0.530 L(STP)/L·atm (from memory). */
    @ParameterizedTest
    @CsvSource({"0, 1.713", "10, 1.194", "20, 0.878", "30, 0.665", "40, 0.530"})
    void oldBunsenCoefficientsAgreeWithinTwoPercent(double celsius, double bunsen) {
        double litres = CarbonDioxideSolubility.gramsPerLitre(celsius, 1.01325, 1) / 1.9768;
        assertEquals(1, litres / bunsen, 0.02);
    }

    /** Fugacity −3.1 % and Poynting −0.7 % at 20 °C and 6 bar (computed with Span-Wagner, and v̄ = 32.3 cm³/mol). */
    @Test
    void sixBarDissolveFourPercentLessThanHenrysLawSays() {
        assertEquals(0.969, CarbonDioxideSolubility.fugacityCoefficient(20, 6), 1e-3);
        assertEquals(0.9934, CarbonDioxideSolubility.poynting(20, 6), 3e-4);
    }

    @Property(seed = "20260104")
    void thePressureOfADissolvedAmountIsTheOneThatDissolvesIt(
            @ForAll @DoubleRange(min = -5, max = 60) double celsius,
            @ForAll @DoubleRange(min = 0, max = 20) double bar,
            @ForAll @DoubleRange(min = 0.8, max = 1) double factor) {
        double grams = Math.min(25, CarbonDioxideSolubility.gramsPerLitre(celsius, bar, factor));
        double back = CarbonDioxideSolubility.partialPressureBar(celsius, grams, factor);
        assertEquals(grams, CarbonDioxideSolubility.gramsPerLitre(celsius, back, factor), 1e-11);
    }

    @Test
    void refusesWhatItWasNotFittedFor() {
        assertThrows(IllegalArgumentException.class, () -> CarbonDioxideSolubility.k0(-6));
        assertThrows(IllegalArgumentException.class, () -> CarbonDioxideSolubility.k0(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> CarbonDioxideSolubility.gramsPerLitre(20, -0.1, 1));
        assertThrows(IllegalArgumentException.class, () -> CarbonDioxideSolubility.gramsPerLitre(20, 2, 2));
        assertThrows(IllegalArgumentException.class, () -> CarbonDioxideSolubility.partialPressureBar(20, 26, 1));
        assertTrue(Double.isFinite(CarbonDioxideSolubility.partialPressureBar(60, 25, 0.8)));
    }

    private static double waterMolesPerLitre(double celsius) {
        return WaterDensity.kilogramsPerCubicMetre(celsius) / 18.01528;
    }

    private static double iapwsHenryMegapascals(double kelvin, double saturationMegapascals) {
        double reduced = kelvin / 647.096;
        double tau = 1 - reduced;
        double ln = -8.55445 / reduced
                + 4.01195 * Math.pow(tau, 0.355) / reduced
                + 9.52345 * Math.pow(reduced, -0.41) * Math.exp(tau);
        return saturationMegapascals * Math.exp(ln);
    }
}
