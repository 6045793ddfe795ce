package undercroft.calc.priming;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import undercroft.catalogue.Listed;
import undercroft.catalogue.Sugar;
import undercroft.catalogue.Sugars;
import undercroft.quantity.Interval;
import undercroft.quantity.InvalidInput;

class PrimingYieldTest {
    private static final Sugar CORN = Listed.find(Sugars.STANDARD, "dextrose", "sugar");
    private static final Sugar TABLE = Listed.find(Sugars.STANDARD, "sucrose", "sugar");

    /** By hand: 120 g monohydrate in 19 L is 6.316 g/L; × 0.4442 = 2.805 g/L = 1.42 vol by theory, 1.35 at 95 %. */
    @Test
    void aHundredAndTwentyGramsInNineteenLitresGiveOnePointThreeFiveVolumes() {
        PrimingYield yield = PrimingYield.of(List.of(new SugarAddition(CORN, 120)), 19);
        assertEquals(2.805, yield.potentialGramsPerLitre().median(), 0.005);
        assertEquals(1.35, yield.expectedVolumes().median(), 0.005);
        assertEquals(
                yield.potentialGramsPerLitre().high(),
                yield.expectedGramsPerLitre().high());
    }

    @Test
    void severalSugarsAddUp() {
        SugarAddition corn = new SugarAddition(CORN, 80);
        SugarAddition table = new SugarAddition(TABLE, 50);
        double apart = PrimingYield.of(List.of(corn), 20).expectedVolumes().high()
                + PrimingYield.of(List.of(table), 20).expectedVolumes().high();
        assertEquals(
                apart,
                PrimingYield.of(List.of(corn, table), 20).expectedVolumes().high(),
                1e-12);
    }

    @Test
    void noSugarGivesNothing() {
        assertEquals(Interval.exactly(0), PrimingYield.of(List.of(), 20).expectedGramsPerLitre());
        assertEquals(
                Interval.exactly(0),
                PrimingYield.of(List.of(new SugarAddition(CORN, 0)), 20).potentialGramsPerLitre());
    }

    @Test
    void impossibleAmountsAreRefused() {
        assertThrows(InvalidInput.class, () -> new SugarAddition(CORN, -1));
        assertThrows(InvalidInput.class, () -> new SugarAddition(CORN, Double.NaN));
        assertThrows(InvalidInput.class, () -> PrimingYield.of(List.of(), 0));
    }

    @Property(tries = 200, seed = "20260104")
    void moreSugarOrLessBeerGivesMoreGas(
            @ForAll @DoubleRange(min = 1, max = 500) double grams,
            @ForAll @DoubleRange(min = 1, max = 100) double litres) {
        double here = gas(grams, litres);
        assertTrue(gas(grams + 1, litres) > here);
        assertTrue(gas(grams, litres + 1) < here);
        assertEquals(here, gas(3 * grams, 3 * litres), 1e-12 * here);
    }

    /** White sugar's label says 100 g of sugars: sucrose theory, 0.5143. */
    @Test
    void aLabelOfPureSucroseGivesTheTheory() {
        Sugar own = new SugarLabel("white sugar", 100, SugarLabel.Kind.DISACCHARIDE).toSugar("own");
        assertEquals(0.5143, own.yield().median(), 5e-5);
        assertEquals(own.yield().median(), own.yield().high());
        assertEquals(0.92 * 0.51429, own.yield().low(), 1e-4);
    }

    /** Glucose monohydrate is dry glucose with 9.09 % water (180.156 in 198.171): the label must meet its stoichiometry. */
    @Test
    void aDataSheetWithMoistureMeetsTheMonohydrate() {
        Sugar own = SugarLabel.ofSolids("corn sugar", 100, SugarLabel.Kind.HEXOSE, 9.0907)
                .toSugar("own");
        assertEquals(Stoichiometry.GLUCOSE_MONOHYDRATE, own.yield().median(), 1e-5);
    }

    /** EC guidance on label tolerances (from memory): ± 2 g below 10 g, ± 20 % to 40 g, ± 8 g above. */
    @ParameterizedTest
    @CsvSource({"8, 6, 10", "30, 24, 36", "82, 74, 90", "97, 89, 100"})
    void theLabelsToleranceBecomesTheSpread(double percent, double low, double high) {
        Interval yield = new SugarLabel("syrup", percent, SugarLabel.Kind.HEXOSE)
                .toSugar("own")
                .yield();
        assertEquals(low / percent, yield.low() / yield.median(), 1e-9);
        assertEquals(high / percent, yield.high() / yield.median(), 1e-9);
    }

    @Test
    void anImpossibleLabelIsRefused() {
        assertThrows(InvalidInput.class, () -> new SugarLabel("x", 101, SugarLabel.Kind.HEXOSE));
        assertThrows(InvalidInput.class, () -> new SugarLabel("x", 4, SugarLabel.Kind.HEXOSE));
        assertThrows(InvalidInput.class, () -> new SugarLabel(" ", 50, SugarLabel.Kind.HEXOSE));
        assertThrows(InvalidInput.class, () -> SugarLabel.ofSolids("x", 50, SugarLabel.Kind.HEXOSE, 95));
    }

    /** Normal tables: 95 % of bottles lie below mean + 1.645 sd. */
    @Test
    void bottlesDosedBySpoonDifferMoreThanFromStirredSyrup() {
        Interval spoon = Dosing.SPOON.gramsPerBottle(7.5, 0.5);
        Interval syrup = Dosing.SYRUP.gramsPerBottle(7.5, 0.5);
        assertEquals(3.75, spoon.median(), 1e-12);
        assertEquals(3.75 * (1 + 1.645 * 0.08), spoon.high(), 1e-4);
        assertEquals(3.75 * (1 - 1.645 * 0.05), syrup.low(), 1e-4);
    }

    /** Median of the largest of n normal values: z = 0 for one, 1.499 for ten (Φ(1.499) = 0.933 = 0.5^(1/10)), tables. */
    @ParameterizedTest
    @CsvSource({"1, 0", "10, 1.499", "50, 2.204"})
    void theStrongestOfManyBottlesStandsAboveTheMean(int bottles, double z) {
        assertEquals(1 + 0.08 * z, Dosing.SPOON.strongestOf(bottles), 1e-3);
    }

    @Test
    void noBottlesHaveNoStrongest() {
        assertThrows(InvalidInput.class, () -> Dosing.SYRUP.strongestOf(0));
        assertThrows(InvalidInput.class, () -> Dosing.SYRUP.gramsPerBottle(7, 0));
    }

    private static double gas(double grams, double litres) {
        return PrimingYield.of(List.of(new SugarAddition(CORN, grams)), litres)
                .expectedGramsPerLitre()
                .median();
    }
}
