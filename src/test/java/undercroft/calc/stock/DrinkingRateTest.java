package undercroft.calc.stock;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import undercroft.quantity.Interval;

final class DrinkingRateTest {
    private static DrinkingRate ofSingles(int count, double days) {
        return DrinkingRate.of(Collections.nCopies(count, 1), days);
    }

    @ParameterizedTest
    // Upper and lower critical values of the chi-square distribution, NIST/SEMATECH e-Handbook, table 1.3.6.7.4; a
    // gamma of
    // shape n + ½ is half a chi-square of 2n + 1 degrees of freedom.
    @CsvSource({"1, 0.352, 7.815", "2, 1.145, 11.070", "4, 3.325, 16.919", "7, 7.261, 24.996", "12, 14.611, 37.652"})
    void quantilesAreThoseOfTheChiSquareTable(int bottles, double lower, double upper) {
        Interval rate = ofSingles(bottles, 1).perDay();
        assertEquals(lower / 2, rate.low(), 0.02 * lower + 0.01);
        assertEquals(upper / 2, rate.high(), 0.01 * upper);
    }

    @Test
    void twiceAsLongHalvesTheRate() {
        assertEquals(
                ofSingles(6, 28).perDay().median() / 2,
                ofSingles(6, 56).perDay().median(),
                1e-12);
    }

    @Test
    void onePartyTellsLessThanManyEvenings() {
        Interval party = DrinkingRate.of(List.of(12), 56).perDay();
        Interval evenings = ofSingles(12, 56).perDay();
        assertTrue(party.high() / party.median() > 2 * evenings.high() / evenings.median());
    }

    @Test
    void withoutAnyBottleTheRateIsSmallButNotNothing() {
        Interval rate = DrinkingRate.of(List.of(), 56).perDay();
        assertTrue(rate.low() >= 0 && rate.median() < 0.01 && rate.high() > 0);
    }

    @Test
    void noDaysAndNoBottlesAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> DrinkingRate.of(List.of(1), 0));
        assertThrows(IllegalArgumentException.class, () -> DrinkingRate.of(List.of(0), 7));
    }
}
