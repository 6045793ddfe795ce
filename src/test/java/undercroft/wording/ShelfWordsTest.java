package undercroft.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Map;
import org.junit.jupiter.api.Test;
import undercroft.cellar.Cellar;
import undercroft.outlook.Outlooks;

/** Days of the week: 25 November 2026 is a Wednesday (ISO calendar). */
class ShelfWordsTest {
    private final ShelfWords words = ShelfWords.of(
            Outlooks.of(
                    Cellar.empty("London", ZoneId.of("Europe/London")),
                    Map.of(),
                    Instant.parse("2026-11-25T18:00:00Z")),
            Messages.english());

    @Test
    void aDayOfThisYearGoesWithoutItsYear() {
        assertEquals("12 November", words.day(Instant.parse("2026-11-12T09:00:00Z")));
        assertEquals("12 November 2025", words.day(Instant.parse("2025-11-12T09:00:00Z")));
    }

    @Test
    void theCellarsOwnClockDecidesWhichDayItIs() {
        assertEquals("1 July, 00:30", words.dayAndTime(Instant.parse("2026-06-30T23:30:00Z")));
    }

    @Test
    void theNearerTheMoreFamiliar() {
        assertEquals("now", words.when(Instant.parse("2026-11-25T18:00:00Z")));
        assertEquals("today 19:30", words.when(Instant.parse("2026-11-25T19:30:00Z")));
        assertEquals("tomorrow 08:00", words.when(Instant.parse("2026-11-26T08:00:00Z")));
        assertEquals("Saturday 18:00", words.when(Instant.parse("2026-11-28T18:00:00Z")));
        assertEquals("2 December", words.when(Instant.parse("2026-12-02T18:00:00Z")));
    }

    @Test
    void theDayOfCappingIsDayOne() {
        assertEquals(1, words.dayNumber(Instant.parse("2026-11-25T17:00:00Z")));
        assertEquals(2, words.dayNumber(Instant.parse("2026-11-24T17:00:00Z")));
    }
}
