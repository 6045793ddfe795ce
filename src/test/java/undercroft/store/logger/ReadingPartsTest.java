package undercroft.store.logger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.BufferedReader;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.CharRange;
import net.jqwik.api.constraints.Chars;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.StringLength;
import undercroft.store.logger.text.ByteClock;
import undercroft.store.logger.text.ClockText;
import undercroft.store.logger.text.LineReader;
import undercroft.store.logger.text.NumberText;
import undercroft.store.logger.text.TimeFormat;

/** The parts of reading against the Java library's own. */
class ReadingPartsTest {
    @Property(seed = "20260104")
    void linesEndWhereTheLibrarysReaderEndsThem(
            @ForAll @Chars({'\n', '\r', 'a', '\u0080'}) @CharRange(from = '\t', to = '\u000e') @StringLength(max = 80)
                    String text,
            @ForAll @IntRange(min = 1, max = 40) int bufferSize)
            throws IOException {
        List<String> expected =
                new BufferedReader(new StringReader(text)).lines().toList();
        LineReader reader =
                new LineReader(new ByteArrayInputStream(text.getBytes(StandardCharsets.ISO_8859_1)), bufferSize);
        List<String> lines = new ArrayList<>();
        while (reader.next()) {
            lines.add(new String(
                    reader.buffer(), reader.from(), reader.until() - reader.from(), StandardCharsets.ISO_8859_1));
            assertEquals(lines.size(), reader.number());
        }
        assertEquals(expected, lines);
    }

    @Property(seed = "20260104")
    void numbersAreTheDoublesTheLibraryReads(
            @ForAll @DoubleRange(min = -999_999, max = 999_999) double value, @ForAll @IntRange(max = 8) int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        double expected = Double.parseDouble(text);
        byte[] bytes = text.getBytes(StandardCharsets.US_ASCII);
        assertEquals(expected, NumberText.parsePlain(bytes, 0, bytes.length, (byte) '.'));
        assertEquals(expected, NumberText.parse(text, '.'));
        assertEquals(expected, NumberText.parse(text.replace('.', ',') + " °C", ','));
    }

    @Property(seed = "20260104")
    void thousandsMayBeParted(@ForAll @DoubleRange(min = -9_999_999, max = 9_999_999) double value) {
        String parted = String.format(Locale.ROOT, "%,.2f", value);
        double expected = Double.parseDouble(parted.replace(",", ""));
        assertEquals(expected, NumberText.parse(parted, '.'));
        String turned = parted.replace(',', ' ').replace('.', ',');
        assertEquals(expected, NumberText.parse(turned, ','));
    }

    @Property(seed = "20260104")
    void timesAreTheInstantsTheLibraryFormats(
            @ForAll @LongRange(min = 315_532_800L, max = 7_289_000_000L) long epochSecond,
            @ForAll @IntRange(min = -18 * 4, max = 18 * 4) int quarters) {
        OffsetDateTime time = OffsetDateTime.ofInstant(
                java.time.Instant.ofEpochSecond(epochSecond), ZoneOffset.ofTotalSeconds(quarters * 900));
        if (time.getYear() < 1980) {
            return;
        }
        String iso = DateTimeFormatter.ISO_OFFSET_DATE_TIME.format(time);
        byte[] bytes = iso.getBytes(StandardCharsets.US_ASCII);
        ByteClock direct = new ByteClock(TimeFormat.YEAR_FIRST);
        assertEquals(epochSecond, direct.read(bytes, 0, bytes.length) - direct.offsetSeconds);
        assertEquals(epochSecond, general(iso, TimeFormat.YEAR_FIRST));
        assertEquals(epochSecond, general(format("M/d/yyyy h:mm:ss a xxx", time), TimeFormat.MONTH_FIRST));
        assertEquals(epochSecond, general(format("d.M.yyyy H:mm:ss xx", time), TimeFormat.DAY_FIRST));
    }

    private static String format(String pattern, OffsetDateTime time) {
        return DateTimeFormatter.ofPattern(pattern, Locale.ROOT).format(time);
    }

    private static long general(String text, TimeFormat format) {
        ClockText clock = new ClockText();
        assertTrue(clock.read(text), text);
        return clock.midnight(format) + clock.secondOfDay - clock.offsetSeconds;
    }
}
