package undercroft.plot.scale;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

/**
 * The nights on which clocks change, by the laws themselves: Directive 2000/84/EC (last Sundays of March and October,
 * 01:00 UTC); Energy Policy Act of 2005, section 110 (second Sunday of March, first of November, 02:00 local); for Lord
 * Howe Island (half an hour) and Lebanon (at midnight) the IANA time zone database, files australasia and asia.
 */
class TickLadderTest {
    private static final ZoneId BERLIN = ZoneId.of("Europe/Berlin");
    private static final ZoneId NEW_YORK = ZoneId.of("America/New_York");
    private static final ZoneId LORD_HOWE = ZoneId.of("Australia/Lord_Howe");

    private static List<String> ticks(String from, String until, ZoneId zone, int maxTicks) {
        return TickLadder.ticks(epoch(from), epoch(until), zone, Locale.UK, maxTicks).stream()
                .map(tick -> Instant.ofEpochSecond(tick.epochSecond()) + " " + tick.label())
                .toList();
    }

    private static long epoch(String instant) {
        return Instant.parse(instant).getEpochSecond();
    }

    @Test
    void anHourTheClocksSkipHasNoTickInBerlin() {
        assertEquals(
                List.of(
                        "2026-03-28T23:00:00Z 29 Mar",
                        "2026-03-29T00:00:00Z 01:00",
                        "2026-03-29T01:00:00Z 03:00",
                        "2026-03-29T02:00:00Z 04:00"),
                ticks("2026-03-28T22:30:00Z", "2026-03-29T02:30:00Z", BERLIN, 5));
    }

    @Test
    void anHourTheClocksShowTwiceHasTwoTicksInBerlin() {
        assertEquals(
                List.of(
                        "2026-10-24T22:00:00Z 25 Oct",
                        "2026-10-24T23:00:00Z 01:00",
                        "2026-10-25T00:00:00Z 02:00",
                        "2026-10-25T01:00:00Z 02:00",
                        "2026-10-25T02:00:00Z 03:00"),
                ticks("2026-10-24T21:30:00Z", "2026-10-25T02:30:00Z", BERLIN, 6));
    }

    @Test
    void quartersOfADayKeepTheirClockTimesOverBothChangesInBerlin() {
        assertEquals(
                List.of(
                        "2026-03-28T23:00:00Z 29 Mar",
                        "2026-03-29T04:00:00Z 06:00",
                        "2026-03-29T10:00:00Z 12:00",
                        "2026-03-29T16:00:00Z 18:00",
                        "2026-03-29T22:00:00Z 30 Mar"),
                ticks("2026-03-28T23:00:00Z", "2026-03-29T22:00:00Z", BERLIN, 7));
        assertEquals(
                List.of(
                        "2026-10-24T22:00:00Z 25 Oct",
                        "2026-10-25T05:00:00Z 06:00",
                        "2026-10-25T11:00:00Z 12:00",
                        "2026-10-25T17:00:00Z 18:00",
                        "2026-10-25T23:00:00Z 26 Oct"),
                ticks("2026-10-24T22:00:00Z", "2026-10-25T23:00:00Z", BERLIN, 7));
    }

    @Test
    void newYorkChangesOnItsOwnNights() {
        assertEquals(
                List.of(
                        "2026-03-08T05:00:00Z 8 Mar",
                        "2026-03-08T06:00:00Z 01:00",
                        "2026-03-08T07:00:00Z 03:00",
                        "2026-03-08T08:00:00Z 04:00"),
                ticks("2026-03-08T04:30:00Z", "2026-03-08T08:30:00Z", NEW_YORK, 5));
        assertEquals(
                List.of(
                        "2026-11-01T04:00:00Z 1 Nov",
                        "2026-11-01T05:00:00Z 01:00",
                        "2026-11-01T06:00:00Z 01:00",
                        "2026-11-01T07:00:00Z 02:00"),
                ticks("2026-11-01T03:30:00Z", "2026-11-01T07:30:00Z", NEW_YORK, 5));
    }

    @Test
    void halfAnHourIsSkippedAndShownTwiceOnLordHoweIsland() {
        assertEquals(
                List.of(
                        "2026-10-03T14:30:00Z 4 Oct, 01:00",
                        "2026-10-03T15:00:00Z 01:30",
                        "2026-10-03T15:30:00Z 02:30",
                        "2026-10-03T16:00:00Z 03:00"),
                ticks("2026-10-03T14:20:00Z", "2026-10-03T16:10:00Z", LORD_HOWE, 5));
        assertEquals(
                List.of(
                        "2026-04-04T14:00:00Z 5 Apr, 01:00",
                        "2026-04-04T14:30:00Z 01:30",
                        "2026-04-04T15:00:00Z 01:30",
                        "2026-04-04T15:30:00Z 02:00"),
                ticks("2026-04-04T13:50:00Z", "2026-04-04T15:40:00Z", LORD_HOWE, 5));
    }

    @Test
    void daysBeginAtLocalMidnightHoweverLongTheyAre() {
        assertEquals(
                List.of("2026-10-02T13:30:00Z 3 Oct", "2026-10-03T13:30:00Z 4 Oct", "2026-10-04T13:00:00Z 5 Oct"),
                ticks("2026-10-02T13:00:00Z", "2026-10-05T12:00:00Z", LORD_HOWE, 4));
        assertEquals(
                List.of("2026-04-03T13:00:00Z 4 Apr", "2026-04-04T13:00:00Z 5 Apr", "2026-04-05T13:30:00Z 6 Apr"),
                ticks("2026-04-03T12:00:00Z", "2026-04-06T12:00:00Z", LORD_HOWE, 4));
    }

    @Test
    void aDayWithoutMidnightBeginsWhenItsClockDoes() {
        assertEquals(
                List.of("2026-03-27T22:00:00Z 28 Mar", "2026-03-28T22:00:00Z 29 Mar", "2026-03-29T21:00:00Z 30 Mar"),
                ticks("2026-03-27T21:00:00Z", "2026-03-30T20:00:00Z", ZoneId.of("Asia/Beirut"), 4));
    }

    @Test
    void januaryIsNamedByItsYear() {
        List<TimeTick> ticks = TickLadder.ticks(
                epoch("2026-10-15T00:00:00Z"), epoch("2027-03-15T00:00:00Z"), BERLIN, Locale.ENGLISH, 6);
        assertEquals(
                List.of("Nov", "Dec", "2027", "Feb", "Mar"),
                ticks.stream().map(TimeTick::label).toList());
        assertEquals(
                List.of(2027),
                ticks.stream()
                        .filter(TimeTick::major)
                        .map(tick -> Instant.ofEpochSecond(tick.epochSecond())
                                .atZone(BERLIN)
                                .getYear())
                        .toList());
    }

    @Test
    void monthAndDayStandInTheOrderOfTheCountry() {
        long from = epoch("2026-11-24T12:00:00Z");
        long until = epoch("2026-11-25T12:00:00Z");
        assertEquals(
                "Nov 25",
                TickLadder.ticks(from, until, NEW_YORK, Locale.US, 1).get(0).label());
        assertEquals(
                "25 Nov",
                TickLadder.ticks(from, until, NEW_YORK, Locale.UK, 1).get(0).label());
    }

    /** ISO 8601: weeks begin on Monday; 2 November 2026 is one. */
    @Test
    void weeksBeginOnTheDayOfTheCountry() {
        long from = epoch("2026-11-01T23:00:00Z");
        long until = epoch("2026-11-30T00:00:00Z");
        assertEquals(
                "2 Nov",
                TickLadder.ticks(from, until, BERLIN, Locale.UK, 6).get(0).label());
        assertEquals(
                "Nov 8",
                TickLadder.ticks(from, until, BERLIN, Locale.US, 6).get(0).label());
    }

    @Property(tries = 500, seed = "20260104")
    void ticksRiseLieInRangeAndAreNeverTooMany(
            @ForAll @LongRange(min = -2_000_000_000L, max = 4_000_000_000L) long from,
            @ForAll @LongRange(min = 0, max = 33) long exponent,
            @ForAll @IntRange(min = 12, max = 30) int maxTicks) {
        long until = from + Math.min(3_000_000_000L, 1L << exponent);
        for (ZoneId zone : List.of(BERLIN, NEW_YORK, LORD_HOWE)) {
            List<TimeTick> ticks = TickLadder.ticks(from, until, zone, Locale.UK, maxTicks);
            assertTrue(ticks.size() <= maxTicks);
            for (int i = 0; i < ticks.size(); i++) {
                long time = ticks.get(i).epochSecond();
                assertTrue(time >= from && time <= until);
                assertTrue(i == 0 || time > ticks.get(i - 1).epochSecond());
            }
        }
    }
}
