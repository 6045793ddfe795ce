package undercroft.app.form;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.LocalDate;
import java.time.LocalTime;
import java.util.Locale;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import undercroft.quantity.InvalidInput;
import undercroft.wording.Messages;

/** Days of the week from any calendar of 2026: 25 November is a Wednesday. */
class DayTextTest {
    private static final DateText DATES = new DateText(Messages.english());
    private static final LocalDate WEDNESDAY = LocalDate.of(2026, 11, 25);

    private static DayText next(String typed) {
        return DayText.parse(typed, WEDNESDAY, true, Locale.UK, DATES);
    }

    @Test
    void aDayOfTheWeekIsTheNextOneOrTheOneThatWas() {
        assertEquals(LocalDate.of(2026, 11, 28), next("Saturday").day());
        assertEquals(LocalDate.of(2026, 11, 28), next("sat").day());
        assertEquals(WEDNESDAY, next("Wednesday").day());
        assertEquals(
                LocalDate.of(2026, 11, 21),
                DayText.parse("Saturday", WEDNESDAY, false, Locale.UK, DATES).day());
    }

    @Test
    void aTimeMayStandBehindTheDay() {
        assertEquals(Optional.of(LocalTime.of(18, 0)), next("Saturday 18:00").time());
        assertEquals(Optional.of(LocalTime.of(18, 0)), next("Sat, 6pm").time());
        DayText dated = next("2026-12-24 17:30");
        assertEquals(LocalDate.of(2026, 12, 24), dated.day());
        assertEquals(Optional.of(LocalTime.of(17, 30)), dated.time());
    }

    @Test
    void theWordsOfTheLanguageCountToo() {
        DayText typed = DayText.parse("Samstag 18:00", WEDNESDAY, true, Locale.GERMANY, DATES);
        assertEquals(LocalDate.of(2026, 11, 28), typed.day());
    }

    @Test
    void aPlainDateStaysOneAndNonsenseIsRefused() {
        assertFalse(next("28 Nov 2026").isSpoken());
        assertThrows(InvalidInput.class, () -> next("s"));
        assertThrows(InvalidInput.class, () -> next("someday 18:00"));
        assertThrows(InvalidInput.class, () -> next("Saturday 25:00"));
        assertThrows(InvalidInput.class, () -> next(""));
    }
}
