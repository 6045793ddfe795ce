package undercroft.calc.priming;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import undercroft.catalogue.Listed;
import undercroft.catalogue.Sugar;
import undercroft.catalogue.Sugars;
import undercroft.quantity.Carbonation;
import undercroft.quantity.Interval;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.Temperature;
import undercroft.quantity.Volume;

class PrimingDoseTest {
    private static final double SEA_LEVEL_BAR = 1.01325;
    private static final Sugar CORN = sugar("dextrose");

    /**
     * By hand: 19 L that reached 20 °C hold 0.821 vol (0.97 × Weiss 1974). To 2.4 vol: 1.579 × 1.9768 = 3.121 g/L of CO2, over
     * 0.444 × 0.95 = 7.400 g/L, × 19 = 140.6 g. Five ounces, 141.7 g, is what the ounce rule says for five gallons.
     */
    @Test
    void cornSugarForNineteenLitresIsAboutFiveOunces() {
        PrimingDose dose = dose(CORN, 19, 20, 2.4);
        assertEquals(140.6, dose.grams().median(), 0.5);
        assertEquals(7.40, dose.gramsPerLitre(), 0.03);
        assertEquals(0.821, dose.residualVolumes(), 0.002);
        assertEquals(1.579, dose.addedVolumes(), 0.002);
        assertEquals(2.4, dose.totalVolumes().median(), 1e-9);
        assertEquals(350, dose.syrupWaterMillilitres());
        assertEquals(OunceRule.grams(18.927), dose.grams().median(), 0.03 * 142);
    }

    /** The spread by hand for the same beer: CO2 added 7.40 × 0.440 × 0.90 and 7.40 × 0.449 × 1.00, residual 0.762, 0.914. */
    @Test
    void theTotalSpreadsByCompositionCompletenessAndResidual() {
        Interval total = dose(CORN, 19, 20, 2.4).totalVolumes();
        assertEquals(0.762 + 7.40 * 0.440 * 0.90 / 1.9768, total.low(), 0.01);
        assertEquals(0.914 + 7.40 * 0.449 / 1.9768, total.high(), 0.01);
    }

    /** Beer that was 25 °C warm holds 0.72 vol, at 4 °C 1.40 (manometric formula): read cold, 3.0 g/L corn sugar missing. */
    @Test
    void theTemperatureAtBottlingInPlaceOfTheWarmestMissesThreeGramsALitre() {
        double missing =
                dose(CORN, 20, 25, 2.5).gramsPerLitre() - dose(CORN, 20, 4, 2.5).gramsPerLitre();
        assertEquals(3.2, missing, 0.4);
    }

    /** Common practice, no source: half a batch needs half the sugar. */
    @Test
    void halfABatchNeedsHalfTheSugar() {
        PrimingDose whole = dose(CORN, 19, 20, 2.4);
        PrimingDose half = dose(CORN, 9.5, 20, 2.4);
        assertEquals(whole.grams().median() / 2, half.grams().median(), 1e-9);
        assertEquals(whole.totalVolumes().high(), half.totalVolumes().high(), 1e-12);
    }

    @Test
    void theSameBeerInUsUnitsNeedsTheSameSugar() {
        PrimingDose metric = dose(
                CORN, Volume.parse("18.927L").litres(), Temperature.parse("20C").celsius(), 2.4);
        PrimingDose us = dose(
                CORN, Volume.parse("5gal").litres(), Temperature.parse("68F").celsius(), 2.4);
        assertEquals(metric.grams().median(), us.grams().median(), 0.01);
    }

    /** Common practice, no source: table sugar a little less than corn sugar for the same fizz. */
    @Test
    void tableSugarIsALittleLessThanCornSugar() {
        double ratio = dose(sugar("sucrose"), 19, 20, 2.4).grams().median()
                / dose(CORN, 19, 20, 2.4).grams().median();
        assertEquals(0.864, ratio, 0.003);
    }

    @Test
    void honeyIsUncertainByTwelvePercentAndMore() {
        PrimingDose dose = dose(sugar("honey"), 19, 20, 2.4);
        Interval added = PrimingYield.of(
                        List.of(new SugarAddition(dose.sugar(), dose.grams().median())), 19)
                .expectedGramsPerLitre();
        assertTrue(added.high() / added.median() >= 1.12);
        assertTrue(added.low() / added.median() <= 0.88);
    }

    @ParameterizedTest
    @CsvSource({"0.5", "0.0", "0.80"})
    void aTargetBelowTheResidualNeedsNoSugarAndSaysSo(double targetVolumes) {
        PrimingDose dose = dose(CORN, 19, 20, targetVolumes);
        assertTrue(dose.notNeeded());
        assertEquals(Interval.exactly(0), dose.grams());
        assertEquals(0, dose.addedVolumes());
        assertEquals(0, dose.syrupWaterMillilitres());
        assertEquals(0.821, dose.totalVolumes().median(), 0.002);
    }

    @Test
    void aTargetThatTheBeerAlreadyHoldsExactlyNeedsNoSugar() {
        double held = ResidualCarbonation.gramsPerLitre(20, SEA_LEVEL_BAR).median();
        PrimingDose dose = PrimingDose.forTarget(CORN, 19, 20, Carbonation.ofGramsPerLitre(held), SEA_LEVEL_BAR);
        assertTrue(dose.notNeeded());
    }

    @Test
    void aTargetJustAboveTheResidualNeedsALittle() {
        PrimingDose dose = dose(CORN, 19, 20, 0.826);
        assertFalse(dose.notNeeded());
        assertTrue(dose.grams().median() > 0 && dose.grams().median() < 2);
        assertEquals(5, dose.syrupWaterMillilitres());
    }

    /** Common practice, no source: 250 to 400 mL of water for 120 g. */
    @Test
    void syrupWaterIsTwoToThreePartsOfTheSugar() {
        PrimingDose dose = dose(CORN, 16, 20, 2.4);
        assertEquals(120, dose.grams().median(), 2);
        assertTrue(dose.syrupWaterMillilitres() >= 250 && dose.syrupWaterMillilitres() <= 400);
        assertEquals(0, dose.syrupWaterMillilitres() % 10);
    }

    @Test
    void impossibleInputIsRefusedWithThePlace() {
        assertEquals("beerLitres", refused(0, 20, 2.4).where());
        assertEquals("beerLitres", refused(Double.NaN, 20, 2.4).where());
        assertEquals("warmestCelsius", refused(19, 60, 2.4).where());
        assertEquals("target", refused(19, 20, 7.5).where());
    }

    @Property(tries = 300, seed = "20260104")
    void sugarRisesWithTargetWarmthAndVolume(
            @ForAll("sugars") Sugar sugar,
            @ForAll @DoubleRange(min = 1, max = 100) double litres,
            @ForAll @DoubleRange(min = 0, max = 35) double celsius,
            @ForAll @DoubleRange(min = 1.8, max = 4) double target) {
        PrimingDose dose = dose(sugar, litres, celsius, target);
        assertTrue(dose.grams().low() > 0);
        assertTrue(dose(sugar, litres, celsius, target + 0.1).grams().median()
                > dose.grams().median());
        assertTrue(dose(sugar, litres, celsius + 1, target).grams().median()
                > dose.grams().median());
        assertEquals(
                2 * dose.grams().median(),
                dose(sugar, 2 * litres, celsius, target).grams().median(),
                1e-9 * dose.grams().median());
        assertEquals(target, dose.totalVolumes().median(), 1e-9);
        assertEquals(target, dose.residualVolumes() + dose.addedVolumes(), 1e-9);
    }

    /** The ends of the mass are those that hit the target when the sugar is as rich or as poor as it may be. */
    @Property(tries = 200, seed = "20260104")
    void everyMassInTheSpanCanHitTheTarget(
            @ForAll("sugars") Sugar sugar, @ForAll @DoubleRange(min = 1.8, max = 4) double target) {
        PrimingDose dose = dose(sugar, 10, 20, target);
        double needed = dose.addedVolumes();
        PrimingYield least =
                PrimingYield.of(List.of(new SugarAddition(sugar, dose.grams().low())), 10);
        PrimingYield most =
                PrimingYield.of(List.of(new SugarAddition(sugar, dose.grams().high())), 10);
        assertEquals(needed, least.expectedVolumes().high(), 1e-9);
        assertEquals(needed, most.expectedVolumes().low(), 1e-9);
    }

    @Provide
    Arbitrary<Sugar> sugars() {
        return Arbitraries.of(Sugars.STANDARD);
    }

    private static InvalidInput refused(double litres, double celsius, double target) {
        return assertThrows(InvalidInput.class, () -> dose(CORN, litres, celsius, target));
    }

    private static PrimingDose dose(Sugar sugar, double litres, double celsius, double target) {
        return PrimingDose.forTarget(sugar, litres, celsius, Carbonation.ofVolumes(target), SEA_LEVEL_BAR);
    }

    private static Sugar sugar(String id) {
        return Listed.find(Sugars.STANDARD, id, "sugar");
    }
}
