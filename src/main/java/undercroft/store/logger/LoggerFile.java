package undercroft.store.logger;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.NoSuchFileException;
import java.nio.file.Path;
import java.time.ZoneId;
import java.util.Comparator;
import java.util.Map;
import java.util.concurrent.CancellationException;
import undercroft.quantity.InvalidInput;
import undercroft.store.disk.Disk;
import undercroft.store.disk.WholeFile;
import undercroft.store.logger.text.Encodings;
import undercroft.store.logger.text.LineReader;
import undercroft.store.logger.text.TextCheck;

/** A temperature logger's file of whatever make: looked at first, then read. */
public final class LoggerFile {
    private static final int HEAD = 1 << 18;
    private static final int LINES_BETWEEN_REPORTS = 1 << 14;

    private LoggerFile() {}

    /** Opens the same bytes again and again. */
    interface Source {
        InputStream open() throws IOException;
    }

    /**
     * Looks at the beginning of a file; all of it only when the order of the dates is in doubt.
     *
     * @param zone of the logger's clock, where the file does not say
     * @throws InvalidInput when it is no text, or no line in it holds a time and a number
     */
    public static Inspection inspect(Path file, ZoneId zone) {
        Path ordinary = ordinary(file);
        return inspect(nameOf(file), () -> Files.newInputStream(ordinary), zone);
    }

    /** The same for bytes already at hand; {@code name} is what faults call them. */
    public static Inspection inspect(String name, byte[] bytes, ZoneId zone) {
        return inspect(name, () -> new ByteArrayInputStream(bytes), zone);
    }

    private static Inspection inspect(String name, Source source, ZoneId zone) {
        try {
            byte[] head;
            try (InputStream in = source.open()) {
                head = in.readNBytes(HEAD);
            }
            TextCheck.requireText(name, head);
            return new Inspector(name, source, zone).inspect(head, head.length == HEAD);
        } catch (IOException unreadable) {
            throw unreadable(name, unreadable);
        }
    }

    /**
     * Reads all of a file.
     *
     * @throws InvalidInput when not one line can be used
     * @throws CancellationException when {@code progress} says so
     */
    public static ImportedLog read(Path file, Choices choices, Progress progress) {
        Path ordinary = ordinary(file);
        try {
            return read(
                    nameOf(file), () -> Files.newInputStream(ordinary), Files.size(ordinary), choices, progress, true);
        } catch (IOException unreadable) {
            throw unreadable(nameOf(file), unreadable);
        }
    }

    /** The same for bytes already at hand. */
    public static ImportedLog read(String name, byte[] bytes, Choices choices, Progress progress) {
        return read(name, bytes, choices, progress, true);
    }

    static ImportedLog read(String name, byte[] bytes, Choices choices, Progress progress, boolean direct) {
        try {
            return read(name, () -> new ByteArrayInputStream(bytes), bytes.length, choices, progress, direct);
        } catch (IOException unreadable) {
            throw unreadable(name, unreadable);
        }
    }

    private static ImportedLog read(
            String name, Source source, long size, Choices choices, Progress progress, boolean direct)
            throws IOException {
        LogParser parser = new LogParser(choices, direct, (int) Math.min(size / 24 + 16, 1 << 22));
        try (InputStream in = Encodings.narrow(source.open(), choices.charset())) {
            LineReader lines = new LineReader(in);
            while (lines.next()) {
                if (lines.number() >= choices.firstLine()) {
                    parser.line(lines.buffer(), lines.from(), lines.until(), lines.number());
                }
                if (lines.number() % LINES_BETWEEN_REPORTS == 0
                        && progress.isCancelledAt(Math.min(1, lines.consumed() / (double) Math.max(1, size)))) {
                    throw new CancellationException("reading " + name + " was called off");
                }
            }
        }
        ImportedLog log = parser.finish();
        if (log.kept() == 0) {
            throw nothingUsable(name, log);
        }
        progress.isCancelledAt(1);
        return log;
    }

    private static InvalidInput nothingUsable(String name, ImportedLog log) {
        return log.findings().entrySet().stream()
                .filter(entry -> entry.getKey().drops())
                .max(Comparator.comparingLong((Map.Entry<Reason, Finding> entry) ->
                                entry.getValue().count())
                        .thenComparing(Map.Entry::getKey))
                .map(entry -> new InvalidInput(
                        name, "logger.fault.unusable", entry.getValue().lines().get(0), entry.getKey()))
                .orElseGet(() -> new InvalidInput(name, "logger.fault.no-data"));
    }

    /** The beginning of a file, enough to show what it is. */
    public static byte[] head(Path file) {
        Path ordinary = ordinary(file);
        try (InputStream in = Files.newInputStream(ordinary)) {
            return in.readNBytes(HEAD);
        } catch (IOException unreadable) {
            throw unreadable(nameOf(file), unreadable);
        }
    }

    /** The file a path leads to: no pipe, which would be waited for without end, and none too large to be read. */
    static Path ordinary(Path file) {
        return new WholeFile(Disk.REAL).named(file, nameOf(file), WholeFile.MOST_LOGGER_BYTES);
    }

    static String nameOf(Path file) {
        Path name = file.getFileName();
        return name == null ? file.toString() : name.toString();
    }

    private static InvalidInput unreadable(String name, IOException cause) {

        InvalidInput fault = new InvalidInput(
                name, cause instanceof NoSuchFileException ? "logger.fault.gone" : "logger.fault.unreadable");
        fault.initCause(cause);
        return fault;
    }
}
