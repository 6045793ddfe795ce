package undercroft.calc.gas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class StrongestBottleTest {
    /** Harter 1961, Biometrika 48:151: expected largest of n standard normal values (from memory). */
    @ParameterizedTest
    @CsvSource({
        "1, 0",
        "2, 0.56419",
        "3, 0.84628",
        "5, 1.16296",
        "10, 1.53875",
        "20, 1.86748",
        "50, 2.24907",
        "100, 2.50759"
    })
    void theExpectedExtremeIsThePublishedOne(int bottles, double extreme) {
        assertEquals(1 + 0.1 * extreme, StrongestBottle.of(bottles, 0.1).expectedFactor(), 2e-6);
    }

    /** Normal quantiles: 1.64485 at 95 % for one bottle; for two, that of 0.95^(1/2) = 0.974679, 1.9545 (tables, from memory). */
    @Test
    void theHighFactorIsTheQuantileOfTheExtreme() {
        assertEquals(1 + 0.1 * 1.64485, StrongestBottle.of(1, 0.1).factor().high(), 1e-6);
        assertEquals(1 + 0.1 * 1.9545, StrongestBottle.of(2, 0.1).factor().high(), 2e-5);
        assertEquals(1, StrongestBottle.of(1, 0.1).factor().median(), 1e-12);
    }

    @Test
    void moreBottlesHoldAWorseOneAndEvenPrimingHoldsNone() {
        assertTrue(StrongestBottle.of(48, 0.05).factor().high()
                > StrongestBottle.of(12, 0.05).factor().high());
        assertEquals(1, StrongestBottle.of(48, 0).expectedFactor());
        assertEquals(1, StrongestBottle.of(48, 0).factor().high());
        assertTrue(StrongestBottle.of(1_000_000, 0.08).factor().high() < 1.5);
    }

    @Test
    void refusesNoBottlesAndWildSpreads() {
        assertThrows(IllegalArgumentException.class, () -> StrongestBottle.of(0, 0.05));
        assertThrows(IllegalArgumentException.class, () -> StrongestBottle.of(5, 0.5));
        assertThrows(IllegalArgumentException.class, () -> StrongestBottle.of(5, Double.NaN));
    }
}
