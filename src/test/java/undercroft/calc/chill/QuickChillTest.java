package undercroft.calc.chill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.Bottles;
import undercroft.catalogue.CoolingMedium;
import undercroft.catalogue.Flocculation;
import undercroft.catalogue.Listed;
import undercroft.series.TimeSeries;

final class QuickChillTest {
    private static final BottleType LONGNECK = Listed.find(Bottles.STANDARD, "longneck-330", "bottle");
    private static final long SERVING = 1_000_000;

    @Test
    void iceWaterTakesMinutesAndTheFreezerRingsBeforeIceForms() {
        // Common practice, no source: a bottle is cold within a quarter of an hour in ice and water that is stirred.
        // Nobody
        // stirs at a party, so the plan allows four times as long.
        QuickChill quick = QuickChill.of(SERVING, LONGNECK, 1, 20, 8);
        assertTrue(quick.spreadMinutes().low() > 3 && quick.spreadMinutes().low() < 15, quick.spreadMinutes() + " min");
        assertEquals(2 * quick.spreadMinutes().low(), quick.spreadMinutes().median(), 1e-9);
        assertEquals(4 * quick.spreadMinutes().low(), quick.minutes(), 1e-9);
        assertEquals(SERVING - Math.round(quick.minutes() * 60), quick.putInEpochSecond());
        assertTrue(quick.freezerMinutes() <= FreezerAlarm.LONGEST_MINUTES);
    }

    @Test
    void whatIsColdAlreadyNeedsNoIce() {
        assertEquals(0, QuickChill.of(SERVING, LONGNECK, 1, 5, 8).minutes());
    }

    @Test
    void theTrajectoryIsTheCoolingAtItsUsualPace() {
        ChillPlan plan = ChillPlan.backwards(
                SERVING, LONGNECK, 4, 20, 4, 8, Flocculation.FLOCCULENT, CoolingMedium.STILL_FRIDGE);
        TimeSeries trajectory =
                ChillTrajectory.of(plan, LONGNECK, CoolingMedium.STILL_FRIDGE, 4, plan.putInEpochSecond(), 20, 4);
        Cooling cooling = Cooling.of(LONGNECK, CoolingMedium.STILL_FRIDGE, 4.0, 4);
        long hour = plan.putInEpochSecond() + 3600;
        assertEquals(cooling.celsiusAfter(20, 60 / 1.2), trajectory.interpolated(hour), 0.02);
        assertEquals(plan.bottleCelsius(), trajectory.lastValue(), 0.1);
        assertTrue(ChillTrajectory.of(plan, LONGNECK, CoolingMedium.STILL_FRIDGE, 4, SERVING, 20, 4)
                .isEmpty());
    }
}
