package undercroft.store;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import undercroft.cellar.Cellar;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;
import undercroft.store.disk.AtomicFile;
import undercroft.store.disk.Disk;
import undercroft.store.json.CellarJson;

/**
 * A cellar folder open for writing, which one program at a time can have, or only to be looked at. Every fault, of the
 * content or of the disk, is an {@link InvalidInput}; after it the folder holds what it held before. {@link AtomicFile}
 * says what a failed write leaves behind.
 */
public final class CellarStore implements AutoCloseable {
    private final CellarFolder folder;
    private final Clock clock;
    private final String writtenBy;
    private final AtomicFile files;

    /** Null while the cellar is only looked at because another program holds it. */
    private final CellarLock lock;

    private final TemperatureLogs logs;
    private final OtherVersions others;
    private CellarJson current;
    private boolean closed;

    private CellarStore(
            CellarFolder folder, Clock clock, String writtenBy, AtomicFile files, CellarLock lock, CellarJson current) {
        this.folder = folder;
        this.clock = clock;
        this.writtenBy = writtenBy;
        this.files = files;
        this.lock = lock;
        this.current = current;
        this.logs = new TemperatureLogs(folder, files, clock);
        this.others = new OtherVersions(folder, files, clock);
    }

    /** Opens a folder for writing. {@code writtenBy} goes into the file: name and version of the program. */
    public static CellarStore open(Path folder, Clock clock, String writtenBy) {
        return open(folder, clock, writtenBy, Disk.REAL);
    }

    /** Opens a folder to save something and close it again at once; who comes meanwhile waits and is not turned away. */
    public static CellarStore openInPassing(Path folder, Clock clock, String writtenBy) {
        return open(folder, clock, writtenBy, Disk.REAL, CellarLock::takeInPassing);
    }

    static CellarStore open(Path path, Clock clock, String writtenBy, Disk disk) {
        return open(path, clock, writtenBy, disk, CellarLock::take);
    }

    private static CellarStore open(
            Path path, Clock clock, String writtenBy, Disk disk, Function<CellarFolder, CellarLock> locking) {
        CellarFolder folder = CellarFolder.of(path, disk);
        folder.bytes();
        AtomicFile files = new AtomicFile(disk);
        return whileLocked(locking.apply(folder), lock -> {
            CellarJson current = folder.json();
            if (!current.isNewer()) {
                List.of(folder.path(), folder.temperatureFolder(), folder.historyFolder())
                        .forEach(files::removeLeftovers);
                new Incoming(folder).removeSurplus(current.cellar(), clock.instant());
            }
            return new CellarStore(folder, clock, writtenBy, files, lock, current);
        });
    }

    /** Opens a folder to be looked at only, for instance while another window has it. */
    public static CellarStore look(Path path, Clock clock) {
        CellarFolder folder = CellarFolder.of(path);
        return new CellarStore(folder, clock, "", new AtomicFile(folder.disk()), null, folder.json());
    }

    /** Makes a new cellar in a new or empty folder and opens it. */
    public static CellarStore create(Path path, Cellar cellar, Clock clock, String writtenBy) {
        return create(path, cellar, clock, writtenBy, Disk.REAL);
    }

    static CellarStore create(Path path, Cellar cellar, Clock clock, String writtenBy, Disk disk) {
        AtomicFile files = new AtomicFile(disk);
        CellarFolder folder = CellarFolder.prepare(path, files);
        return whileLocked(CellarLock.take(folder), lock -> {
            CellarJson written = CellarJson.of(cellar, writtenBy);
            CellarJson.read(written.bytes(), CellarFolder.FILE);
            folder.requireNone();
            files.replace(folder.file(), written.bytes(), CellarFolder.FILE);
            files.confirm();
            return new CellarStore(folder, clock, writtenBy, files, lock, written);
        });
    }

    private interface Opening {
        CellarStore opened(CellarLock lock);
    }

    /** Gives the lock back whatever went wrong, running out of memory too. */
    private static CellarStore whileLocked(CellarLock lock, Opening opening) {
        CellarStore store = null;
        try {
            store = opening.opened(lock);
            return store;
        } finally {
            if (store == null) {
                lock.close();
            }
        }
    }

    /** Whether opening failed because another window or program has the cellar. */
    public static boolean isOpenElsewhere(InvalidInput fault) {
        return CellarLock.isHeldElsewhere(fault);
    }

    /** The cellar in a folder, read without a lock. */
    public static Cellar read(Path folder) {
        return CellarFolder.of(folder).json().cellar();
    }

    /** All faults that can be told of a folder, its temperature files among them; empty when it is sound. */
    public static List<InvalidInput> faults(Path folder) {
        return FolderCheck.faults(folder);
    }

    /** What is logged in the places of a cellar, read without a lock. */
    public static LoggedTemperatures temperatures(Path folder, Cellar cellar) {
        return CellarFolder.of(folder).temperatures(cellar, (placeId, bytes, celsius) -> {});
    }

    /**
     * Why nothing can be saved, where that is so: another window has the cellar, or a newer version wrote the file, and
     * this one does not know all of it.
     */
    public synchronized Optional<InvalidInput> lookOnly() {
        if (current.isNewer()) {
            return Optional.of(
                    CellarJson.newer(current.schema(), "store.newer.change").within(CellarFolder.FILE));
        }
        return lock == null
                ? Optional.of(new InvalidInput(folder.path().toString(), "store.fault.only-looked-at"))
                : Optional.empty();
    }

    public Path folder() {
        return folder.path();
    }

    /** Whether the file is still as an earlier version of the program wrote it; the next change rewrites it. */
    public synchronized boolean isOfEarlierVersion() {
        return current.schema() < CellarJson.SCHEMA;
    }

    /** The cellar as it was read or last saved. */
    public synchronized Cellar cellar() {
        return current.cellar();
    }

    /**
     * Saves a changed cellar; an unchanged one writes nothing. What was in the file before goes to the history. When
     * another program has changed the file since, it is left alone and the cellar is kept in a file beside it, until
     * {@link #keepMine} or {@link #takeTheirs} settles which one holds.
     */
    public synchronized void save(Cellar cellar) {
        requireWritable();
        files.confirm();
        if (cellar.equals(current.cellar())) {
            return;
        }
        CellarJson changed = current.with(cellar, writtenBy);
        CellarJson.read(changed.bytes(), CellarFolder.FILE);
        if (others.isChanged(current)) {
            throw new InvalidInput(CellarFolder.FILE, "store.fault.changed-elsewhere", others.keepMine(changed));
        }
        write(changed, current.bytes());
    }

    /** Writes the file; {@code before} goes to the history. */
    private void write(CellarJson changed, byte[] before) {
        History history = history();
        if (current.schema() < CellarJson.SCHEMA) {
            history.keepForGood(current.bytes(), current.schema(), clock.instant());
        }
        Version kept = history.keep(before, clock.instant());
        boolean written = false;
        try {
            files.replace(folder.file(), changed.bytes(), CellarFolder.FILE);
            written = true;
        } finally {
            if (!written) {
                history.drop(kept);
            }
        }
        current = changed;
        history.prune(clock.instant());
        files.confirm();
    }

    /** Two versions, where {@code cellar.json} was changed by another program or a copy lies beside it. */
    public synchronized Optional<Conflict> conflict(Cellar mine) {
        return others.isChanged(current)
                ? Optional.of(new Conflict(mine, others.read(folder.file()), folder.file()))
                : others.copy(mine);
    }

    /** Settles a conflict: what is open here holds; the other version goes to the history. */
    public synchronized void keepMine(Cellar mine, Conflict conflict) {
        requireWritable();
        if (conflict.isCopy()) {
            others.putAway(conflict.file(), history());
        } else if (others.isChanged(current)) {
            write(current.with(mine, writtenBy), folder.bytes());
            others.settle(history());
        }
    }

    /** Settles a conflict: the other version holds; what was open here goes to the history. Returns what holds now. */
    public synchronized Cellar takeTheirs(Cellar mine, Conflict conflict) {
        requireWritable();
        CellarJson theirs = folder.json(conflict.file());
        byte[] ours = mine.equals(current.cellar())
                ? current.bytes()
                : current.with(mine, writtenBy).bytes();
        if (conflict.isCopy()) {
            write(theirs.with(theirs.cellar(), writtenBy), ours);
            others.putAway(conflict.file(), history());
        } else {
            history().keep(ours, clock.instant());
            current = theirs;
            others.settle(history());
        }
        return current.cellar();
    }

    public List<Version> versions() {
        return history().versions();
    }

    /** The cellar as it was; saving it makes it the present one. */
    public Cellar read(Version version) {
        return folder.json(version.file()).cellar();
    }

    private History history() {
        return History.ofCellar(folder, files);
    }

    /** What is logged in all places that have a file; from then on other programs' changes of these files are noticed. */
    public synchronized LoggedTemperatures temperatures() {
        return logs.read(cellar());
    }

    /** The logged temperatures of a place, the sound lines of them; an empty series when there is no file yet. */
    public synchronized TimeSeries temperatures(String placeId) {
        return logs.read(placeId, new ArrayList<>());
    }

    /**
     * Sorts temperatures into the file of a place; where both have one instant the newer value stays. Values are kept to
     * three decimals. Returns what the file holds then. Merging the same again writes nothing.
     */
    public synchronized TimeSeries merge(String placeId, TimeSeries newer) {
        requirePlace(placeId);
        TimeSeries merged = logs.merge(placeId, newer);
        files.confirm();
        return merged;
    }

    /**
     * Makes the file of a place hold a series; an empty one leaves the heading alone. What another program added to the
     * file since it was read stays in it.
     *
     * @return what the file holds then
     */
    public synchronized TimeSeries replaceTemperatures(String placeId, TimeSeries celsius) {
        requirePlace(placeId);
        TimeSeries saved = logs.save(placeId, celsius);
        files.confirm();
        return saved;
    }

    /**
     * Writes a cellar with its logs into another folder, new or empty, as one of its own, for when this one cannot be
     * written. {@code cellar.json} comes last, so that half of it is no cellar.
     */
    public synchronized void saveElsewhere(Path target, Cellar cellar, Map<String, TimeSeries> temperatures) {
        AtomicFile elsewhere = new AtomicFile(folder.disk());
        CellarFolder other = CellarFolder.prepare(target, elsewhere);
        CellarLock.whileHeld(other, () -> {
            TemperatureLogs copies = new TemperatureLogs(other, elsewhere, clock);
            temperatures.forEach(copies::save);
            byte[] bytes = current.with(cellar, writtenBy).bytes();
            elsewhere.replace(other.file(), bytes, CellarFolder.FILE);
            elsewhere.confirm();
            return cellar;
        });
    }

    /** What other programs and machines put there for this cellar. */
    public Incoming incoming() {
        return new Incoming(folder);
    }

    private void requirePlace(String placeId) {
        requireWritable();
        cellar().place(placeId);
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
        CellarFolder.of(folder.path(), folder.disk());
    }

    /** Gives the lock back. */
    @Override
    public synchronized void close() {
        closed = true;
        if (lock != null) {
            lock.close();
        }
    }
}
