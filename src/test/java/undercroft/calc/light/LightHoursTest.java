package undercroft.calc.light;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import undercroft.catalogue.Cover;
import undercroft.catalogue.LightPlace;
import undercroft.catalogue.LightSource;
import undercroft.quantity.InvalidInput;

class LightHoursTest {
    private static final ZoneId VIENNA = ZoneId.of("Europe/Vienna");
    private static final LightHours WINDOW = LightHours.usual(LightPlace.WINDOW_SHADE, 8);
    private static final LightHours LAMP = LightHours.usual(LightPlace.ROOM_EVENING, 5);

    @Test
    void aNightAtTheWindowIsDark() {
        assertEquals(0, WINDOW.within(at("2026-06-10T22:00"), at("2026-06-11T06:00"), VIENNA));
        assertEquals(8, WINDOW.within(at("2026-06-10T06:00"), at("2026-06-10T22:00"), VIENNA), 1e-9);
    }

    @Test
    void anEveningLampIsDarkByDay() {
        assertEquals(0, LAMP.within(at("2026-06-10T07:00"), at("2026-06-10T18:00"), VIENNA));
        assertEquals(1, LAMP.within(at("2026-06-10T20:00"), at("2026-06-10T21:00"), VIENNA), 1e-9);
        assertEquals(LocalTime.of(23, 0), LAMP.until());
    }

    /** Half a sine has its mean at 2/π of its height (any textbook), so about noon an hour counts for π/2 of a mean one. */
    @Test
    void oneHourAtNoonIsNotAnAverageHour() {
        double noon = WINDOW.within(at("2026-06-10T12:30"), at("2026-06-10T13:30"), VIENNA);
        double first = WINDOW.within(at("2026-06-10T09:00"), at("2026-06-10T10:00"), VIENNA);
        assertEquals(Math.PI / 2, noon, 0.02);
        assertEquals((1 - Math.cos(Math.PI / 8)) / 2 * 8, first, 1e-9);
        assertTrue(first < 0.4);
    }

    @Test
    void aLampMayBurnPastMidnight() {
        LightHours late = LightHours.between(LocalTime.of(20, 0), LocalTime.of(2, 0), 6, LightSource.LED_WARM);
        assertEquals(6, late.hours());
        assertEquals(2, late.within(at("2026-06-11T00:00"), at("2026-06-11T12:00"), VIENNA), 1e-9);
        LightHours always = LightHours.between(LocalTime.of(8, 0), LocalTime.of(8, 0), 24, LightSource.LED_WARM);
        assertEquals(24, always.hours());
        assertEquals(5.5, always.within(at("2026-06-11T03:00"), at("2026-06-11T08:30"), VIENNA), 1e-9);
    }

    @Test
    void aLampThatIsOnNowAndThenIsSpreadOverItsHours() {
        LightHours cellar = LightHours.between(LocalTime.of(7, 0), LocalTime.of(22, 0), 1, LightSource.LED_WARM);
        assertEquals(1, cellar.within(at("2026-06-10T00:00"), at("2026-06-11T00:00"), VIENNA), 1e-9);
        assertEquals(0.2, cellar.within(at("2026-06-10T09:00"), at("2026-06-10T12:00"), VIENNA), 1e-9);
        assertEquals(0, cellar.within(at("2026-06-10T22:00"), at("2026-06-11T07:00"), VIENNA), 1e-9);
        assertThrows(InvalidInput.class, () -> new LightHours(LocalTime.NOON, 2, 3, false));
    }

    /** Clocks went forward in the European Union on 29 March 2026 at 02:00 (Directive 2000/84/EC). */
    @Test
    void theLampFollowsTheClockIntoSummerTime() {
        assertEquals(1, LAMP.within(at("2026-03-28T18:00"), at("2026-03-28T19:00"), VIENNA), 1e-9);
        assertEquals(1, LAMP.within(at("2026-03-29T18:00"), at("2026-03-29T19:00"), VIENNA), 1e-9);
        assertEquals(10, LAMP.within(at("2026-03-28T12:00"), at("2026-03-30T12:00"), VIENNA), 1e-9);
    }

    @ParameterizedTest
    @EnumSource(LightPlace.class)
    void aWholeDayHasTheHoursOfItsPlace(LightPlace place) {
        LightHours hours = LightHours.usual(place, place.hoursPerDay());
        assertEquals(place.hoursPerDay(), hours.within(at("2026-02-03T05:17"), at("2026-02-04T05:17"), VIENNA), 1e-9);
    }

    @Property(tries = 300, seed = "20260104")
    void stretchesAddUpAndNothingIsLitTwice(
            @ForAll LightPlace place,
            @ForAll @DoubleRange(min = 0, max = 24) double hours,
            @ForAll @IntRange(min = 0, max = 400_000) int first,
            @ForAll @IntRange(min = 0, max = 400_000) int second) {
        LightHours when = LightHours.usual(place, hours);
        long start = at("2026-10-20T00:00");
        double whole = when.within(start, start + first + second, VIENNA);
        double parts =
                when.within(start, start + first, VIENNA) + when.within(start + first, start + first + second, VIENNA);
        assertEquals(whole, parts, 1e-9);
        assertTrue(whole >= 0 && whole <= Math.PI / 2 * (first + second) / 3600.0 + 1e-9);
    }

    @Test
    void aStayByTheClockHasItsHours() {
        LightStay stay = LightStay.between(
                LightSource.WINDOW,
                2_000,
                true,
                WINDOW,
                at("2026-06-10T00:00"),
                at("2026-06-13T00:00"),
                VIENNA,
                Cover.NONE);
        assertEquals(24, stay.hours(), 1e-9);
    }

    @Test
    void refusesADayOfMoreThanItsHours() {
        assertThrows(InvalidInput.class, () -> new LightHours(LocalTime.NOON, 25, 25, true));
        assertThrows(InvalidInput.class, () -> LightHours.usual(LightPlace.ROOM_DAY, -1));
    }

    private static long at(String local) {
        return LocalDateTime.parse(local).atZone(VIENNA).toEpochSecond();
    }
}
