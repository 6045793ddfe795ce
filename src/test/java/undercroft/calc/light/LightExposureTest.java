package undercroft.calc.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import undercroft.catalogue.Cover;
import undercroft.catalogue.GlassColour;
import undercroft.catalogue.LightPlace;
import undercroft.catalogue.LightSource;
import undercroft.quantity.Interval;
import undercroft.quantity.InvalidInput;

class LightExposureTest {
    private static final Wall CLEAR = Wall.usual(GlassColour.FLINT);

    @Property(tries = 100, seed = "20260104")
    void dosesOfTwoPlacesAdd(
            @ForAll GlassColour colour,
            @ForAll LightPlace first,
            @ForAll LightPlace second,
            @ForAll @DoubleRange(min = 0, max = 400) double days) {
        LightExposure none = LightExposure.none(Wall.usual(colour), 1.3);
        LightStay one = LightStay.of(first, days, Cover.NONE);
        LightStay other = LightStay.of(second, days / 2, Cover.OPEN_CRATE);
        double together = none.plus(one).plus(other).bestDose();
        double apart = none.plus(one).bestDose() + none.plus(other).bestDose();
        assertEquals(apart, together, 1e-9 * (1 + apart));
        assertEquals(together, none.plus(other).plus(one).bestDose(), 1e-9 * (1 + apart));
    }

    @Test
    void anOpenCrateHalvesTheLightAndAClosedBoxEndsIt() {
        LightExposure none = LightExposure.none(CLEAR, 1);
        double free =
                none.plus(LightStay.of(LightPlace.ROOM_DAY, 3, Cover.NONE)).bestDose();
        double crate = none.plus(LightStay.of(LightPlace.ROOM_DAY, 3, Cover.OPEN_CRATE))
                .bestDose();
        LightExposure box = none.plus(LightStay.of(LightPlace.DIRECT_SUN, 300, Cover.CLOSED_BOX));
        assertEquals(free / 2, crate, 1e-12);
        assertEquals(Interval.exactly(0), box.dose());
        assertEquals(LightBand.NONE, box.band());
    }

    /** Sum of squared logs, by hand: ln 4 = 1.3863, ln 2 = 0.6931, ln 2.5 = 0.9163. */
    @ParameterizedTest
    @CsvSource({
        "FLINT, true, 4.00",
        "FLINT, false, 5.27",
        "AMBER, true, 4.71",
        "AMBER, false, 6.05",
        "PET_AMBER, true, 4.71"
    })
    void uncertaintiesCombineInQuadratureOfLogs(GlassColour colour, boolean measured, double factor) {
        LightExposure seen = LightExposure.none(Wall.usual(colour), 1)
                .plus(new LightStay(LightSource.LED_NEUTRAL, 500, measured, 10, Cover.NONE));
        assertEquals(factor, seen.uncertaintyFactor(), 0.01);
        assertEquals(seen.bestDose() / seen.uncertaintyFactor(), seen.dose().low(), 1e-12);
        assertEquals(seen.bestDose() * seen.uncertaintyFactor(), seen.dose().high(), 1e-12);
    }

    @Test
    void aMeasuredPlaceAmongGuessedOnesNarrowsTheSpan() {
        LightStay guessed = new LightStay(LightSource.WINDOW, 300, false, 8, Cover.NONE);
        LightStay measured = new LightStay(LightSource.WINDOW, 300, true, 8, Cover.NONE);
        LightExposure none = LightExposure.none(CLEAR, 1);
        double allGuessed = none.plus(guessed).plus(guessed).uncertaintyFactor();
        double half = none.plus(guessed).plus(measured).uncertaintyFactor();
        double allMeasured = none.plus(measured).plus(measured).uncertaintyFactor();
        assertTrue(allGuessed > half && half > allMeasured);
        assertEquals(LightUncertainty.CALIBRATION, allMeasured, 1e-12);
    }

    @ParameterizedTest
    @CsvSource({
        "0, NONE",
        "0.2499, NONE",
        "0.25, POSSIBLE",
        "0.9999, POSSIBLE",
        "1, LIKELY",
        "3.999, LIKELY",
        "4, NEAR_CERTAIN",
        "Infinity, NEAR_CERTAIN"
    })
    void bandsBeginAtTheirLimits(double dose, LightBand band) {
        assertEquals(band, LightBand.of(dose));
    }

    @ParameterizedTest
    @CsvSource({
        "0, UNDER_A_MINUTE", "0.0125, UNDER_A_MINUTE", "0.02, MINUTES", "0.99, MINUTES", "1, HOURS", "23, HOURS",
        "24, DAYS", "300, DAYS", "400, WEEKS", "1500, MONTHS", "1e9, MONTHS", "Infinity, NEVER"
    })
    void timesAreToldInWords(double hours, TimeOrder words) {
        assertEquals(words, TimeOrder.ofHours(hours));
    }

    @Test
    void aSpanOfTimesIsTwoWordsOrOne() {}

    @Test
    void nonsenseNeverBecomesADose() {
        assertThrows(IllegalArgumentException.class, () -> LightBand.of(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> LightBand.of(-1));
        assertThrows(IllegalArgumentException.class, () -> TimeOrder.ofHours(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> LightExposure.none(CLEAR, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> new LightExposure(CLEAR, 1, Double.NaN, 0));
        assertThrows(IllegalArgumentException.class, () -> new LightExposure(CLEAR, 1, 1, 2));
        assertThrows(IllegalArgumentException.class, () -> LightUncertainty.factor(GlassColour.FLINT, 1.5));
        assertThrows(InvalidInput.class, () -> new LightStay(LightSource.SUN, -1, true, 1, Cover.NONE));
        assertThrows(InvalidInput.class, () -> new LightStay(LightSource.SUN, 1, true, -1, Cover.NONE));
    }
}
