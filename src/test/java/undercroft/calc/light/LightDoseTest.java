package undercroft.calc.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;
import undercroft.catalogue.GlassColour;
import undercroft.catalogue.LightSource;
import undercroft.quantity.InvalidInput;

class LightDoseTest {
    private static final double GLASS = 2.5;
    private static final double PET = 0.35;
    private static final List<GlassColour> TRANSPARENT = List.of(
            GlassColour.FLINT,
            GlassColour.BLUE,
            GlassColour.GREEN,
            GlassColour.DARK_GREEN,
            GlassColour.AMBER,
            GlassColour.PET_CLEAR,
            GlassColour.PET_AMBER);

    /**
     * The calibration itself, then hours to D = 1: regression values of an earlier run of the same equations, kept so that a
     * change is noticed; no physical truth.
     */
    @ParameterizedTest
    @CsvSource({
        "FLINT, SUN, 109500, 0.0125",
        "GREEN, SUN, 109500, 0.0224",
        "AMBER, SUN, 109500, 0.1986",
        "FLINT, WINDOW, 2000, 0.603",
        "AMBER, FLUORESCENT_TRIPHOSPHOR, 750, 52.56",
        "GREEN, LED_NEUTRAL, 1000, 4.476",
        "AMBER, INCANDESCENT, 30, 1602"
    })
    void hoursStayAsTheyWere(GlassColour colour, LightSource source, double lux, double hours) {
        assertEquals(1, LightDose.hoursToPerceptible(colour, GLASS, source, lux, 1) / hours, 0.01);
    }

    /**
     * Huth 1876, Polytechn. Journal 222:192: beer in a clear bottle is spoilt within a quarter of an hour of summer sun; Schultze
     * 1888, Polytechn. Journal 270:329: after a few minutes, and deep brown glass protects best. By nose, without instrument.
     */
    @Test
    void summerSunSpoilsAClearBottleWithinAQuarterOfAnHourAndABrownOneLast() {
        double factor = LightUncertainty.factor(GlassColour.FLINT, 0);
        double clear = LightDose.hoursToPerceptible(GlassColour.FLINT, GLASS, LightSource.SUN, 109_500, 1);
        assertTrue(clear * factor < 0.25);
        for (GlassColour other :
                List.of(GlassColour.FLINT, GlassColour.BLUE, GlassColour.GREEN, GlassColour.DARK_GREEN)) {
            assertTrue(LightDose.hoursToPerceptible(other, GLASS, LightSource.SUN, 109_500, 1)
                    < LightDose.hoursToPerceptible(GlassColour.AMBER, 2.0, LightSource.SUN, 109_500, 1));
        }
    }

    /** Lux-hours to D = 1, all columns: regression values of an earlier run of the same equations. */
    @ParameterizedTest
    @CsvSource({
        "SUN, 1369, 1591, 2449, 3440, 21740, 1398, 17490",
        "OVERCAST, 1194, 1380, 2143, 3016, 19500, 1220, 15650",
        "BLUE_SKY, 864.5, 982.2, 1554, 2188, 15410, 883, 12290",
        "WINDOW, 1206, 1397, 2158, 3035, 19450, 1233, 15620",
        "FLUORESCENT_COOL, 2197, 2507, 4042, 5782, 38660, 2246, 30850",
        "FLUORESCENT_TRIPHOSPHOR, 2325, 2663, 4313, 6207, 39420, 2376, 31500",
        "LED_WARM, 3713, 4443, 7047, 10240, 52470, 3788, 42300",
        "LED_NEUTRAL, 2317, 2719, 4476, 6581, 36340, 2364, 29080",
        "INCANDESCENT, 3656, 4464, 6384, 8829, 48060, 3735, 39220"
    })
    void luxHoursStayAsTheyWere(
            LightSource source,
            double flint,
            double blue,
            double green,
            double darkGreen,
            double amber,
            double petClear,
            double petAmber) {
        double[] expected = {flint, blue, green, darkGreen, amber, petClear, petAmber};
        for (int i = 0; i < expected.length; i++) {
            GlassColour colour = TRANSPARENT.get(i);
            double millimetres = colour.id().startsWith("pet") ? PET : GLASS;
            double luxHours = LightDose.luxHoursToPerceptible(colour, millimetres, source, 1);
            assertEquals(1, luxHours / expected[i], 0.01, source + " " + colour);
        }
    }

    /** Handbook statement (The Practical Brewer 1977, as quoted elsewhere): bottled beer in bright sun, under a minute. */
    @Test
    void clearGlassInBrightSunLastsUnderAMinute() {
        double hours = LightDose.hoursToPerceptible(GlassColour.FLINT, GLASS, LightSource.SUN, 109_500, 1);
        assertEquals(TimeOrder.UNDER_A_MINUTE, TimeOrder.ofHours(hours));
    }

    /** Same handbook sentence: a few hours in diffuse daylight; its level is not given, so 300 to 2000 lx. */
    @Test
    void clearGlassInDiffuseDaylightLastsUnderAnHourToHours() {
        double dim = LightDose.hoursToPerceptible(GlassColour.FLINT, GLASS, LightSource.WINDOW, 300, 1);
        double bright = LightDose.hoursToPerceptible(GlassColour.FLINT, GLASS, LightSource.WINDOW, 2_000, 1);
        assertTrue(dim > 2 && dim < 8, "hours " + dim);
        assertTrue(bright > 0.25 && bright < 2, "hours " + bright);
    }

    /** A glass maker's figures (trade article, 2008): dark green stops 63 %, flint 10 %; the column was built near them. */
    @Test
    void darkGreenLastsTwoToThreeTimesAsLongAsClear() {
        double ratio = LightDose.luxHoursToPerceptible(GlassColour.DARK_GREEN, GLASS, LightSource.SUN, 1)
                / LightDose.luxHoursToPerceptible(GlassColour.FLINT, GLASS, LightSource.SUN, 1);
        assertTrue(ratio > 2 && ratio < 3, "ratio " + ratio);
    }

    @ParameterizedTest
    @EnumSource(LightSource.class)
    void everySourceFindsTheSameOrderOfGlass(LightSource source) {
        GlassColour[] fromWorst = {
            GlassColour.FLINT, GlassColour.BLUE, GlassColour.GREEN, GlassColour.DARK_GREEN, GlassColour.AMBER
        };
        double before = 0;
        for (GlassColour colour : fromWorst) {
            double luxHours = LightDose.luxHoursToPerceptible(colour, GLASS, source, 1);
            assertTrue(luxHours > before, source + " " + colour);
            before = luxHours;
        }
        assertTrue(LightDose.luxHoursToPerceptible(GlassColour.OPAQUE, GLASS, source, 1) > before);
    }

    /** Model property over all sources, regression: green 1.6 to 2.0 times clear, brown 13 to 18 times. */
    @ParameterizedTest
    @EnumSource(LightSource.class)
    void greenIsLittleBetterThanClearAndBrownMuchBetter(LightSource source) {
        double flint = LightDose.luxHoursToPerceptible(GlassColour.FLINT, GLASS, source, 1);
        double green = LightDose.luxHoursToPerceptible(GlassColour.GREEN, GLASS, source, 1) / flint;
        double amber = LightDose.luxHoursToPerceptible(GlassColour.AMBER, GLASS, source, 1) / flint;
        assertTrue(green > 1.6 && green < 2.0, "green " + green);
        assertTrue(amber > 13 && amber < 18, "amber " + amber);
    }

    @ParameterizedTest
    @EnumSource(LightSource.class)
    void opaqueWallsNoLightOrNoHopsMeanNever(LightSource source) {
        double never = Double.POSITIVE_INFINITY;
        assertEquals(0.0, LightDose.perHour(GlassColour.OPAQUE, 3, source, 100_000));
        assertEquals(0.0, LightDose.perHour(GlassColour.FLINT, GLASS, source, 0));
        assertEquals(never, LightDose.hoursToPerceptible(GlassColour.OPAQUE, 3, source, 100_000, 1));
        assertEquals(never, LightDose.hoursToPerceptible(GlassColour.FLINT, GLASS, source, 0, 1));
        assertEquals(never, LightDose.hoursToPerceptible(GlassColour.FLINT, GLASS, source, 1_000, 0));
        assertEquals(never, LightDose.luxHoursToPerceptible(GlassColour.OPAQUE, 3, source, 1));
        assertEquals(TimeOrder.NEVER, TimeOrder.ofHours(never));
    }

    /** Reciprocity (assumed by the model): five times the light takes a fifth of the time. */
    @Property(tries = 200, seed = "20260104")
    void luxTimesHoursIsWhatCounts(
            @ForAll GlassColour colour,
            @ForAll LightSource source,
            @ForAll @DoubleRange(min = 1, max = 40_000) double lux) {
        double slow = LightDose.hoursToPerceptible(colour, 1, source, lux, 1);
        double fast = LightDose.hoursToPerceptible(colour, 1, source, 5 * lux, 1);
        assertTrue(slow == 5 * fast || Math.abs(slow / fast - 5) < 1e-9);
    }

    @Property(tries = 200, seed = "20260104")
    void aThickerWallNeverLetsInMore(
            @ForAll GlassColour colour,
            @ForAll LightSource source,
            @ForAll @DoubleRange(min = 0.1, max = 9) double millimetres,
            @ForAll @DoubleRange(min = 0.01, max = 5) double more) {
        double thin = LightDose.perHour(colour, millimetres, source, 500);
        double thick = LightDose.perHour(colour, millimetres + more, source, 500);
        assertTrue(thick <= thin && thick >= 0);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, 200_001, Double.NaN, Double.POSITIVE_INFINITY})
    void impossibleLuxIsRefused(double lux) {
        InvalidInput fault = assertThrows(
                InvalidInput.class, () -> LightDose.perHour(GlassColour.FLINT, GLASS, LightSource.SUN, lux));
        assertEquals("lux", fault.where());
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, Double.NaN, Double.POSITIVE_INFINITY})
    void anImpossibleBeerFactorIsAFaultOfTheCaller(double beerFactor) {
        assertThrows(
                IllegalArgumentException.class,
                () -> LightDose.luxHoursToPerceptible(GlassColour.FLINT, GLASS, LightSource.SUN, beerFactor));
    }
}
