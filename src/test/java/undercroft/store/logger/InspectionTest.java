package undercroft.store.logger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import undercroft.store.logger.text.TimeFormat;
import undercroft.wording.English;

class InspectionTest {
    private static List<Question.About> asked(Inspection found) {
        return found.questions().stream().map(Question::about).toList();
    }

    @Test
    void oneDayThatCouldBeAnotherIsAsked() {
        Inspection found = Logs.inspect("03/04/2024 10:00,12\n03/04/2024 10:10,12.1\n");
        assertEquals(List.of(Question.About.DATE_ORDER), asked(found));
        assertTrue(English.of(found.questions().get(0).asked()).contains("03/04/2024 10:00"));
        assertEquals(TimeFormat.DAY_FIRST, found.format());
    }

    @Test
    void theAnswerDecides() {
        byte[] bytes = "03/04/2024 10:00,12\n".getBytes(java.nio.charset.StandardCharsets.UTF_8);
        Choices choices = Choices.from(LoggerFile.inspect("a", bytes, ZoneOffset.UTC));
        assertEquals(
                Logs.series("2024-04-03T10:00:00Z", 12),
                LoggerFile.read("a", bytes, choices, Progress.NONE).celsius());
        assertEquals(
                Logs.series("2024-03-04T10:00:00Z", 12),
                LoggerFile.read("a", bytes, choices.withFormat(TimeFormat.MONTH_FIRST), Progress.NONE)
                        .celsius());
    }

    @Test
    void aColumnThatNothingCallsATemperatureIsAskedUnlessItIsAloneAndLooksLikeOne() {
        List<Question.About> column = List.of(Question.About.COLUMN);
        assertEquals(List.of(), asked(Logs.inspect("time,value\n2024-01-01 00:00,12\n")));
        assertEquals(column, asked(Logs.inspect("time,value\n2024-01-01 00:00,0.55\n2024-01-01 00:10,0.57\n")));
        assertEquals(column, asked(Logs.inspect("time,one,two\n2024-01-01 00:00,12,13\n")));
        assertEquals(column, asked(Logs.inspect("time,humidity\n2024-01-01 00:00,12\n")));
        assertEquals(column, asked(Logs.inspect("time,value\n2024-01-01 00:00,-48\n")));
        assertEquals(List.of(), asked(Logs.inspect("time,rh,temp\n2024-01-01 00:00,12,0.5\n")));
    }

    /** As R's write.table and write.csv do by default: "If there is a header, it has one name fewer" (R manual). */
    @Test
    void aHeadingWithOneNameFewerThanColumnsIsThatOfATableWithRowNames() {
        Inspection found = Logs.inspect("""
                "time","temp","hum"
                "1",2024-01-01 00:00,21.5,0.55
                "2",2024-01-01 00:10,21.6,0.55
                "3",2024-01-01 00:20,21.6,0.56
                """);
        assertEquals(2, found.valueColumn());
        assertEquals(List.of(), asked(found));
        assertEquals(
                List.of("Column 1", "temp", "hum"),
                found.columns().stream().map(Inspection.Column::name).toList());
    }

    @Test
    void midnightBetweenTwoLinesProvesTheOrder() {
        Inspection dayFirst = Logs.inspect("03/04/2024 23:50,12\n04/04/2024 00:00,12.1\n");
        assertEquals(TimeFormat.DAY_FIRST, dayFirst.format());
        assertTrue(dayFirst.formatProven());
        Inspection monthFirst = Logs.inspect("04/03/2024 23:50,12\n04/04/2024 00:00,12.1\n");
        assertEquals(TimeFormat.MONTH_FIRST, monthFirst.format());
        assertTrue(monthFirst.formatProven());
    }

    @Test
    void evidenceFarDownTheFileIsFound() {
        DateTimeFormatter monthFirst = DateTimeFormatter.ofPattern("MM/dd/yyyy", Locale.ROOT);
        String sameDay = "01/02/2024 10:00,12\n".repeat(20_000);
        String later = IntStream.range(1, 25)
                .mapToObj(day -> monthFirst.format(LocalDate.of(2024, 1, 2).plusDays(day)) + " 10:00,12\n")
                .collect(Collectors.joining());
        Inspection found = Logs.inspect(sameDay + later);
        assertEquals(TimeFormat.MONTH_FIRST, found.format());
        assertTrue(found.formatProven());
    }

    @Test
    void contradictingDatesAreAskedAndOneStrayDateAmongManyIsNot() {
        assertFalse(Logs.inspect("13/01/2024 10:00,12\n01/14/2024 10:10,12.1\n").formatProven());
        String many = IntStream.range(0, 60)
                .mapToObj(minute -> String.format(Locale.ROOT, "13/01/2024 10:%02d,12%n", minute))
                .collect(Collectors.joining());
        Inspection found = Logs.inspect(many + "01/14/2024 10:10,12.1\n");
        assertTrue(found.formatProven());
        assertEquals(TimeFormat.DAY_FIRST, found.format());
    }

    @Test
    void datesWithDotsBeginWithTheDay() {
        Inspection found = Logs.inspect("03.04.2024 10:00;12\n");
        assertEquals(TimeFormat.DAY_FIRST, found.format());
        assertTrue(found.formatProven());
    }

    @Test
    void shortYearsInFrontAreToldByTheDayThatRuns() {
        Inspection found = Logs.inspect("24/01/30 10:00,12\n24/01/31 10:00,12\n24/01/31 11:00,12\n");
        assertEquals(TimeFormat.YEAR_FIRST, found.format());
    }

    @Test
    void aUnitThatIsNotStatedIsAskedOnlyWhenTheFiguresAreHigh() {
        Inspection cool = Logs.inspect("2024-01-01 00:00,12\n");
        assertEquals(LoggerUnit.CELSIUS, cool.unit());
        assertEquals(Confidence.LIKELY, cool.unitConfidence());
        Inspection high = Logs.inspect("2024-01-01 00:00,68\n");
        assertEquals(LoggerUnit.FAHRENHEIT, high.unit());
        assertEquals(List.of(Question.About.UNIT), asked(high));
        Inspection absolute = Logs.inspect("2024-01-01 00:00,291.2\n");
        assertEquals(LoggerUnit.KELVIN, absolute.unit());
        assertEquals(List.of(Question.About.UNIT), asked(absolute));
    }

    @Test
    void aHeadingThatCannotBeTrueIsAsked() {
        Inspection found = Logs.inspect("time,temp °C\n2024-01-01 00:00,68\n");
        assertEquals(LoggerUnit.FAHRENHEIT, found.unit());
        assertEquals(Confidence.ASK, found.unitConfidence());
    }

    @Test
    void theOffsetInAHeadingIsTheZone() {
        assertEquals(
                ZoneOffset.ofHoursMinutes(5, 30),
                Logs.inspect("Time (UTC+05:30),T\n2024-01-01 00:00,12\n").zone());
    }

    @Test
    void whatTheClockWritesIsSaid() {
        Inspection found = Logs.inspect("1/31/2024 1:30 PM,12\n");
        assertTrue(found.twelveHour());
        assertFalse(found.ownOffset());
        assertTrue(Logs.inspect("2024-01-31T13:30:00Z,12\n").ownOffset());
    }

    @Test
    void oneShortDateThatMayHaveItsYearAtEitherEndIsAsked() {
        assertFalse(Logs.inspect("24/01/31 10:00,12\n24/01/31 11:00,12\n").formatProven());
    }

    @Test
    void aUnitInACellOfItsOwnIsSeen() {
        Inspection found = Logs.inspect("2024-01-01 00:00,68,F\n2024-01-01 00:10,68.1,F\n");
        assertEquals(LoggerUnit.FAHRENHEIT, found.unit());
        assertEquals(Confidence.STATED, found.unitConfidence());
    }
}
