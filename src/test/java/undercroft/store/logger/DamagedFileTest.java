package undercroft.store.logger;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayOutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.provider.Arguments;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;
import undercroft.store.logger.text.DayNumbers;

/** Ten thousand damaged copies of good files: each is read or refused in words, by both ways of reading alike. */
class DamagedFileTest {
    private static final int COPIES = 10_000;

    private final Random random = new Random(20240131);

    private static List<byte[]> goodFiles() {
        List<byte[]> files = new ArrayList<>();
        LoggerFileTest.formats().map(Arguments::get).forEach(each -> {
            String text = (String) each[1];
            files.add(text.getBytes(StandardCharsets.UTF_8));
            files.add(("\ufeff" + text).getBytes(StandardCharsets.UTF_16LE));
        });
        files.add("2023-10-29 01:30,1\n2023-10-29 02:30,2\n2023-10-29 02:00,3\n2023-10-29 02:30,4\n"
                .getBytes(StandardCharsets.UTF_8));
        return files;
    }

    private byte[] damaged(byte[] good) {
        byte[] bytes = good.clone();
        int blows = 1 + random.nextInt(4);
        for (int i = 0; i < blows; i++) {
            bytes = damagedOnce(bytes);
        }
        return bytes;
    }

    private byte[] damagedOnce(byte[] bytes) {
        int at = random.nextInt(bytes.length + 1);
        int until = Math.min(bytes.length, at + random.nextInt(12));
        ByteArrayOutputStream out = new ByteArrayOutputStream();
        out.write(bytes, 0, at);
        switch (random.nextInt(6)) {
            case 0 -> until = bytes.length;
            case 1 -> {
                byte[] garbage = new byte[random.nextInt(12)];
                random.nextBytes(garbage);
                out.writeBytes(garbage);
            }
            case 2 -> {
                out.writeBytes(
                        "\",;\t|:-/+.0199 \n\rZAP".substring(random.nextInt(19)).getBytes(StandardCharsets.UTF_8));
                until = at;
            }
            case 3 -> {
                out.writeBytes(Arrays.copyOfRange(bytes, random.nextInt(bytes.length + 1) / 2, bytes.length));
                until = at;
            }
            case 4 -> {
                if (at < bytes.length) {
                    out.write(bytes[at] ^ (1 << random.nextInt(8)));
                    until = at + 1;
                }
            }
            default -> {
                for (int i = at; i < until; i++) {
                    out.write('0' + random.nextInt(10));
                }
            }
        }
        out.write(bytes, until, bytes.length - until);
        return out.toByteArray();
    }

    @Test
    void tenThousandDamagedCopiesAreReadOrRefusedInWords() {
        List<byte[]> good = goodFiles();
        int read = 0;
        int refused = 0;
        for (int i = 0; i < COPIES; i++) {
            byte[] bytes = damaged(good.get(i % good.size()));
            try {
                Choices choices = Choices.from(LoggerFile.inspect("a", bytes, Logs.BERLIN));
                ImportedLog log = LoggerFile.read("a", bytes, choices, Progress.NONE, true);
                requireSound(log);
                assertEquals(log, LoggerFile.read("a", bytes, choices, Progress.NONE, false), "copy " + i);
                read++;
            } catch (InvalidInput fault) {
                assertEquals("a", fault.where());
                refused++;
            }
        }
        assertTrue(read > COPIES / 2 && refused > COPIES / 100, read + " read, " + refused + " refused");
    }

    private static void requireSound(ImportedLog log) {
        TimeSeries series = log.celsius();
        for (int i = 0; i < series.size(); i++) {
            assertTrue(series.valueAt(i) >= -60 && series.valueAt(i) <= 80);
            assertTrue(DayNumbers.isPlausible(series.timeAt(i) + 86_400) || DayNumbers.isPlausible(series.timeAt(i)));
        }
        assertEquals(log.lines(), log.kept() + log.dropped());
    }

    /** Every way the direct reading knows, and some it must leave to the general one. */
    @Test
    void bothWaysOfReadingAgreeOnUndamagedLines() {
        String[] dates = {"2024-02-29", "2023-02-29", "2024-02-30", "1979-12-31", "2024-00-10", "2024-2-09"};
        String[] clocks = {"00:00", "23:59:59", "24:00:00", "12:30:15.123", "12:30:60", "12:3", "12:30:15,5", "12:30 PM"
        };
        String[] offsets = {"", "Z", "+01:00", "-0530", "+19:00", " +02:00", "+02", "z", "UTC"};
        String[] values = {
            "12.5", " -0.0", "+3", "1e1", "12.", ".5", "1,5", "0.1234567890123456789", "-", "20 °C", "\"7\""
        };
        StringBuilder text = new StringBuilder("2024-01-01T00:00:00Z;1.5\n");
        for (String date : dates) {
            for (String clock : clocks) {
                for (String offset : offsets) {
                    for (String value : values) {
                        text.append(date)
                                .append("T")
                                .append(clock)
                                .append(offset)
                                .append(';')
                                .append(value)
                                .append('\n');
                    }
                }
            }
        }
        byte[] bytes = text.toString().getBytes(StandardCharsets.UTF_8);
        Choices choices = Choices.from(LoggerFile.inspect("a", bytes, Logs.BERLIN));
        ImportedLog direct = LoggerFile.read("a", bytes, choices, Progress.NONE, true);
        assertEquals(LoggerFile.read("a", bytes, choices, Progress.NONE, false), direct);
        assertTrue(direct.kept() > 10, direct.toString());
    }
}
