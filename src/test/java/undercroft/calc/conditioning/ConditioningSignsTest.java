package undercroft.calc.conditioning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static undercroft.calc.conditioning.Beers.CAPPED;
import static undercroft.calc.conditioning.Beers.DAY;
import static undercroft.calc.conditioning.Beers.constant;

import org.junit.jupiter.api.Test;
import undercroft.catalogue.YeastStrain;
import undercroft.series.Track;

/** Common practice, no source: ale yeast effectively stops below about 8 °C, crawls at 12 °C, suffers above 33 °C. */
class ConditioningSignsTest {
    private static ConditioningSigns of(YeastStrain strain, Track track, double fraction) {
        return ConditioningSigns.at(strain, track, CAPPED, CAPPED + 10 * DAY, fraction);
    }

    @Test
    void aleStallsInTheColdAndCrawlsInACoolCellarWhereLagerWorks() {
        assertTrue(of(YeastStrain.ALE, constant(6, 20), 0.5).stalled());
        ConditioningSigns cool = of(YeastStrain.ALE, constant(12, 20), 0.5);
        assertTrue(cool.slow() && !cool.stalled());
        assertFalse(of(YeastStrain.LAGER, constant(12, 20), 0.5).slow());
        ConditioningSigns room = of(YeastStrain.ALE, constant(21, 20), 0.5);
        assertFalse(room.slow() || room.stalled() || room.tooHot());
        assertEquals(1, room.recentPace(), 1e-12);
    }

    @Test
    void aFinishedBatchIsNeitherStalledNorSlow() {
        assertFalse(of(YeastStrain.ALE, constant(4, 20), 0.96).stalled());
        assertFalse(of(YeastStrain.ALE, constant(12, 20), 0.96).slow());
    }

    @Test
    void onlyTheLastTwoDaysCountForThePace() {
        double[] celsius = new double[20 * 24 + 1];
        for (int i = 0; i < celsius.length; i++) {
            celsius[i] = i < 8 * 24 ? 21 : 4;
        }
        ConditioningSigns signs = of(YeastStrain.ALE, Track.of(CAPPED, 3600, celsius, new double[celsius.length]), 0.6);
        assertTrue(signs.stalled());
    }

    @Test
    void twelveHoursOfHeatWithoutABreakAreTooMuch() {
        assertFalse(of(YeastStrain.ALE, hotHours(12), 0.5).tooHot());
        assertTrue(of(YeastStrain.ALE, hotHours(14), 0.5).tooHot());
        assertEquals(14, of(YeastStrain.ALE, hotHours(14), 0.5).longestHotHours(), 1.01);
    }

    private static Track hotHours(int hours) {
        double[] celsius = new double[20 * 24 + 1];
        for (int i = 0; i < celsius.length; i++) {
            celsius[i] = i >= 48 && i < 48 + hours ? 36 : 20;
        }
        return Track.of(CAPPED, 3600, celsius, new double[celsius.length]);
    }

    @Test
    void thereAreNoSignsBeforeCapping() {
        ConditioningSigns signs = ConditioningSigns.at(YeastStrain.ALE, constant(4, 20), CAPPED, CAPPED - DAY, 0);
        assertFalse(signs.stalled() || signs.slow() || signs.tooHot());
    }
}
