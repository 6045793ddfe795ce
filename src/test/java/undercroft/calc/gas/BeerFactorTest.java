package undercroft.calc.gas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import undercroft.quantity.Interval;

class BeerFactorTest {
    /** EU/OIV wine formula, 1.951 (0.86 − 0.01 A)(1 − 0.00144 S) g/L·bar at 20 °C, over its value for water, 1.678. */
    @Test
    void theWineFormulaIsNearTheSafetyValue() {
        for (double abv = 4; abv <= 8; abv++) {
            double wine = 1.951 * (0.86 - 0.01 * abv) * (1 - 0.00144 * 40) / 1.678;
            assertEquals(wine, BeerFactor.safety(abv, 40), 0.03);
        }
    }

    /** Measured, of lager at 6 °C and champagne (12.5 % ABV) at 10 °C: 2.4 and 2.1 g/L·bar (PMC8047704, table 1), two digits. */
    @Test
    void measuredLagerAndChampagneLieBetweenSafetyAndHighEnd() {
        double lager = 2.4 / CarbonDioxideSolubility.gramsPerLitre(6, 1, 1);
        assertTrue(lager > BeerFactor.safety(5, 40) - 0.02
                && lager < BeerFactor.of(5, 40).high());
        double champagne = 2.1 / CarbonDioxideSolubility.gramsPerLitre(10, 1, 1);
        assertTrue(champagne > BeerFactor.safety(12.5, 10)
                && champagne < BeerFactor.of(12.5, 10).high());
    }

    /** This tool's own value, between the lager's 0.90 and water. */
    @Test
    void anOrdinaryBeerHoldsFivePercentLessThanWater() {
        assertEquals(0.95, BeerFactor.of(5, 40).median(), 1e-12);
        assertEquals(0.90, BeerFactor.of(5, 40).low(), 1e-12);
        assertEquals(0.90, BeerFactor.safety(5, 40), 1e-12);
    }

    @Test
    void noBeerHoldsMoreThanWaterOrLessThanTheFloor() {
        assertEquals(Interval.of(0.95, 1.0, 1.0), BeerFactor.of(0, 0));
        assertEquals(Interval.of(0.85, 0.85, 0.9), BeerFactor.of(20, 120));
        assertEquals(0.80, BeerFactor.safety(20, 120), 1e-12);
    }

    @Test
    void refusesAlcoholAndExtractThatNoBeerHas() {
        assertThrows(IllegalArgumentException.class, () -> BeerFactor.of(-1, 40));
        assertThrows(IllegalArgumentException.class, () -> BeerFactor.of(5, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> BeerFactor.safety(5, 201));
    }
}
