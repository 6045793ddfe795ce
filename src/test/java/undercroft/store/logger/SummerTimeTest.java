package undercroft.store.logger;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Instant;
import java.time.LocalDateTime;
import java.time.ZoneId;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import undercroft.series.TimeSeries;

/** Nights on which the clocks change; the dates and hours are those of the IANA time zone database. */
class SummerTimeTest {
    private static final DateTimeFormatter WALL = DateTimeFormatter.ofPattern("yyyy-MM-dd HH:mm", Locale.ROOT);

    /** Lines a logger with a well-set wall clock writes from one instant to another. */
    private static List<String> wallClockLines(Instant from, Instant until, int minutes, ZoneId zone) {
        List<String> lines = new ArrayList<>();
        int i = 0;
        for (Instant at = from; at.isBefore(until); at = at.plusSeconds(minutes * 60L)) {
            lines.add(WALL.format(LocalDateTime.ofInstant(at, zone)) + "," + (10 + i * 0.25));
            i++;
        }
        return lines;
    }

    private static TimeSeries expected(Instant from, Instant until, int minutes) {
        TimeSeries.Builder series = new TimeSeries.Builder();
        int i = 0;
        for (Instant at = from; at.isBefore(until); at = at.plusSeconds(minutes * 60L)) {
            series.add(at.getEpochSecond(), 10 + i * 0.25);
            i++;
        }
        return series.build();
    }

    @ParameterizedTest
    @CsvSource({
        "Europe/Berlin, 2023-10-28T20:00:00Z, 60",
        "Europe/Berlin, 2023-10-28T20:00:00Z, 30",
        "Europe/Berlin, 2023-10-28T20:00:00Z, 7",
        "Europe/Berlin, 2024-03-30T20:00:00Z, 10",
        "America/New_York, 2023-11-05T00:00:00Z, 60",
        "America/New_York, 2023-11-05T00:00:00Z, 15",
        "America/New_York, 2024-03-10T00:00:00Z, 15",
        "Australia/Lord_Howe, 2024-04-06T10:00:00Z, 30",
        "Australia/Lord_Howe, 2024-04-06T10:00:00Z, 10",
        "Australia/Lord_Howe, 2023-09-30T10:00:00Z, 10"
    })
    void aNightAcrossTheChangeComesBackAsTheInstantsItWasWrittenAt(ZoneId zone, Instant from, int minutes) {
        Instant until = from.plusSeconds(12 * 3600);
        List<String> lines = wallClockLines(from, until, minutes, zone);
        assertEquals(
                expected(from, until, minutes),
                Logs.read(String.join("\n", lines), zone).celsius());
        Collections.reverse(lines);
        assertEquals(
                expected(from, until, minutes),
                Logs.read(String.join("\n", lines), zone).celsius(),
                "newest first");
    }

    @Test
    void theHourThatComesTwiceIsToldApartByTheOrderOfTheLinesAndCounted() {
        ImportedLog log = Logs.read("""
                29.10.2023 01:30;1
                29.10.2023 02:00;2
                29.10.2023 02:30;3
                29.10.2023 02:00;4
                29.10.2023 02:30;5
                29.10.2023 03:00;6
                """, Logs.BERLIN);
        assertEquals(
                Logs.series(
                        "2023-10-28T23:30:00Z",
                        1,
                        "2023-10-29T00:00:00Z",
                        2,
                        "2023-10-29T00:30:00Z",
                        3,
                        "2023-10-29T01:00:00Z",
                        4,
                        "2023-10-29T01:30:00Z",
                        5,
                        "2023-10-29T02:00:00Z",
                        6),
                log.celsius());
        assertEquals(new Finding(4, List.of(2, 3, 4, 5)), log.found(Reason.REPEATED_HOUR));
        assertEquals(0, log.dropped());
    }

    @Test
    void linesInTheSkippedHourAreMovedOnAndCounted() {
        ImportedLog log = Logs.read("""
                2024-03-31 01:50,1
                2024-03-31 02:10,2
                2024-03-31 03:30,3
                """, Logs.BERLIN);
        assertEquals(
                Logs.series("2024-03-31T00:50:00Z", 1, "2024-03-31T01:10:00Z", 2, "2024-03-31T01:30:00Z", 3),
                log.celsius());
        assertEquals(new Finding(1, List.of(2)), log.found(Reason.SKIPPED_HOUR));
    }

    @Test
    void aSlightDisorderInTheRepeatedHourIsNoSecondPass() {
        ImportedLog log = Logs.read("""
                2023-10-29 01:50,1
                2023-10-29 02:00,2
                2023-10-29 02:20,4
                2023-10-29 02:10,3
                2023-10-29 02:30,5
                """, Logs.BERLIN);
        assertEquals(
                Instant.parse("2023-10-29T00:30:00Z").getEpochSecond(),
                log.celsius().lastTime());
        assertEquals(1, log.found(Reason.OUT_OF_ORDER).count());
    }

    @Test
    void aLoggerThatNeverChangesItsClockIsReadWithAFixedOffset() {
        Instant from = Instant.parse("2024-03-30T22:00:00Z");
        Instant until = Instant.parse("2024-03-31T06:00:00Z");
        ZoneId fixed = ZoneId.of("+01:00");
        String text = String.join("\n", wallClockLines(from, until, 10, fixed));
        assertEquals(expected(from, until, 10), Logs.read(text, fixed).celsius());
    }
}
