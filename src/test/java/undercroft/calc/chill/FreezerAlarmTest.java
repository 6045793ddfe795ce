package undercroft.calc.chill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import undercroft.catalogue.Bottles;
import undercroft.catalogue.Listed;

class FreezerAlarmTest {
    /** Minutes to 0 and −2 °C in −18 °C: regression vectors of the same equations worked out independently. */
    @ParameterizedTest
    @CsvSource({"longneck-330, 55, 65", "returnable-500, 66, 77", "sparkling-750, 76, 89"})
    void theAlarmRingsBeforeTheBeerIsAtZero(String id, double toZero, double toMinusTwo) {
        FreezerAlarm alarm = FreezerAlarm.of(bottle(id), 20, -18, -2);
        assertEquals(45, alarm.alarmMinutes());
        assertEquals(toZero, alarm.minutesToZero().orElseThrow(), 0.02 * toZero + 0.5);
        assertEquals(toMinusTwo, alarm.minutesToFreezing().orElseThrow(), 0.02 * toMinusTwo + 0.5);
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
