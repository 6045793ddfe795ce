package undercroft.calc.gas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class HeatLimitTest {
    private static final double VOLUME = 1.9768;
    private static final ClosedBottle BOTTLE = ClosedBottle.of(520, 500, 5.02, 20, 1.01325);

    /**
     * 4.7 bar at 39 and 32 °C, and at 34 °C with the lower beer factor and all air kept: the same equations worked out here
     * with another program, unpublished. Guards the arithmetic, not nature.
     */
    @Test
    void aStandardBottleReachesItsLimitOnAHotDay() {
        assertEquals(39, HeatLimit.of(BOTTLE, 2.5 * VOLUME, 0.95, 1, 0, 4.7).celsius(), 0.5);
        assertEquals(32, HeatLimit.of(BOTTLE, 3.0 * VOLUME, 0.95, 1, 0, 4.7).celsius(), 0.5);
        assertEquals(34, HeatLimit.of(BOTTLE, 2.5 * VOLUME, 0.90, 1, 1, 4.7).celsius(), 0.5);
    }

    @Test
    void atTheLimitThePressureIsTheLimit() {
        HeatLimit limit = HeatLimit.of(BOTTLE, 2.7 * VOLUME, 0.93, 0.9, 0.3, 4.2);
        assertEquals(HeatLimit.Reach.PRESSURE, limit.reach());
        assertEquals(
                4.2, BOTTLE.at(limit.celsius(), 2.7 * VOLUME, 0.93, 0.9, 0.3).gaugeBar(), 1e-5);
        assertTrue(limit.allows(limit.celsius() - 0.1));
        assertFalse(limit.allows(limit.celsius() + 0.1));
    }

    @Test
    void aSodaStrengthBeerIsTooMuchEvenWhenCold() {
        HeatLimit limit = HeatLimit.of(BOTTLE, 10 * VOLUME, 0.95, 1, 0, 3.5);
        assertEquals(new HeatLimit(0, HeatLimit.Reach.BEYOND_WHEN_COLD), limit);
        assertFalse(limit.allows(0));
    }

    @Test
    void flatBeerNeverReachesTheLimit() {
        HeatLimit limit = HeatLimit.of(BOTTLE, 0.5 * VOLUME, 0.95, 1, 0, 7);
        assertEquals(new HeatLimit(60, HeatLimit.Reach.NOT_REACHED), limit);
        assertTrue(limit.allows(60));
    }

    @Test
    void anOverfilledBottleIsLimitedWhereTheBeerFillsIt() {
        ClosedBottle overfilled = ClosedBottle.of(340, 337.96, 5.02, 4, 1.01325);
        HeatLimit limit = HeatLimit.of(overfilled, 2.5 * VOLUME, 0.95, 1, 0, 7);
        assertEquals(HeatLimit.Reach.LIQUID_FULL, limit.reach());
        assertEquals(overfilled.liquidFullCelsius(2.5 * VOLUME, 0.95, 1).orElseThrow(), limit.celsius(), 1e-6);
    }

    @Test
    void aBottleFullFromTheStartIsBeyondItsLimitWhenCold() {
        ClosedBottle brim = ClosedBottle.of(500, 499.7, 5, 4, 1.01325);
        assertEquals(
                HeatLimit.Reach.BEYOND_WHEN_COLD,
                HeatLimit.of(brim, 6 * VOLUME, 0.95, 1, 0, 16).reach());
    }

    @Test
    void refusesALimitThatIsNone() {
        assertThrows(IllegalArgumentException.class, () -> HeatLimit.of(c -> c, 0));
        assertThrows(IllegalArgumentException.class, () -> HeatLimit.of(c -> c, Double.NaN));
    }
}
