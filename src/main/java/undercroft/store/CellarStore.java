package undercroft.store;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import undercroft.cellar.Cellar;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;

/**
 * A cellar folder open for writing, which one program at a time can have. Every fault, of the content or of the disk, is
 * an {@link InvalidInput}; after it the folder holds what it held before. {@link AtomicFile} says what a failed write
 * leaves behind.
 */
public final class CellarStore implements AutoCloseable {
    private final CellarFolder folder;
    private final Clock clock;
    private final String writtenBy;
    private final AtomicFile files;
    private final CellarLock lock;
    private CellarJson current;
    private Path keptBeside;
    private boolean closed;

    private CellarStore(
            CellarFolder folder, Clock clock, String writtenBy, AtomicFile files, CellarLock lock, CellarJson current) {
        this.folder = folder;
        this.clock = clock;
        this.writtenBy = writtenBy;
        this.files = files;
        this.lock = lock;
        this.current = current;
    }

    /** Opens a folder for writing. {@code writtenBy} goes into the file: name and version of the program. */
    public static CellarStore open(Path folder, Clock clock, String writtenBy) {
        return open(folder, clock, writtenBy, FileOperations.DISK);
    }

    static CellarStore open(Path path, Clock clock, String writtenBy, FileOperations operations) {
        CellarFolder folder = CellarFolder.of(path);
        folder.bytes();
        CellarLock lock = CellarLock.take(path);
        try {
            CellarJson current = folder.json();
            return new CellarStore(folder, clock, writtenBy, new AtomicFile(operations), lock, current);
        } catch (InvalidInput fault) {
            lock.close();
            throw fault;
        }
    }

    /** Makes a new cellar in a new or empty folder and opens it. */
    public static CellarStore create(Path path, Cellar cellar, Clock clock, String writtenBy) {
        CellarFolder folder = CellarFolder.prepare(path);
        CellarLock lock = CellarLock.take(path);
        try {
            AtomicFile files = new AtomicFile(FileOperations.DISK);
            CellarJson written = CellarJson.of(cellar, writtenBy);
            CellarJson.read(written.bytes(), CellarFolder.FILE);
            folder.requireNone();
            files.replace(folder.file(), written.bytes(), CellarFolder.FILE);
            return new CellarStore(folder, clock, writtenBy, files, lock, written);
        } catch (InvalidInput fault) {
            lock.close();
            throw fault;
        }
    }

    /** The cellar in a folder, read without a lock. */
    public static Cellar read(Path folder) {
        return CellarFolder.of(folder).json().cellar();
    }

    /** All faults that can be told of a folder, its temperature files among them; empty when it is sound. */
    public static List<InvalidInput> faults(Path folder) {
        return FolderCheck.faults(folder);
    }

    /** The temperatures of all places of a cellar that have a file, by the id of the place, read without a lock. */
    public static Map<String, TimeSeries> temperatures(Path folder, Cellar cellar) {
        return CellarFolder.of(folder).temperatures(cellar);
    }

    /** Earlier versions in a folder, newest first, also when its {@code cellar.json} cannot be read. */
    public static List<Version> versionsOf(Path folder) {
        return new History(folder, new AtomicFile(FileOperations.DISK)).versions();
    }

    /** Renames an unreadable {@code cellar.json}, on the user's word only. Returns the new file. */
    public static Path moveAside(Path folder, Clock clock) {
        return CellarLock.whileHeld(folder, () -> {
            Path aside = folder.resolve(CellarFolder.FILE + ".unreadable-" + History.FILE_TIME.format(clock.instant()));
            if (Files.exists(aside)) {
                throw new InvalidInput(aside.getFileName().toString(), "is there already; try again in a moment");
            }
            new AtomicFile(FileOperations.DISK).rename(folder.resolve(CellarFolder.FILE), aside, CellarFolder.FILE);
            return aside;
        });
    }

    /** Puts an earlier version in the place of a {@code cellar.json} that is missing, and returns what it holds. */
    public static Cellar restore(Path path, Version version) {
        CellarFolder folder = CellarFolder.of(path);
        return CellarLock.whileHeld(path, () -> {
            folder.requireNone();
            CellarJson json = CellarFolder.json(version.file());
            new AtomicFile(FileOperations.DISK).replace(folder.file(), json.bytes(), CellarFolder.FILE);
            return json.cellar();
        });
    }

    /** Why nothing can be saved, where that is so: a newer version wrote the file, and this one does not know all of it. */
    public synchronized Optional<InvalidInput> lookOnly() {
        return current.isNewer()
                ? Optional.of(CellarJson.newer(
                                current.schema(), "so it opens to be looked at only; update it to change this cellar")
                        .within(CellarFolder.FILE))
                : Optional.empty();
    }

    public Path folder() {
        return folder.path();
    }

    /** The cellar as it was read or last saved. */
    public synchronized Cellar cellar() {
        return current.cellar();
    }

    /**
     * Saves a changed cellar; an unchanged one writes nothing. What was in the file before goes to the history. When
     * another program has changed the file since, it is left alone and the cellar is kept in a file beside it.
     */
    public synchronized void save(Cellar cellar) {
        requireWritable();
        if (cellar.equals(current.cellar())) {
            return;
        }
        CellarJson changed = current.with(cellar, writtenBy);
        CellarJson.read(changed.bytes(), CellarFolder.FILE);
        boolean gone = !Files.exists(folder.file());
        if (!gone && !Arrays.equals(folder.bytes(), current.bytes())) {
            throw changedElsewhere(changed);
        }
        History history = history();
        if (current.schema() < CellarJson.SCHEMA) {
            history.keepForGood(current.bytes(), current.schema(), clock.instant());
        }
        Version before = history.keep(current.bytes(), clock.instant());
        try {
            files.replace(folder.file(), changed.bytes(), CellarFolder.FILE);
        } catch (InvalidInput failure) {
            history.drop(before);
            throw failure;
        }
        current = changed;
        history.prune(clock.instant());
    }

    private InvalidInput changedElsewhere(CellarJson mine) {
        if (keptBeside == null) {
            keptBeside = folder.path().resolve("cellar-unsaved-" + History.FILE_TIME.format(clock.instant()) + ".json");
        }
        String name = keptBeside.getFileName().toString();
        files.replace(keptBeside, mine.bytes(), name);
        return new InvalidInput(
                CellarFolder.FILE,
                "was changed by another program since it was opened and is left as it is; your version is kept in "
                        + name + "; open the cellar again");
    }

    /** Reads the file again, when another program has changed it. What was not saved is given up. */
    public synchronized Cellar reload() {
        requireOpen();
        current = folder.json();
        keptBeside = null;
        return current.cellar();
    }

    public List<Version> versions() {
        return history().versions();
    }

    /** The cellar as it was; saving it makes it the present one. */
    public Cellar read(Version version) {
        return CellarFolder.json(version.file()).cellar();
    }

    private History history() {
        return new History(folder.path(), files);
    }

    /** The logged temperatures of a place; an empty series when there is no file yet. */
    public TimeSeries temperatures(String placeId) {
        return folder.temperatures(placeId);
    }

    /** The temperatures of all places that have a file, by the id of the place. */
    public Map<String, TimeSeries> temperatures() {
        return folder.temperatures(cellar());
    }

    /**
     * Sorts temperatures into the file of a place; where both have one instant the newer value stays. Values are kept to
     * three decimals. Returns what the file holds then. Merging the same again writes nothing.
     */
    public synchronized TimeSeries merge(String placeId, TimeSeries newer) {
        return TemperatureFile.merge(temperatureFile(placeId), newer, files);
    }

    /** Puts a whole series in place of what the file of a place holds; an empty one leaves the heading alone. */
    public synchronized void replaceTemperatures(String placeId, TimeSeries celsius) {
        TemperatureFile.replace(temperatureFile(placeId), celsius, files);
    }

    private Path temperatureFile(String placeId) {
        requireWritable();
        cellar().place(placeId);
        Path file = folder.temperatureFile(placeId);
        try {
            Files.createDirectories(file.getParent());
        } catch (IOException failure) {
            throw new InvalidInput("temperatures", "could not be made (" + AtomicFile.reason(failure) + ")");
        }
        return file;
    }

    private void requireWritable() {
        requireOpen();
        if (lookOnly().isPresent()) {
            throw lookOnly().get();
        }
    }

    /** A folder that is gone (a drive taken out) is not made again somewhere else. */
    private void requireOpen() {
        if (closed) {
            throw new IllegalStateException("the store is closed");
        }
        CellarFolder.of(folder.path());
    }

    /** Gives the lock back. */
    @Override
    public synchronized void close() {
        closed = true;
        lock.close();
    }
}
