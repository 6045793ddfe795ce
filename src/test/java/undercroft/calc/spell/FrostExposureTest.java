package undercroft.calc.spell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import undercroft.calc.chill.Frost;
import undercroft.catalogue.Bottles;
import undercroft.catalogue.Listed;
import undercroft.series.Track;

class FrostExposureTest {
    private static final int HOUR = 3600;
    private static final Frost FROST = Frost.of(Listed.find(Bottles.STANDARD, "longneck-330", "bottle"), 5, 40);

    @Test
    void bottlesInAFreezerMayHaveBurst() {
        FrostExposure exposure = FrostExposure.of(FROST, Track.constant(0, HOUR, 100, -18), 0, 99 * HOUR);
        assertEquals(Frost.State.MAY_HAVE_BURST, exposure.now());
        assertEquals(Frost.State.MAY_HAVE_BURST, exposure.worst());
        assertEquals(0, exposure.firstBelow().orElseThrow());
    }

    @Test
    void whatThawedMayStillHaveBurst() {
        Track track = of(10, 0, -5, -7, -3, 2, 10);
        FrostExposure exposure = FrostExposure.of(FROST, track, 0, 6 * HOUR);
        assertEquals(Frost.State.NONE, exposure.now());
        assertEquals(Frost.State.MAY_HAVE_BURST, exposure.worst());
        assertEquals(-7, exposure.coldestCelsius());
        assertEquals(2 * HOUR, exposure.firstBelow().orElseThrow());
        assertEquals(4 * HOUR, exposure.lastBelow().orElseThrow());
    }

    @Test
    void coldBeforeCappingAndColdToComeDoNotCount() {
        Track track = of(-20, 10, 5, -3, -20);
        FrostExposure exposure = FrostExposure.of(FROST, track, HOUR, 3 * HOUR + 100);
        assertEquals(Frost.State.FREEZING, exposure.now());
        assertEquals(Frost.State.FREEZING, exposure.worst());
        assertEquals(-3, exposure.coldestCelsius());
    }

    @Test
    void aMildCellarKnowsNoFrost() {
        FrostExposure exposure = FrostExposure.of(FROST, of(4, 1, -1, 3), 0, 3 * HOUR);
        assertEquals(Frost.State.NONE, exposure.worst());
        assertTrue(exposure.firstBelow().isEmpty() && exposure.lastBelow().isEmpty());
        assertThrows(IllegalArgumentException.class, () -> FrostExposure.of(FROST, of(4, 5), HOUR, 0));
    }

    private static Track of(double... values) {
        return Track.of(0, HOUR, values, new double[values.length]);
    }
}
