package undercroft.store;

import java.io.IOException;
import java.nio.file.DirectoryStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import undercroft.quantity.InvalidInput;

/**
 * The earlier versions in the folder {@code history}: the newest 30, and of older ones the last of each day (UTC) for 30
 * days. Files with other names are left alone.
 */
final class History {
    static final int NEWEST_KEPT = 30;
    static final int DAYS_KEPT = 30;
    static final DateTimeFormatter FILE_TIME = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH-mm-ss-SSS'Z'", Locale.ROOT)
            .withZone(ZoneOffset.UTC);

    private static final String BEFORE = "cellar-";
    private static final String AFTER = ".json";

    private final Path folder;
    private final AtomicFile files;

    History(Path cellarFolder, AtomicFile files) {
        this.folder = cellarFolder.resolve("history");
        this.files = files;
    }

    /** Earlier versions, newest first; empty when there are none or they cannot be listed. */
    List<Version> versions() {
        List<Version> versions = new ArrayList<>();
        if (!Files.isDirectory(folder)) {
            return versions;
        }
        try (DirectoryStream<Path> entries = Files.newDirectoryStream(folder, BEFORE + "*" + AFTER)) {
            for (Path file : entries) {
                Instant until = timeOf(file.getFileName().toString());
                if (until != null) {
                    versions.add(new Version(until, file));
                }
            }
        } catch (IOException | java.nio.file.DirectoryIteratorException unreadable) {
            return List.of();
        }
        versions.sort(Comparator.comparing(Version::until).reversed());
        return List.copyOf(versions);
    }

    private static Instant timeOf(String fileName) {
        try {
            String time = fileName.substring(BEFORE.length(), fileName.length() - AFTER.length());
            return FILE_TIME.parse(time, Instant::from);
        } catch (DateTimeParseException otherFile) {
            return null;
        }
    }

    /** Keeps the bytes as the version that ends at the instant, or at the first free millisecond after it. */
    Version keep(byte[] content, Instant until) {
        Instant free = until.truncatedTo(ChronoUnit.MILLIS);
        while (Files.exists(fileOf(free))) {
            free = free.plusMillis(1);
        }
        makeFolder();
        Path file = fileOf(free);
        files.replace(file, content, "history/" + file.getFileName());
        return new Version(free, file);
    }

    private void makeFolder() {
        try {
            Files.createDirectories(folder);
        } catch (IOException failure) {
            throw new InvalidInput(
                    "history",
                    "could not be made (" + AtomicFile.reason(failure) + "); nothing was saved, what was there stays");
        }
    }

    /**
     * Keeps the bytes as they were before the file was brought to a newer schema. Such a file is never pruned: it is what
     * an older version of the program can still read.
     */
    void keepForGood(byte[] content, int schema, Instant until) {
        String name = BEFORE + "schema-" + schema + "-" + FILE_TIME.format(until) + AFTER;
        makeFolder();
        files.replace(folder.resolve(name), content, "history/" + name);
    }

    void drop(Version version) {
        files.discard(version.file());
    }

    private Path fileOf(Instant until) {
        return folder.resolve(BEFORE + FILE_TIME.format(until) + AFTER);
    }

    /** Deletes what is neither among the newest nor the last of a recent day. */
    void prune(Instant now) {
        List<Version> versions = versions();
        Set<LocalDate> days = new HashSet<>();
        for (int i = 0; i < versions.size(); i++) {
            Version version = versions.get(i);
            boolean lastOfItsDay = days.add(LocalDate.ofInstant(version.until(), ZoneOffset.UTC));
            boolean recent = version.until().isAfter(now.minus(Duration.ofDays(DAYS_KEPT)));
            if (i >= NEWEST_KEPT && !(lastOfItsDay && recent)) {
                drop(version);
            }
        }
    }
}
