package undercroft.calc.gas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.Bottles;
import undercroft.catalogue.Listed;

class PlasticBottleTest {
    private static final double VOLUME = 1.9768;
    private static final BottleType HALF_LITRE = Listed.find(Bottles.STANDARD, "pet-500", "bottle");
    private static final BottleType LITRE = Listed.find(Bottles.STANDARD, "pet-1000", "bottle");
    private static final BottleType GLASS = Listed.find(Bottles.STANDARD, "returnable-500", "bottle");

    /** Thin closed cylinder of 0.35 mm and 4 GPa, any textbook of strength of materials; worked by hand here. */
    @Test
    void halfALitreOfPlasticGrowsByFourThousandthsABar() {
        assertEquals(32.65 / (40_000 * 0.35) * 1.7, ClosedBottle.swellingPerBar(HALF_LITRE), 1e-9);
        assertEquals(4e-3, ClosedBottle.swellingPerBar(HALF_LITRE), 1e-4);
        assertEquals(3.5e-5, ClosedBottle.swellingPerBar(GLASS));
    }

    @Test
    void aWallThatGivesLowersThePressureALittle() {
        ClosedBottle plastic = ClosedBottle.of(HALF_LITRE, 5, 20, 1.01325);
        ClosedBottle stiff = ClosedBottle.of(525, 500, 5, 20, 1.01325);
        double lower = stiff.at(20, 2.5 * VOLUME, 0.95, 0.9, 0.5).gaugeBar()
                - plastic.at(20, 2.5 * VOLUME, 0.95, 0.9, 0.5).gaugeBar();
        assertTrue(lower > 0.02 && lower < 0.3, "lower by " + lower);
    }

    /** The room the wall gives is the room the gas has: headspace at rest, by hand. */
    @Test
    void theHeadspaceGrowsByWhatTheWallGives() {
        ClosedBottle plastic = ClosedBottle.of(HALF_LITRE, 5, 20, 1.01325);
        BottleState state = plastic.at(20, 2.5 * VOLUME, 0.95, 0.9, 0.5);
        ClosedBottle grown = ClosedBottle.of(
                525 * (1 + ClosedBottle.swellingPerBar(HALF_LITRE) * state.gaugeBar()), 500, 5, 20, 1.01325);
        double air = 0.9 * 25 / (grown.glassLitresAt(20) * 1000 - 500);
        assertEquals(
                state.headspaceMillilitres(),
                grown.at(20, 2.5 * VOLUME, 0.95, air, 0.5).headspaceMillilitres(),
                0.1);
    }

    @Test
    void theQuickPathKnowsTheWall() {
        ClosedBottle plastic = ClosedBottle.of(HALF_LITRE, 5, 20, 1.01325);
        for (double celsius = 0; celsius <= 40; celsius += 5) {
            assertEquals(
                    plastic.at(celsius, 5, 0.93, 0.9, 0.4).gaugeBar(),
                    plastic.gaugeBar(celsius, 5, 0.93, 0.9, 0.4, Double.NaN),
                    1e-4);
        }
    }

    @Test
    void plasticIsTrustedUpToThirtyDegreesWhateverThePressure() {
        PressureLimits limits = PressureLimits.of(HALF_LITRE);
        assertEquals(30, limits.warmestCelsius());
        HeatLimit byPressure = HeatLimit.of(ClosedBottle.of(HALF_LITRE, 5, 20, 1.01325), 4, 0.9, 1, 1, 5.5);
        assertTrue(byPressure.celsius() > 40);
        HeatLimit limit = byPressure.cappedAt(limits.warmestCelsius());
        assertEquals(new HeatLimit(30, HeatLimit.Reach.MATERIAL), limit);
        assertTrue(limit.allows(30) && !limit.allows(30.1));
        assertEquals(byPressure, byPressure.cappedAt(PressureLimits.of(GLASS).warmestCelsius()));
    }

    /** Order of magnitude from memory: 15 % of a half-litre bottle's gas in twelve weeks. */
    @Test
    void plasticLosesGasThroughItsWallAndGlassDoesNot() {
        assertEquals(0.85, WallLoss.keptShare(HALF_LITRE, 84).median(), 1e-12);
        assertEquals(1, WallLoss.keptShare(HALF_LITRE, 84).high());
        assertTrue(WallLoss.keptShare(LITRE, 84).median() > 0.85);
        assertEquals(1, WallLoss.keptShare(HALF_LITRE, 0).low());
        assertEquals(1, WallLoss.keptShare(GLASS, 1000).low());
        assertThrows(IllegalArgumentException.class, () -> WallLoss.keptShare(HALF_LITRE, -1));
    }
}
