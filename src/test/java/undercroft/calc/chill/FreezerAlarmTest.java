package undercroft.calc.chill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import undercroft.catalogue.Bottles;
import undercroft.catalogue.CoolingMedium;
import undercroft.catalogue.Listed;

class FreezerAlarmTest {
    /**
     * Minutes to 0 and −2 °C in −18 °C by the equations of {@link Cooling}, worked out here with another program, unpublished:
     * they guard the arithmetic, not nature. The fast end of the spread is nine tenths of them.
     */
    @ParameterizedTest
    @CsvSource({"longneck-330, 55, 65", "returnable-500, 66, 77", "sparkling-750, 76, 89"})
    void theAlarmRingsBeforeTheBeerIsAtZero(String id, double toZero, double toMinusTwo) {
        FreezerAlarm alarm = FreezerAlarm.of(bottle(id), 20, -18, -2);
        assertEquals(45, alarm.alarmMinutes());
        assertEquals(0.9 * toZero, alarm.minutesToZero().orElseThrow(), 0.02 * toZero + 0.5);
        assertEquals(0.9 * toMinusTwo, alarm.minutesToFreezing().orElseThrow(), 0.02 * toMinusTwo + 0.5);
    }

    @Test
    void theAlarmNeverWaitsForTheSlowEnd() {
        for (double from = 1; from <= 30; from++) {
            FreezerAlarm alarm = FreezerAlarm.of(bottle("longneck-330"), from, -18, -2.2);
            double modelled = Cooling.of(bottle("longneck-330"), CoolingMedium.FREEZER, -18, Arrangement.SINGLE)
                    .minutes(from, 0)
                    .orElseThrow();
            assertTrue(alarm.alarmMinutes() <= 0.9 * modelled + 1e-9, "from " + from);
        }
    }

    @Test
    void aBottleFromTheFridgeHasLessTime() {
        FreezerAlarm alarm = FreezerAlarm.of(bottle("longneck-330"), 5, -18, -2.2);
        assertTrue(alarm.alarmMinutes() < 20);
        assertEquals(alarm.minutesToZero().orElseThrow(), alarm.alarmMinutes());
    }

    @Test
    void aBrokenFreezerNeverFreezesTheBeer() {
        FreezerAlarm alarm = FreezerAlarm.of(bottle("longneck-330"), 20, 1, -2.2);
        assertTrue(alarm.minutesToZero().isEmpty());
        assertTrue(alarm.minutesToFreezing().isEmpty());
        assertEquals(45, alarm.alarmMinutes());
    }

    private static BottleThermal bottle(String id) {
        return BottleThermal.of(Listed.find(Bottles.STANDARD, id, "bottle"));
    }
}
