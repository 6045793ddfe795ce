package undercroft.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static undercroft.outlook.ServingShelf.local;

import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.OffsetDateTime;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.Set;
import net.fortuna.ical4j.data.CalendarBuilder;
import net.fortuna.ical4j.data.ParserException;
import net.fortuna.ical4j.model.Calendar;
import net.fortuna.ical4j.model.Component;
import net.fortuna.ical4j.model.Property;
import net.fortuna.ical4j.model.component.VAlarm;
import net.fortuna.ical4j.model.component.VEvent;
import net.fortuna.ical4j.model.property.DtStart;
import net.fortuna.ical4j.model.property.Trigger;
import org.junit.jupiter.api.Test;
import undercroft.catalogue.Flocculation;
import undercroft.cellar.Cellar;
import undercroft.cellar.Serving;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.ServingShelf;
import undercroft.outlook.serving.ServingPlan;
import undercroft.wording.English;

/** Parsed back and validated by the library's own reading of RFC 5545. */
final class ShelfCalendarTest {
    private static final Instant NOW = local("2026-03-24T12:00");
    private static final Instant SUNDAY = local("2026-03-29T18:00");
    private static final String NOTE =
            "Anna; Ben, \"Cid\" \\ three\nand a second line, as long as it takes to be folded over";

    private static Cellar cellar() {
        return ServingShelf.cellar(
                        ServingShelf.ale("ale", Flocculation.FLOCCULENT, 40),
                        ServingShelf.ale("young", Flocculation.FLOCCULENT, 40, "room", local("2026-03-20T12:00")))
                .withServings(List.of(new Serving("sun", "ale", 6, SUNDAY, "fridge", OptionalDouble.empty(), NOTE)));
    }

    private static CellarOutlook outlook() {
        return ServingShelf.outlook(cellar(), NOW);
    }

    private static Calendar parsed(String text) throws IOException, ParserException {
        return new CalendarBuilder().build(new StringReader(text));
    }

    private static VEvent event(Calendar calendar, String summary) {
        List<VEvent> events = calendar.getComponents(Component.VEVENT);
        return events.stream()
                .filter(each -> value(each, Property.SUMMARY).startsWith(summary))
                .findFirst()
                .orElseThrow();
    }

    private static String value(Component component, String property) {
        return component.getRequiredProperty(property).getValue();
    }

    private static Set<String> uids(Calendar calendar) {
        Set<String> uids = new HashSet<>();
        List<VEvent> events = calendar.getComponents(Component.VEVENT);
        events.forEach(each -> assertTrue(uids.add(value(each, Property.UID)), "one UID an entry"));
        return uids;
    }

    @Test
    void itValidatesAndSurvivesARoundTrip() throws IOException, ParserException {
        String text = ShelfCalendar.of(English.of(outlook()), NOW).text();
        Calendar calendar = parsed(text);
        assertFalse(
                calendar.validate(true).hasErrors(),
                () -> calendar.validate(true).toString());
        assertEquals(text.replace("\r\n ", ""), calendar.toString());
        assertTrue(text.contains("\r\n"), "RFC 5545, 3.1: lines end in CRLF");
        for (String line : text.lines().toList()) {
            assertTrue(line.getBytes(StandardCharsets.UTF_8).length <= 75, "RFC 5545, 3.1: " + line);
        }
    }

    @Test
    void aServingAcrossTheNightOfSummerTimeKeepsItsWallClock() throws IOException, ParserException {
        Calendar calendar = parsed(ShelfCalendar.of(English.of(outlook()), NOW).text());
        // Vienna is an hour ahead of UTC until 29 March 2026, 01:00 UTC, and two from then on.
        assertEquals("20260329T160000Z", value(event(calendar, "Serve 6"), Property.DTSTART));
        ServingPlan plan = outlook().servings().get(0);
        Instant chill = plan.chillFrom().orElseThrow();
        DtStart<OffsetDateTime> start = event(calendar, "Into the cold").getRequiredProperty(Property.DTSTART);
        assertEquals(chill.getEpochSecond(), start.getDate().toEpochSecond());
    }

    @Test
    void theAlarmRingsWhenTheBottlesComeOut() throws IOException, ParserException {
        Calendar calendar = parsed(ShelfCalendar.of(English.of(outlook()), NOW).text());
        VAlarm alarm = event(calendar, "Serve 6").getAlarms().get(0);
        Trigger trigger = alarm.getRequiredProperty(Property.TRIGGER);
        Duration before = Duration.from(trigger.getDuration());
        assertEquals(Duration.between(SUNDAY, outlook().servings().get(0).takeOut()), before);
        assertEquals("DISPLAY", value(alarm, Property.ACTION));
    }

    @Test
    void firstTasteAndBestBeforeAreDates() throws IOException, ParserException {
        Calendar calendar = parsed(ShelfCalendar.of(English.of(outlook()), NOW).text());
        DtStart<LocalDate> taste = event(calendar, "First taste: Ale, young").getRequiredProperty(Property.DTSTART);
        Instant ready = outlook().batch("young").mainLot().ready().median().orElseThrow();
        assertEquals(ready.atZone(ServingShelf.ZONE).toLocalDate(), taste.getDate());
        assertTrue(event(calendar, "Best before: Ale, ale").getAlarms().size() == 1);
    }

    @Test
    void theSameEntriesKeepTheirUidsThoughTheirDatesMove() throws IOException, ParserException {
        Set<String> before =
                uids(parsed(ShelfCalendar.of(English.of(outlook()), NOW).text()));
        Cellar moved = cellar().withServings(List.of(
                new Serving("sun", "ale", 8, SUNDAY.plusSeconds(7200), "fridge", OptionalDouble.of(9), "")));
        Instant later = NOW.plusSeconds(86_400);
        Calendar after = parsed(ShelfCalendar.of(English.of(ServingShelf.outlook(moved, later)), later)
                .text());
        assertEquals(before, uids(after));
        assertEquals("20260325T110000Z", value(event(after, "Serve 8"), Property.DTSTAMP));
    }

    @Test
    void commasSemicolonsQuotesAndLineBreaksComeBackAsTheyWere() throws IOException, ParserException {
        Calendar calendar = parsed(ShelfCalendar.of(English.of(outlook()), NOW).text());
        assertTrue(
                value(event(calendar, "Serve 6 Ale, ale"), Property.DESCRIPTION).startsWith(NOTE));
        // RFC 5545, 3.3.11: comma, semicolon and backslash are escaped, a line break is \n.
        String unfolded = ShelfCalendar.of(English.of(outlook()), NOW).text().replace("\r\n ", "");
        assertTrue(unfolded.contains("Anna\\; Ben\\, \"Cid\" \\\\ three\\nand"), unfolded);
    }

    @Test
    void oneFileABatchHoldsWhatTheWholeHolds() throws IOException, ParserException {
        ShelfCalendar shelf = ShelfCalendar.of(English.of(outlook()), NOW);
        Map<String, String> files = shelf.perBatch();
        assertEquals(List.of("ale.ics", "young.ics"), List.copyOf(files.keySet()));
        Set<String> together = new HashSet<>();
        for (String text : files.values()) {
            together.addAll(uids(parsed(text)));
        }
        assertEquals(uids(parsed(shelf.text())), together);
    }
}
