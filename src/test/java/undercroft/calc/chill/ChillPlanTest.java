package undercroft.calc.chill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.DayOfWeek;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.time.temporal.ChronoUnit;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.Bottles;
import undercroft.catalogue.CoolingMedium;
import undercroft.catalogue.Flocculation;
import undercroft.catalogue.Listed;

class ChillPlanTest {
    private static final ZoneId VIENNA = ZoneId.of("Europe/Vienna");
    private static final BottleType LONGNECK = Listed.find(Bottles.STANDARD, "longneck-330", "bottle");
    private static final ZonedDateTime SATURDAY_AT_SIX =
            LocalDateTime.of(2026, 6, 13, 18, 0).atZone(VIENNA);

    /** "The night before is enough": common practice, no source. */
    @Test
    void flocculentYeastForSaturdayGoesInOnFridayEvening() {
        ZonedDateTime putIn = putIn(SATURDAY_AT_SIX, Flocculation.FLOCCULENT);
        assertEquals(DayOfWeek.FRIDAY, putIn.getDayOfWeek());
        assertTrue(putIn.getHour() >= 17, putIn.toString());
    }

    @Test
    void slowerYeastGoesInEarlier() {
        ZonedDateTime flocculent = putIn(SATURDAY_AT_SIX, Flocculation.FLOCCULENT);
        ZonedDateTime ordinary = putIn(SATURDAY_AT_SIX, Flocculation.ORDINARY);
        ZonedDateTime powdery = putIn(SATURDAY_AT_SIX, Flocculation.POWDERY);
        assertEquals(DayOfWeek.THURSDAY, ordinary.getDayOfWeek());
        assertTrue(ordinary.isBefore(flocculent));
        assertTrue(powdery.isBefore(ordinary.minusDays(1)));
    }

    /** Clocks went forward in the European Union on 29 March 2026 at 02:00 (Directive 2000/84/EC). */
    @Test
    void theEveningBeforeASummerTimeNightIsStillAtNine() {
        ZonedDateTime sunday = LocalDateTime.of(2026, 3, 29, 18, 0).atZone(VIENNA);
        ZonedDateTime putIn = putIn(sunday, Flocculation.FLOCCULENT);
        assertEquals(
                LocalDateTime.of(2026, 3, 28, 20, 41), putIn.toLocalDateTime().truncatedTo(ChronoUnit.MINUTES));
        ZonedDateTime later = putIn(sunday.plusHours(5), Flocculation.FLOCCULENT);
        assertEquals(LocalDateTime.of(2026, 3, 28, 21, 0), later.toLocalDateTime());
    }

    @ParameterizedTest
    @EnumSource(Flocculation.class)
    void thePartsAddUpToTheServing(Flocculation flocculation) {
        ChillPlan plan =
                ChillPlan.backwards(1_000_000, LONGNECK, 6, 21, 5, 10, flocculation, CoolingMedium.STILL_FRIDGE);
        double parts = plan.coolingMinutes() * 60 + plan.clearingHours() * 3600 + plan.warmingMinutes() * 60;
        assertEquals(1_000_000, plan.putInEpochSecond() + parts, 2);
        Cooling fridge = Cooling.of(LONGNECK, CoolingMedium.STILL_FRIDGE, 5, 6);
        assertEquals(6, fridge.usualCelsiusAfter(21, plan.coolingSpreadMinutes().median()), 1e-3);
        assertEquals(plan.coolingSpreadMinutes().high(), plan.coolingMinutes());
        assertEquals(
                2.0 / 1.2, plan.coolingMinutes() / plan.coolingSpreadMinutes().median(), 1e-9);
        double poured = Cooling.of(LONGNECK, CoolingMedium.ROOM, 21, 1).usualCelsiusAfter(5, plan.warmingMinutes());
        assertEquals(plan.bottleCelsius(), poured, 1e-3);
        assertTrue(plan.coldEnough());
    }

    @Test
    void aFridgeWarmerThanTheWantedGlassIsSaidSo() {
        ChillPlan plan =
                ChillPlan.backwards(0, LONGNECK, 1, 20, 8, 6, Flocculation.FLOCCULENT, CoolingMedium.STILL_FRIDGE);
        assertFalse(plan.coldEnough());
        assertEquals(8, plan.bottleCelsius());
        assertEquals(0, plan.warmingMinutes());
    }

    /** Common practice, no source: a quarter of an hour stirred; allowed for is up to four times as long. */
    @Test
    void iceWaterIsReadyWithinAnHourEvenIfNobodyStirs() {
        ChillPlan plan = ChillPlan.backwards(0, LONGNECK, 1, 20, 0, 8, Flocculation.ORDINARY, CoolingMedium.ICE_WATER);
        assertEquals(0, plan.clearingHours());
        assertTrue(plan.coolingSpreadMinutes().low() < 15);
        assertEquals(-Math.round(plan.coolingSpreadMinutes().high() * 60), plan.putInEpochSecond());
        assertTrue(plan.putInEpochSecond() > -60 * 60);
    }

    @Test
    void aFreezerIsNeverCountedOnForLongerThanItsAlarm() {
        ChillPlan plan = ChillPlan.backwards(0, LONGNECK, 1, 20, -18, 9, Flocculation.ORDINARY, CoolingMedium.FREEZER);
        double alarm = FreezerAlarm.of(BottleThermal.of(LONGNECK), 20, -18, FreezerAlarm.USUAL_FREEZING_CELSIUS)
                .alarmMinutes();
        assertTrue(plan.coolingSpreadMinutes().high() > alarm);
        assertEquals(alarm, plan.coolingMinutes());
    }

    @Test
    void bottlesAlreadyColdNeedNoCooling() {
        ChillPlan plan =
                ChillPlan.backwards(0, LONGNECK, 1, 5, 5, 5, Flocculation.FLOCCULENT, CoolingMedium.STILL_FRIDGE);
        assertEquals(0, plan.coolingMinutes());
        assertEquals(-12 * 3600, plan.putInEpochSecond());
    }

    @Test
    void aCrateInAFreezerIsARisk() {
        assertTrue(ChillPlan.backwards(0, LONGNECK, 20, 20, -18, 7, Flocculation.ORDINARY, CoolingMedium.FREEZER)
                .freezerRisk());
        assertFalse(ChillPlan.backwards(0, LONGNECK, 1, 20, -18, 9, Flocculation.ORDINARY, CoolingMedium.FREEZER)
                .freezerRisk());
    }

    private static ZonedDateTime putIn(ZonedDateTime serving, Flocculation flocculation) {
        return ChillPlan.backwards(
                        serving.toEpochSecond(), LONGNECK, 1, 20, 4, 8, flocculation, CoolingMedium.STILL_FRIDGE)
                .putInWhileAwake(VIENNA)
                .atZone(VIENNA);
    }
}
