package undercroft.store;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.LocalDate;
import java.time.ZoneOffset;
import java.time.format.DateTimeFormatter;
import java.time.format.DateTimeParseException;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import undercroft.quantity.InvalidInput;
import undercroft.store.disk.AtomicFile;
import undercroft.store.disk.Disk;

/**
 * The earlier versions of one file, in the folder {@code history}: the newest few, and the last of each day (UTC) for a
 * number of days. Days count by the versions that are there, not by the clock, so that a clock that runs ahead takes
 * nothing away; versions from the future, which such a clock left, are counted apart. Files of other names are left alone.
 */
final class History {
    static final DateTimeFormatter FILE_TIME = DateTimeFormatter.ofPattern("uuuu-MM-dd'T'HH-mm-ss-SSS'Z'", Locale.ROOT)
            .withZone(ZoneOffset.UTC);

    private static final String CELLAR = "cellar-";
    private static final String JSON = ".json";
    private static final Duration CLOCKS_DIFFER = Duration.ofDays(1);

    private final CellarFolder cellar;
    private final AtomicFile files;
    private final String before;
    private final String after;
    private final Kept kept;

    /** How much is kept: newest versions, and days of which the last one is. */
    record Kept(int newest, int days) {
        static final Kept OF_THE_CELLAR = new Kept(30, 30);

        /** Logs are large, and mostly only grow, which needs no history. */
        static final Kept OF_A_LOG = new Kept(5, 10);
    }

    private History(CellarFolder cellar, AtomicFile files, String before, String after, Kept kept) {
        this.cellar = cellar;
        this.files = files;
        this.before = before;
        this.after = after;
        this.kept = kept;
    }

    static History ofCellar(CellarFolder cellar, AtomicFile files) {
        return new History(cellar, files, CELLAR, JSON, Kept.OF_THE_CELLAR);
    }

    static History ofTemperatures(CellarFolder cellar, String placeId, AtomicFile files) {
        return new History(cellar, files, placeId + "-", ".csv", Kept.OF_A_LOG);
    }

    /** Earlier versions, newest first; empty when there are none or they cannot be listed. */
    List<Version> versions() {
        List<Version> versions = new ArrayList<>();
        try {
            for (Path file : cellar.list(cellar.historyFolder(), "history")) {
                Instant until = timeOf(file.getFileName().toString());
                if (until != null && cellar.kindOf(file) == Disk.Kind.FILE) {
                    versions.add(new Version(until, file));
                }
            }
        } catch (InvalidInput unreadable) {
            return List.of();
        }
        versions.sort(Comparator.comparing(Version::until).reversed());
        return List.copyOf(versions);
    }

    private Instant timeOf(String fileName) {
        if (!fileName.startsWith(before)
                || !fileName.endsWith(after)
                || fileName.length() < before.length() + after.length()) {
            return null;
        }
        try {
            String time = fileName.substring(before.length(), fileName.length() - after.length());
            return FILE_TIME.parse(time, Instant::from);
        } catch (DateTimeParseException otherFile) {
            return null;
        }
    }

    /** Keeps the bytes as the version that ends at the instant, or at the first free millisecond after it. */
    Version keep(byte[] content, Instant until) {
        Instant free = until.truncatedTo(ChronoUnit.MILLIS);
        while (cellar.kindOf(fileOf(free)) != Disk.Kind.NOTHING) {
            free = free.plusMillis(1);
        }
        files.makeFolder(cellar.historyFolder(), "history");
        Path file = fileOf(free);
        files.replace(file, content, "history/" + file.getFileName());
        return new Version(free, file);
    }

    /**
     * Keeps the bytes as they were before the file was brought to a newer schema, unless they are kept already. Such a
     * file is never pruned: it is what an older version of the program can still read.
     */
    void keepForGood(byte[] content, int schema, Instant until) {
        String beginning = before + "schema-" + schema + "-";
        files.makeFolder(cellar.historyFolder(), "history");
        for (Path file : cellar.list(cellar.historyFolder(), "history")) {
            if (file.getFileName().toString().startsWith(beginning)
                    && !AtomicFile.isLeftover(file)
                    && cellar.kindOf(file) == Disk.Kind.FILE
                    && Arrays.equals(content, cellar.bytes(file))) {
                return;
            }
        }
        String name = beginning + FILE_TIME.format(until) + after;
        files.replace(cellar.historyFolder().resolve(name), content, "history/" + name);
    }

    void drop(Version version) {
        files.discard(version.file());
    }

    private Path fileOf(Instant until) {
        return cellar.historyFolder().resolve(before + FILE_TIME.format(until) + after);
    }

    /** Deletes what is neither among the newest nor the last of one of the last days. */
    void prune(Instant now) {
        List<Version> future = new ArrayList<>();
        List<Version> past = new ArrayList<>();
        for (Version version : versions()) {
            (version.until().isAfter(now.plus(CLOCKS_DIFFER)) ? future : past).add(version);
        }
        prune(future);
        prune(past);
    }

    private void prune(List<Version> newestFirst) {
        Set<LocalDate> days = new HashSet<>();
        for (int i = 0; i < newestFirst.size(); i++) {
            Version version = newestFirst.get(i);
            boolean lastOfItsDay = days.add(LocalDate.ofInstant(version.until(), ZoneOffset.UTC));
            if (i >= kept.newest() && !(lastOfItsDay && days.size() <= kept.days())) {
                drop(version);
            }
        }
    }
}
