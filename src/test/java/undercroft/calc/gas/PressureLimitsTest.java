package undercroft.calc.gas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import undercroft.catalogue.BottleClass;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.Closure;
import undercroft.catalogue.GlassColour;

class PressureLimitsTest {
    /** British Glass TEC 7 (publisher's abstract): 4.7 bar for soft-drink glass; 5.3 only for small refillables. */
    @Test
    void glassForBeerStaysWithinTheSoftDrinkRule() {
        assertTrue(PressureLimits.of(bottle(BottleClass.STANDARD, 500, OptionalDouble.empty()))
                        .workingPressureBar()
                <= 4.7);
        assertTrue(PressureLimits.of(bottle(BottleClass.REFILLABLE, 500, OptionalDouble.empty()))
                        .workingPressureBar()
                <= 5.3);
    }

    @ParameterizedTest
    @EnumSource(BottleClass.class)
    void aBottleWithoutAMakersFigureHasTheFiguresOfItsClass(BottleClass bottleClass) {
        PressureLimits limits = PressureLimits.of(bottle(bottleClass, 500, OptionalDouble.empty()));
        assertEquals(
                new PressureLimits(
                        bottleClass.cautionBar(),
                        bottleClass.workingPressureBar(),
                        bottleClass.minuteStrengthBar(),
                        bottleClass.warmestCelsius()),
                limits);
        assertTrue(limits.workingPressureBar() <= PressureLimits.YEAR_SHARE * limits.minuteStrengthBar() + 0.3);
    }

    /** TEC 7 is not for glass above 1.15 L. */
    @ParameterizedTest
    @CsvSource({
        "SPARKLING, REFILLABLE",
        "REFILLABLE, STANDARD",
        "STANDARD, REUSED",
        "REUSED, NOT_FOR_PRESSURE",
        "NOT_FOR_PRESSURE, NOT_FOR_PRESSURE",
        "SPARKLING_REUSED, REUSED",
        "PET, PET",
        "PET_WORN, PET_WORN"
    })
    void largeGlassCountsOneClassLower(BottleClass own, BottleClass working) {
        BottleType magnum = bottle(own, 1500, OptionalDouble.empty());
        assertEquals(working, PressureLimits.workingClass(magnum));
        assertEquals(working.workingPressureBar(), PressureLimits.of(magnum).workingPressureBar());
        assertEquals(own, PressureLimits.workingClass(bottle(own, 1000, OptionalDouble.empty())));
    }

    @Test
    void theMakersTestCountsForFortyFourPercent() {
        PressureLimits limits = PressureLimits.of(bottle(BottleClass.STANDARD, 500, OptionalDouble.of(14)));
        assertEquals(6.16, limits.workingPressureBar(), 1e-12);
        assertEquals(14, limits.minuteStrengthBar());
        assertTrue(limits.cautionBar() < limits.workingPressureBar());
    }

    @Test
    void noMakersFigureBeatsASparklingBottleAndWearStillCounts() {
        assertEquals(
                7,
                PressureLimits.of(bottle(BottleClass.STANDARD, 500, OptionalDouble.of(30)))
                        .workingPressureBar());
        assertEquals(
                0.44 * 0.7 * 12,
                PressureLimits.of(bottle(BottleClass.REUSED, 500, OptionalDouble.of(12)))
                        .workingPressureBar(),
                1e-12);
    }

    /** 16 bar × 0.44 × 0.7 = 4.93, told as 4.9; 12 × 0.44 × 0.7 = 3.7 at most; worked by hand here. */
    @ParameterizedTest
    @CsvSource({
        "STANDARD, REUSED, 3.7",
        "REFILLABLE, REUSED, 3.7",
        "REUSED, REUSED, 3.7",
        "SPARKLING, SPARKLING_REUSED, 4.93",
        "SPARKLING_REUSED, SPARKLING_REUSED, 4.93",
        "PET, PET_WORN, 3.85",
        "NOT_FOR_PRESSURE, NOT_FOR_PRESSURE, 0.5"
    })
    void everyScuffedBottleCountsOneClassLower(BottleClass own, BottleClass worn, double most) {
        BottleType used = bottle(own, 500, OptionalDouble.empty()).asUsed(GlassColour.AMBER, 480, true);
        assertEquals(worn, used.bottleClass());
        assertTrue(PressureLimits.of(used).workingPressureBar() <= most);
        assertTrue(PressureLimits.of(used).workingPressureBar() > most - 0.25);
        assertTrue(own.workingPressureBar() >= worn.workingPressureBar());
    }

    @ParameterizedTest
    @EnumSource(BottleClass.class)
    void wearTakesThirtyPercentOffAMakersFigureToo(BottleClass own) {
        BottleType used = bottle(own.worn(), 500, OptionalDouble.of(13));
        double asNew = Math.min(own.isPlastic() ? 5.5 : 7, 0.44 * 13);
        double share = own == BottleClass.NOT_FOR_PRESSURE ? 1 : 0.7;
        assertEquals(
                share * 0.44 * 13,
                PressureLimits.of(used).workingPressureBar(),
                share * 0.44 * 13 - share * asNew + 0.06);
        assertTrue(PressureLimits.of(used).workingPressureBar() <= asNew);
        assertEquals(own.warmestCelsius(), PressureLimits.of(used).warmestCelsius());
    }

    @Test
    void aWornSparklingBottleWithAStrongMakersFigureStillCountsAsWorn() {
        BottleType used =
                bottle(BottleClass.SPARKLING, 750, OptionalDouble.of(25)).asUsed(GlassColour.GREEN, 720, true);
        assertEquals(4.9, PressureLimits.of(used).workingPressureBar(), 1e-9);
    }

    @Test
    void vesselsNobodyRatedAreRefusedWithAReason() {
        assertEquals(
                "bottling.refusal.not-rated",
                PressureLimits.refusal(bottle(BottleClass.NOT_FOR_PRESSURE, 750, OptionalDouble.empty()))
                        .orElseThrow()
                        .key());
        assertTrue(PressureLimits.refusal(bottle(BottleClass.REUSED, 1500, OptionalDouble.empty()))
                .isPresent());
        assertTrue(PressureLimits.refusal(bottle(BottleClass.STANDARD, 500, OptionalDouble.empty()))
                .isEmpty());
        assertTrue(PressureLimits.refusal(bottle(BottleClass.NOT_FOR_PRESSURE, 750, OptionalDouble.of(9)))
                .isEmpty());
    }

    @Test
    void limitsMustBeInOrder() {
        assertThrows(IllegalArgumentException.class, () -> new PressureLimits(5, 4, 12));
        assertThrows(IllegalArgumentException.class, () -> new PressureLimits(1, 2, Double.NaN));
    }

    private static BottleType bottle(BottleClass bottleClass, double millilitres, OptionalDouble makerTestBar) {
        return new BottleType(
                "bottle",
                "bottle",
                GlassColour.AMBER,
                bottleClass,
                Closure.CROWN,
                millilitres,
                millilitres * 1.04,
                2.5,
                300,
                70,
                makerTestBar);
    }
}
