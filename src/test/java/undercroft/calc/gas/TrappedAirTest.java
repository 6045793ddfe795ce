package undercroft.calc.gas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import undercroft.catalogue.FillingMethod;

class TrappedAirTest {
    private static final double VOLUME = 1.9768;

    /** Worked by hand here: without the nitrogen's partial pressure, 0.79 bar less what dissolves of it, 0.5 to 0.6 bar. */
    @Test
    void bottlesCappedOnFoamAreAboutHalfABarLower() {
        ClosedBottle bottle = ClosedBottle.of(344, 330, 5, 20, 1.01325);
        double foam = middleBar(bottle, FillingMethod.FOAM_CAPPED);
        double careful = middleBar(bottle, FillingMethod.CAREFUL);
        double splashed = middleBar(bottle, FillingMethod.SPLASHED);
        assertEquals(-0.55, foam - careful, 0.1);
        assertTrue(splashed > careful);
    }

    /** Dalton's law: air in the bottle at 20 °C presses by what of it stays in the headspace, at most about an atmosphere. */
    @Test
    void noFillingPutsMoreThanOneAtmosphereOfAirUnderTheCap() {
        ClosedBottle bottle = ClosedBottle.of(344, 330, 5, 20, 1.01325);
        for (FillingMethod method : FillingMethod.values()) {
            TrappedAir air = TrappedAir.of(method);
            double bar = bottle.at(20, 2 * VOLUME, 0.95, air.amountAt(1), air.trappedAt(1))
                    .airBar();
            assertTrue(bar > 0 && bar < 1.05, method + ": " + bar);
        }
    }

    @ParameterizedTest
    @EnumSource(FillingMethod.class)
    void theQuantilesRiseAndStayShares(FillingMethod method) {
        TrappedAir air = TrappedAir.of(method);
        double amount = 0;
        double trapped = 0;
        for (int i = 0; i <= 1000; i++) {
            double share = i / 1000.0;
            assertTrue(air.amountAt(share) >= amount && air.amountAt(share) <= 1);
            assertTrue(air.trappedAt(share) >= trapped && air.trappedAt(share) <= 1);
            amount = air.amountAt(share);
            trapped = air.trappedAt(share);
        }
    }

    @Test
    void whereNobodySaidThreeInTwentyHadFoam() {
        TrappedAir air = TrappedAir.of(FillingMethod.NOT_TOLD);
        assertTrue(air.amountAt(0.149) <= 0.35);
        assertEquals(0.79, air.amountAt(0.15), 1e-12);
        assertEquals(1, air.amountAt(1), 1e-12);
        assertEquals(0, TrappedAir.of(FillingMethod.FOAM_CAPPED).amountAt(0));
        assertEquals(0.35, TrappedAir.of(FillingMethod.FOAM_CAPPED).amountAt(1), 1e-12);
        assertEquals(0.5, TrappedAir.of(FillingMethod.SPLASHED).trappedAt(0));
    }

    @Test
    void aPurgedHeadspaceHasNoneAndAKeptOneAll() {
        assertEquals(0, TrappedAir.NONE.amountAt(0.7));
        assertEquals(0.79, TrappedAir.ALL_KEPT.amountAt(0), 1e-12);
        assertEquals(1, TrappedAir.ALL_KEPT.trappedAt(0));
    }

    @Test
    void refusesWhatIsNoShare() {
        assertThrows(IllegalArgumentException.class, () -> TrappedAir.NOT_TOLD.amountAt(1.1));
        assertThrows(IllegalArgumentException.class, () -> TrappedAir.NOT_TOLD.trappedAt(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new TrappedAir(2, 0, 0));
    }

    private static double middleBar(ClosedBottle bottle, FillingMethod method) {
        TrappedAir air = TrappedAir.of(method);
        return bottle.at(20, 2.4 * VOLUME, 0.95, air.amountAt(0.5), air.trappedAt(0.5))
                .gaugeBar();
    }
}
