package undercroft.store.logger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.Charset;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.concurrent.CancellationException;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import undercroft.series.TimeSeries;

class LoggerFileTest {
    /** 31 January 2024, 13:30 and 13:40 UTC, 12.5 and 12.75 °C, in many hands. */
    private static final TimeSeries TWO = Logs.series("2024-01-31T13:30:00Z", 12.5, "2024-01-31T13:40:00Z", 12.75);

    static Stream<Arguments> formats() {
        return Stream.of(
                Arguments.of("ISO with Z", "time,celsius\n2024-01-31T13:30:00Z,12.5\n2024-01-31T13:40:00Z,12.75\n"),
                Arguments.of(
                        "ISO with offset",
                        "time,celsius\n2024-01-31T14:30:00+01:00,12.5\n2024-01-31T08:40:00-05:00,12.75\n"),
                Arguments.of(
                        "ISO with milliseconds", "2024-01-31T13:30:00.000Z,12.5\r\n2024-01-31T13:40:00.250Z,12.75"),
                Arguments.of("local ISO", "2024-01-31 13:30,12.5\n2024-01-31 13:40,12.75\n"),
                Arguments.of("year first, slashes", "2024/1/31 13:30;12.5\n2024/1/31 13:40;12.75\n"),
                Arguments.of("year first, dots", "2024.01.31 13:30:00|12.5\n2024.01.31 13:40:00|12.75\n"),
                Arguments.of("compact", "20240131T133000Z,12.5\n20240131T134000Z,12.75\n"),
                Arguments.of("day first, slashes", "31/01/2024 13:30,12.5\n31/01/2024 13:40,12.75\n"),
                Arguments.of("day first, dashes", "31-01-2024 13:30\t12.5\n31-01-2024 13:40\t12.75\n"),
                Arguments.of(
                        "dots, semicolons, decimal commas",
                        "Zeit;Temperatur (°C)\n31.01.2024 13:30:00;12,5\n31.01.2024 13:40:00;12,75\n"),
                Arguments.of("short years", "31.01.24 13:30;12,5\n31.01.24 13:40;12,75\n"),
                Arguments.of("month first", "1/31/2024 13:30,12.5\n1/31/2024 13:40,12.75\n"),
                Arguments.of("12-hour clock", "1/31/2024 1:30:00 PM,12.5\n1/31/2024 1:40:00 PM,12.75\n"),
                Arguments.of("12-hour clock, small", "31/01/2024 01:30 p.m.;12.5\n31/01/2024 01:40 p.m.;12.75\n"),
                Arguments.of("named month", "31-Jan-2024 13:30,12.5\n31-Jan-2024 13:40,12.75\n"),
                Arguments.of("Unix seconds", "epoch,temp\n1706707800,12.5\n1706708400,12.75\n"),
                Arguments.of("Unix milliseconds", "1706707800000;12.5\n1706708400000;12.75\n"),
                Arguments.of(
                        "date and time apart",
                        "No,Date,Time,Temp\n1,31/01/2024,13:30:00,12.5\n2,31/01/2024,13:40:00,12.75\n"),
                Arguments.of(
                        "quoted decimal commas",
                        "\"Date\",\"T °C\"\n\"2024-01-31 13:30\",\"12,5\"\n\"2024-01-31 13:40\",\"12,75\"\n"),
                Arguments.of("quoted thousands beside", """
                time,"pressure, hPa",temp
                2024-01-31 13:30,"1,013.25",12.5
                2024-01-31 13:40,"1,013.5",12.75
                """),
                Arguments.of("Fahrenheit", "Time,Temp (°F)\n2024-01-31 13:30,54.5\n2024-01-31 13:40,54.95\n"),
                Arguments.of("kelvin", "Time,Temp [K]\n2024-01-31 13:30,285.65\n2024-01-31 13:40,285.90\n"),
                Arguments.of("unit in the cell", "Time,Probe\n2024-01-31 13:30,12.5 °C\n2024-01-31 13:40,12.75 °C\n"),
                Arguments.of(
                        "UTC offset in the header",
                        "Date Time (GMT-05:00),Temp\n2024-01-31 08:30,12.5\n2024-01-31 08:40,12.75\n"),
                Arguments.of("preamble and trailing junk", """
                Logger report
                Serial;4711
                Started;yesterday

                Date;Humidity %;Temperature
                31.01.2024 13:30;71,5;12,5
                31.01.2024 13:40;72,0;12,75

                End of report
                """),
                Arguments.of("old line ends", "2024-01-31 13:30,12.5\r2024-01-31 13:40,12.75\r"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("formats")
    void everyFormatGivesTheSameTwoSamples(String kind, String text) {
        assertEquals(TWO, Logs.read(text).celsius(), kind);
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("formats")
    void noFormatWithEvidenceAsksAnything(String kind, String text) {
        assertEquals(List.of(), Logs.inspect(text).questions(), kind);
    }

    @Test
    void sixteenBitAndWesternCharactersAreRead() {
        String text = "Zeit;Temperatur °C\n31.01.2024 13:30;12,5\n31.01.2024 13:40;12,75\n";
        for (Charset wide : List.of(StandardCharsets.UTF_16LE, StandardCharsets.UTF_16BE)) {
            byte[] bytes = ("\ufeff" + text).getBytes(wide);
            assertEquals(TWO, Logs.read(bytes, java.time.ZoneOffset.UTC).celsius());
        }
        byte[] marked = ("\ufeff" + text).getBytes(StandardCharsets.UTF_8);
        assertTrue(LoggerFile.inspect("a", marked, Logs.BERLIN).byteOrderMark());
        Inspection western = LoggerFile.inspect("a", text.getBytes(Charset.forName("windows-1252")), Logs.BERLIN);
        assertEquals("Temperatur °C", western.columns().get(0).name());
    }

    @Test
    void aMarkedFileWithoutHeaderKeepsItsFirstLine() {
        byte[] marked = "\ufeff2024-01-31 13:30,12.5\n2024-01-31 13:40,12.75\n".getBytes(StandardCharsets.UTF_8);
        assertEquals(TWO, Logs.read(marked, java.time.ZoneOffset.UTC).celsius());
    }

    @Test
    void theTemperatureIsPickedAmongTheColumnsAndTheOthersAreNamed() {
        Inspection found = Logs.inspect("""
                #,Time,RH %,Temp °C,Battery V
                1,2024-01-31 13:30,70,12.5,3.01
                2,2024-01-31 13:40,70,12.75,3.0
                3,2024-01-31 13:50,71,12.75,3.0
                """);
        assertEquals(3, found.valueColumn());
        assertEquals(
                List.of("#", "RH %", "Temp °C", "Battery V"),
                found.columns().stream().map(Inspection.Column::name).toList());
        assertEquals(1, found.headerLine());
        assertEquals(0, found.preambleLines());
        assertEquals(List.of("12.5", "12.75", "12.75"), found.columns().get(2).examples());
    }

    @Test
    void anotherColumnCanBeChosen() {
        byte[] bytes =
                "time,in,out\n2024-01-31 13:30,12.5,1\n2024-01-31 13:40,12.75,2\n".getBytes(StandardCharsets.UTF_8);
        Choices choices =
                Choices.from(LoggerFile.inspect("a", bytes, Logs.BERLIN)).withValueColumn(2);
        assertEquals(
                2.0,
                LoggerFile.read("a", bytes, choices, Progress.NONE).celsius().valueAt(1));
    }

    @Test
    void noonAndMidnightOfATwelveHourClock() {
        TimeSeries read = Logs.read("""
                2024-01-31 12:00 AM,1
                2024-01-31 12:59 AM,2
                2024-01-31 12:00 PM,3
                2024-01-31 12:30:15 PM,4
                2024-01-31 11:59 PM,5
                """).celsius();
        assertEquals(
                Logs.series(
                        "2024-01-31T00:00:00Z",
                        1,
                        "2024-01-31T00:59:00Z",
                        2,
                        "2024-01-31T12:00:00Z",
                        3,
                        "2024-01-31T12:30:15Z",
                        4,
                        "2024-01-31T23:59:00Z",
                        5),
                read);
    }

    @Test
    void whatIsDroppedIsCountedWithItsLine() {
        ImportedLog log = Logs.read("""
                time,celsius
                2024-01-01 00:00,10
                2024-01-01 00:20,11
                2024-01-01 00:10,10.5
                2024-01-01 00:20,11
                2024-01-01 00:20,11.5
                what is this
                2024-01-01 00:30,-127
                2024-01-01 00:40,85
                2024-01-01 00:50,999
                2024-01-01 01:00,
                2024-01-01 01:10,NaN
                2024-01-01 01:20,82.5
                2024-01-01 01:30,12x5
                2024-13-01 01:30,12

                """);
        assertEquals(
                Logs.series("2024-01-01T00:00:00Z", 10, "2024-01-01T00:10:00Z", 10.5, "2024-01-01T00:20:00Z", 11),
                log.celsius());
        assertEquals(new Finding(1, List.of(5)), log.found(Reason.DUPLICATE));
        assertEquals(new Finding(1, List.of(6)), log.found(Reason.TWO_VALUES));
        assertEquals(new Finding(1, List.of(4)), log.found(Reason.OUT_OF_ORDER));
        assertEquals(new Finding(3, List.of(7, 14, 15)), log.found(Reason.UNREADABLE));
        assertEquals(new Finding(3, List.of(8, 9, 10)), log.found(Reason.SENTINEL));
        assertEquals(new Finding(2, List.of(11, 12)), log.found(Reason.NO_VALUE));
        assertEquals(new Finding(1, List.of(13)), log.found(Reason.OUT_OF_RANGE));
        assertEquals(14, log.lines());
        assertEquals(log.lines(), log.kept() + log.dropped());
    }

    @Test
    void eightyFiveFahrenheitIsAWarmDayAndNoFault() {
        ImportedLog log =
                Logs.read("time,F (°F)\n2024-07-01 00:00,85\n2024-07-01 00:10,185\n2024-07-01 00:20,-196.6\n");
        assertEquals(Logs.series("2024-07-01T00:00:00Z", 29.4444), log.celsius());
        assertEquals(2, log.found(Reason.SENTINEL).count());
    }

    @Test
    void aLogWithTheNewestLineFirstIsTurnedRound() {
        ImportedLog log = Logs.read("2024-01-01 02:00,3\n2024-01-01 01:00,2\n2024-01-01 00:00,1\n");
        assertEquals(
                Logs.series("2024-01-01T00:00:00Z", 1, "2024-01-01T01:00:00Z", 2, "2024-01-01T02:00:00Z", 3),
                log.celsius());
    }

    @Test
    void aReadingCanBeCalledOff() {
        String many = "2024-01-01 00:00,10\n".repeat(100_000);
        byte[] bytes = many.getBytes(StandardCharsets.UTF_8);
        Choices choices = Choices.from(LoggerFile.inspect("a", bytes, Logs.BERLIN));
        assertThrows(
                CancellationException.class, () -> LoggerFile.read("a", bytes, choices, fraction -> fraction > 0.3));
        assertFalse(
                LoggerFile.read("a", bytes, choices, Progress.NONE).celsius().isEmpty());
    }
}
