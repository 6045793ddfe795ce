package undercroft.calc.spell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.ZoneId;
import org.junit.jupiter.api.Test;
import undercroft.catalogue.YeastStrain;
import undercroft.series.TimeSeries;

class DialDayTest {
    private static final ZoneId VIENNA = ZoneId.of("Europe/Vienna");

    @Test
    void aDayReachesItsLowestAndItsHighest() {
        TimeSeries day = DialDay.hours(LocalDate.of(2026, 7, 14), 17, 25, VIENNA);
        assertEquals(24, day.size());
        assertEquals(17, day.valueAt(3), 1e-9);
        assertEquals(25, day.valueAt(15), 1e-9);
    }

    @Test
    void theDaysTheClocksChangeHave23And25Hours() {
        // Directive 2000/84/EC: last Sundays of March and October.
        assertEquals(23, DialDay.hours(LocalDate.of(2026, 3, 29), 5, 12, VIENNA).size());
        assertEquals(
                25, DialDay.hours(LocalDate.of(2026, 10, 25), 5, 12, VIENNA).size());
        // United States: second Sunday of March (Energy Policy Act of 2005).
        ZoneId york = ZoneId.of("America/New_York");
        assertEquals(23, DialDay.hours(LocalDate.of(2026, 3, 8), 5, 12, york).size());
        // Lord Howe Island turns its clocks by half an hour (tz database, australasia).
        assertEquals(
                25,
                DialDay.hours(LocalDate.of(2026, 4, 5), 5, 12, ZoneId.of("Australia/Lord_Howe"))
                        .size());
    }

    @Test
    void aLowestAboveTheHighestIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> DialDay.hours(LocalDate.of(2026, 7, 14), 26, 25, VIENNA));
    }

    @Test
    void aLagerYeastStallsColderAndItsBeerWantsItCooler() {
        YeastLimits ale = YeastLimits.of(YeastStrain.ALE);
        YeastLimits lager = YeastLimits.of(YeastStrain.LAGER);
        // Common practice, no source: ale all but stops below 10 °C, lager works on at 8.
        assertTrue(ale.stallCelsius() > 8 && ale.stallCelsius() < 12, "ale " + ale.stallCelsius());
        assertTrue(lager.stallCelsius() < 8, "lager " + lager.stallCelsius());
        assertEquals(lager.warmCelsius(), ale.and(lager).warmCelsius());
        assertEquals(ale.stallCelsius(), ale.and(lager).stallCelsius());
    }
}
