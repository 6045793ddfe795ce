package undercroft.calc.chill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.Bottles;
import undercroft.catalogue.Listed;
import undercroft.catalogue.Settling;
import undercroft.catalogue.Surroundings;
import undercroft.series.TimeSeries;

final class QuickChillTest {
    private static final BottleType LONGNECK = Listed.find(Bottles.STANDARD, "longneck-330", "bottle");
    private static final long SERVING = 1_000_000;

    @Test
    void iceWaterTakesMinutesAndTheFreezerRingsBeforeIceForms() {
        // Common practice, no source: a bottle is cold in a bucket of ice and water within a quarter of an hour.
        QuickChill quick = QuickChill.of(SERVING, LONGNECK, 1, 20, 8);
        assertTrue(quick.minutes() > 3 && quick.minutes() < 15, quick.minutes() + " min");
        assertEquals(SERVING - Math.round(quick.minutes() * 60), quick.putInEpochSecond());
        assertTrue(quick.freezerMinutes() <= FreezerAlarm.LONGEST_MINUTES);
    }

    @Test
    void whatIsColdAlreadyNeedsNoIce() {
        assertEquals(0, QuickChill.of(SERVING, LONGNECK, 1, 5, 8).minutes());
    }

    @Test
    void theCourseIsTheCoolingItself() {
        ChillPlan plan =
                ChillPlan.backwards(SERVING, LONGNECK, 4, 20, 4, 8, Settling.FLOCCULENT, Surroundings.STILL_FRIDGE);
        TimeSeries course =
                ChillCourse.of(plan, LONGNECK, Surroundings.STILL_FRIDGE, 4, plan.putInEpochSecond(), 20, 4);
        Cooling cooling = Cooling.of(LONGNECK, Surroundings.STILL_FRIDGE, 4.0, 4);
        long hour = plan.putInEpochSecond() + 3600;
        assertEquals(cooling.celsiusAfter(20, 60), course.interpolated(hour), 0.02);
        assertEquals(plan.bottleCelsius(), course.lastValue(), 0.1);
        assertTrue(ChillCourse.of(plan, LONGNECK, Surroundings.STILL_FRIDGE, 4, SERVING, 20, 4)
                .isEmpty());
    }
}
