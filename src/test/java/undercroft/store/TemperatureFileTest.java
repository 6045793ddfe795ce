package undercroft.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;
import undercroft.wording.English;

/** Times are checked against java.time, figures against {@link Double#parseDouble}. */
class TemperatureFileTest {
    private static TimeSeries read(String text) {
        return TemperatureFile.read(text.getBytes(StandardCharsets.UTF_8), "temperatures/loft.csv");
    }

    private static String faultOf(String lines) {
        return English.placed(assertThrows(InvalidInput.class, () -> read("time,celsius\n" + lines)));
    }

    @Test
    void linesAreReadWithEitherLineBreakAndWithoutALastOne() {
        TimeSeries expected = TimeSeries.of(
                new long[] {
                    Instant.parse("2026-03-29T01:30:00Z").getEpochSecond(),
                    Instant.parse("2026-03-29T02:00:00Z").getEpochSecond()
                },
                new double[] {12.375, -3});
        assertEquals(expected, read("time,celsius\n2026-03-29T01:30:00Z,12.375\n2026-03-29T02:00:00Z,-3\n"));
        assertEquals(expected, read("time,celsius\r\n2026-03-29T01:30:00Z,12.375\r\n2026-03-29T02:00:00Z,-3"));
        assertEquals(
                expected, read("\uFEFFtime,celsius\n2026-03-29T01:30:00Z,12.375\n\n2026-03-29T02:00:00Z,-3.0\n\n"));
        assertTrue(read("time,celsius\n").isEmpty());
        assertTrue(read("time,celsius").isEmpty());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2026-02-29T00:00:00Z,1",
                "2026-13-01T00:00:00Z,1",
                "2026-04-31T00:00:00Z,1",
                "2026-01-00T00:00:00Z,1",
                "2026-01-01T24:00:00Z,1",
                "2026-01-01T23:60:00Z,1",
                "2026-01-01T00:00:00+01:00,1",
                "2026-01-01 00:00:00,1",
                "2026-01-01T00:00:00Z;1",
                "2026-01-01T00:00:00Z,",
                "2026-01-01T00:00:00Z",
                "2026-01-01T00:00:00Z,NaN",
                "2026-01-01T00:00:00Z,Infinity",
                "2026-01-01T00:00:00Z,12,5",
                "2026-01-01T00:00:00Z,1.",
                "2026-01-01T00:00:00Z,.5",
                "2026-01-01T00:00:00Z,-",
                "2026-01-01T00:00:00Z,1e3",
                "2026-01-01T00:00:00Z,12.5C",
                "2026-01-01T00:00:00Z,99999999999999999999",
                "cold",
            })
    void aLineOfAnotherShapeIsToldByItsNumber(String line) {
        assertEquals(
                "temperatures/loft.csv: line 3: is not a time and a temperature; write it like"
                        + " 2026-03-29T01:30:00Z,12.5",
                faultOf("2025-12-31T00:00:00Z,4\n" + line + "\n"));
    }

    @Test
    void linesOutOfOrderRepeatedOrAbsurdAreTold() {
        String first = "2026-01-01T00:30:00Z,4\n";
        assertTrue(faultOf(first + "2026-01-01T00:00:00Z,4\n").contains("line 3: is earlier than a line before it"));
        assertTrue(faultOf(first + first).contains("line 3: has the time of a line before it"));
        assertTrue(faultOf("2026-01-01T00:00:00Z,185\n").contains("line 2: 185 is outside what is possible"));
    }

    @Test
    void emptyForeignAndBinaryFilesAreRefused() {
        for (String text : List.of("", "temp\n1\n", "\u0000\u0001\u0002\u00ff", "\n\n")) {
            assertTrue(English.placed(assertThrows(InvalidInput.class, () -> read(text)))
                    .contains("line 1: is not the heading"));
        }
    }

    @Property(tries = 500, seed = "20260104")
    void everyTimeAgreesWithTheCalendarOfJavaTime(
            @ForAll @LongRange(min = -2_208_988_800L, max = 7_258_118_399L) long time) {
        TimeSeries read = read("time,celsius\n" + Instant.ofEpochSecond(time) + ",1\n");
        assertEquals(time, read.timeAt(0));
    }

    @Test
    void everyDayOfThreeCenturiesHasItsNumber() {
        for (LocalDate day = LocalDate.of(1900, 1, 1); day.getYear() < 2200; day = day.plusDays(1)) {
            assertEquals(
                    day.toEpochDay(),
                    TemperatureLines.Calendar.epochDay(day.getYear(), day.getMonthValue(), day.getDayOfMonth()));
            assertTrue(day.getDayOfMonth() <= TemperatureLines.Calendar.daysIn(day.getYear(), day.getMonthValue()));
        }
    }

    @Property(tries = 500, seed = "20260104")
    void everyFigureIsReadAsTheNearestDouble(@ForAll @IntRange(min = -60_000, max = 100_000) int thousandths) {
        String figure = java.math.BigDecimal.valueOf(thousandths, 3).toPlainString();
        assertEquals(
                Double.parseDouble(figure),
                read("time,celsius\n2026-01-01T00:00:00Z," + figure).valueAt(0) + 0.0);
    }

    @Test
    void aPrintedSeriesComesBackAndHasAtMostThreeDecimals() {
        Random random = new Random(11);
        TimeSeries.Builder builder = new TimeSeries.Builder();
        long time = Instant.parse("1969-12-30T23:59:59Z").getEpochSecond();
        for (int i = 0; i < 20_000; i++) {
            time += 1 + random.nextInt(4_000);
            builder.add(time, (random.nextInt(80_000) - 20_000) / 1000.0);
        }
        TimeSeries series = builder.build();
        String text =
                StandardCharsets.UTF_8.decode(TemperatureFile.print(series)).toString();
        assertEquals(series, read(text));
        assertTrue(
                text.lines().skip(1).allMatch(line -> line.matches("[-0-9]{10}T[:0-9]{8}Z,-?\\d+(\\.\\d{0,2}[1-9])?")));
        assertEquals(
                Instant.ofEpochSecond(series.timeAt(7)) + ",",
                text.lines().skip(8).findFirst().orElseThrow().substring(0, 21));
    }

    @Test
    void damagedFilesThrowNothingButAFault() {
        byte[] sound = "time,celsius\n2026-03-29T01:30:00Z,12.375\n2026-03-29T02:00:00Z,-3\n"
                .getBytes(StandardCharsets.US_ASCII);
        Random random = new Random(5);
        for (int i = 0; i < 5_000; i++) {
            byte[] damaged = java.util.Arrays.copyOf(sound, 1 + random.nextInt(sound.length));
            damaged[random.nextInt(damaged.length)] = (byte) random.nextInt(256);
            List<InvalidInput> faults = new ArrayList<>();
            TimeSeries kept = new TemperatureLines(damaged, "f", faults::add).read();
            assertTrue(kept.size() <= 2);
        }
    }
}
