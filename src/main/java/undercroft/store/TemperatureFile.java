package undercroft.store;

import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;
import undercroft.store.disk.Disk;
import undercroft.store.disk.WholeFile;
import undercroft.store.json.JsonFields;

/**
 * The temperatures of a place in a file: heading {@code time,celsius}, then a line a sample, strictly rising in time, in
 * UTC to the second, at most three decimals.
 */
final class TemperatureFile {
    /** Faults told of one file; a file of another kind has one in every line. */
    static final int TOLD_PER_FILE = 20;

    private static final int LONGEST_LINE = "2026-03-29T01:30:00Z,-60.125\n".length();

    private TemperatureFile() {}

    static TimeSeries read(byte[] bytes, String name) {
        return new TemperatureLines(bytes, name, fault -> {
                    throw fault;
                })
                .read();
    }

    /** The series of the lines that are sound. Those that are not are added to the faults, the first few by number. */
    static TimeSeries readWhatIsSound(Disk disk, Path file, List<InvalidInput> faults) {
        return readWhatIsSound(bytes(disk, file), nameOf(file), faults);
    }

    static TimeSeries readWhatIsSound(byte[] bytes, String name, List<InvalidInput> faults) {
        List<InvalidInput> found = new ArrayList<>();
        int[] more = {0};
        Consumer<InvalidInput> tell = fault -> {
            if (found.size() < TOLD_PER_FILE) {
                found.add(fault);
            } else {
                more[0]++;
            }
        };
        TimeSeries series = new TemperatureLines(bytes, name, tell, false).read();
        faults.addAll(found);
        if (more[0] > 0) {
            faults.add(new InvalidInput(name, "store.fault.more-lines", more[0]));
        }
        return series;
    }

    static byte[] bytes(Disk disk, Path file) {
        return new WholeFile(disk).bytes(file, nameOf(file), WholeFile.MOST_TEMPERATURE_BYTES);
    }

    static String nameOf(Path file) {
        return "temperatures/" + file.getFileName();
    }

    /** The series as it comes back from a file. */
    static TimeSeries asWritten(TimeSeries series, String name) {
        TimeSeries.Builder rounded = new TimeSeries.Builder();
        for (int i = 0; i < series.size(); i++) {
            long time = series.timeAt(i);
            if (time < JsonFields.EARLIEST.getEpochSecond() || time >= JsonFields.LATEST.getEpochSecond()) {
                throw new InvalidInput(name, "store.fault.would-hold-time");
            }
            double celsius = series.valueAt(i);
            if (celsius < TemperatureLines.COLDEST || celsius > TemperatureLines.WARMEST) {
                throw new InvalidInput(
                        name,
                        "store.fault.would-hold-celsius",
                        celsius,
                        TemperatureLines.COLDEST,
                        TemperatureLines.WARMEST);
            }
            rounded.add(time, Math.round(celsius * 1000) / 1000.0);
        }
        return rounded.build();
    }

    static ByteBuffer print(TimeSeries series) {
        ByteBuffer out = ByteBuffer.allocate(TemperatureLines.HEADER.length() + 1 + LONGEST_LINE * series.size());
        out.put((TemperatureLines.HEADER + "\n").getBytes(StandardCharsets.US_ASCII));
        byte[] line = new byte["2026-03-29T01:30:00Z,".length()];
        long dayWritten = Long.MIN_VALUE;
        for (int i = 0; i < series.size(); i++) {
            long day = Math.floorDiv(series.timeAt(i), 86_400L);
            if (day != dayWritten) {
                byte[] date = (LocalDate.ofEpochDay(day) + "T00:00:00Z,").getBytes(StandardCharsets.US_ASCII);
                System.arraycopy(date, 0, line, 0, line.length);
                dayWritten = day;
            }
            int second = Math.floorMod(series.timeAt(i), 86_400);
            putTwoDigits(line, 11, second / 3600);
            putTwoDigits(line, 14, second / 60 % 60);
            putTwoDigits(line, 17, second % 60);
            out.put(line);
            putThousandths(out, (int) Math.round(series.valueAt(i) * 1000));
            out.put((byte) '\n');
        }
        return out.flip();
    }

    private static void putTwoDigits(byte[] line, int at, int value) {
        line[at] = digit(value / 10);
        line[at + 1] = digit(value);
    }

    private static byte digit(int value) {
        return (byte) ('0' + value % 10);
    }

    private static void putThousandths(ByteBuffer out, int thousandths) {
        if (thousandths < 0) {
            out.put((byte) '-');
        }
        int magnitude = Math.abs(thousandths);
        if (magnitude >= 100_000) {
            out.put(digit(magnitude / 100_000));
        }
        if (magnitude >= 10_000) {
            out.put(digit(magnitude / 10_000));
        }
        out.put(digit(magnitude / 1000));
        int rest = magnitude % 1000;
        if (rest == 0) {
            return;
        }
        out.put((byte) '.').put(digit(rest / 100));
        if (rest % 100 != 0) {
            out.put(digit(rest / 10));
        }
        if (rest % 10 != 0) {
            out.put(digit(rest));
        }
    }
}
