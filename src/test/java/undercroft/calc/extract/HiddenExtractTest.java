package undercroft.calc.extract;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import undercroft.quantity.Interval;
import undercroft.quantity.InvalidInput;

/** Figures worked out for this project, unpublished, unless another source is named. */
class HiddenExtractTest {
    @ParameterizedTest
    @CsvSource({"-1.6448536, 0.59", "0, 2.96", "1.6448536, 14.0"})
    void whatIsHiddenIsMostlyLittleAndNeverMoreThanThirtyGrams(double deviate, double grams) {
        assertEquals(grams, HiddenExtract.undeclared(0.1).gramsPerLitreAt(deviate), 0.01 * grams);
        assertTrue(HiddenExtract.undeclared(0.1).gramsPerLitreAt(8) <= 30.01);
    }

    /** 0.47 points a gram: 30 g/L are 14.1 points of fall; 2 × 44.01 / 180.16 = 0.4886 of a gram of hexose is gas. */
    @Test
    void aGramGivesAlmostHalfOfItselfAsGas() {
        HiddenExtract hidden = HiddenExtract.undeclared(0.1);
        assertEquals(0.4886 * 0.97 * hidden.gramsPerLitreAt(1), hidden.carbonDioxideAt(1), 0.01);
        assertEquals(10, HiddenExtract.DIASTATIC.gramsPerLitreAt(0), 0.05);
        assertEquals(5, HiddenExtract.DIASTATIC.gramsPerLitreAt(-Interval.NORMAL_95), 0.05);
        assertEquals(1, HiddenExtract.DIASTATIC.probability());
    }

    @Test
    void twoEqualGravitiesLeaveLeastDoubtAndNoneLeavesMost() {
        assertEquals(0.03, HiddenExtract.of(HiddenExtract.Known.STEADY).probability());
        assertEquals(0.05, HiddenExtract.of(HiddenExtract.Known.AT_END).probability());
        assertEquals(0.08, HiddenExtract.of(HiddenExtract.Known.UNREAD).probability());
        assertThrows(InvalidInput.class, () -> HiddenExtract.undeclared(1.1));
    }

    /** One in 150 with half as much again or more, one in 740 doubled. */
    @Test
    void aDoseHasALongTailOfGrossSlips() {
        Interval sugar = Interval.of(0.90 / 0.95, 1, 1 / 0.95);
        assertEquals(1, DoseSpread.USUAL.gramsPerLitreAt(sugar, 0));
        assertEquals(1.08, DoseSpread.USUAL.gramsPerLitreAt(sugar, Interval.NORMAL_95), 0.005);
        assertEquals(0.92, DoseSpread.USUAL.gramsPerLitreAt(sugar, -Interval.NORMAL_95), 0.01);
        assertEquals(1.5, DoseSpread.USUAL.gramsPerLitreAt(sugar, 2.4747), 0.02, "the 1 - 1/150 point");
        assertEquals(2.0, DoseSpread.USUAL.gramsPerLitreAt(sugar, 2.9977), 0.03, "the 1 - 1/740 point");
        assertTrue(DoseSpread.NO_SLIPS.gramsPerLitreAt(sugar, 3) < 1.17);
        assertEquals(0, DoseSpread.USUAL.gramsPerLitreAt(Interval.exactly(0), 1));
    }

    @Test
    void aFinishedBeerHasNothingLeftAndOnePointHasItsFullSpread() {
        assertEquals(0, Leftover.ofPoints(0, false).gramsPerLitreAt(2));
        assertEquals(3, Leftover.ofPoints(3, false).gramsPerLitreAt(0));
        assertEquals(3 + 1.22, Leftover.ofPoints(3, false).gramsPerLitreAt(1), 0.01, "0.7 and 1.0 in quadrature");
        assertEquals(3.7, Leftover.ofPoints(3, true).gramsPerLitreAt(1), 1e-9);
        assertEquals(0, Leftover.ofPoints(1, false).gramsPerLitreAt(-2));
        assertTrue(Leftover.ofPoints(0.1, false).gramsPerLitreAt(3) < 0.5, "nothing jumps at the expected end");
    }
}
