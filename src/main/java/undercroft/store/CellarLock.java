package undercroft.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Supplier;
import undercroft.quantity.InvalidInput;
import undercroft.store.disk.AtomicFile;
import undercroft.store.disk.Disk;

/**
 * Held while a writer has the cellar open. The file stays when the lock is given back: deleting it would let two writers
 * hold two files of one name. The system gives the lock back when the program dies.
 *
 * <p>Where locks belong to a process (POSIX), closing any channel on the file gives up the lock of the whole process, so
 * a second window of this program must be turned away before it opens the file: hence the set of folders held here.
 */
final class CellarLock implements AutoCloseable {
    static final String FILE = "cellar.lock";

    private static final String HELD_ELSEWHERE =
            "is open in another window or program; close it there before changing it here";

    private static final Set<Path> HELD_HERE = ConcurrentHashMap.newKeySet();

    private final Path folder;

    /** Kept as an object: a lock that is garbage-collected no longer counts. */
    private final FileLock lock;

    private CellarLock(Path folder, FileLock lock) {
        this.folder = folder;
        this.lock = lock;
    }

    static CellarLock take(CellarFolder cellar) {
        Path folder = cellar.path();
        if (!HELD_HERE.add(folder)) {
            throw heldElsewhere(folder);
        }
        boolean taken = false;
        try {
            Path file = folder.resolve(FILE);
            Disk.Kind kind = cellar.disk().entry(file).kind();
            if (kind != Disk.Kind.FILE && kind != Disk.Kind.NOTHING) {
                throw new InvalidInput(FILE, "is no ordinary file but a link, folder or pipe; take it away");
            }
            FileLock lock = tryLock(cellar.disk().openToLock(file));
            if (lock == null) {
                throw heldElsewhere(folder);
            }
            taken = true;
            return new CellarLock(folder, lock);
        } catch (IOException failure) {
            throw refused(failure);
        } finally {
            if (!taken) {
                HELD_HERE.remove(folder);
            }
        }
    }

    private static FileLock tryLock(FileChannel channel) throws IOException {
        FileLock lock = null;
        try {
            lock = channel.tryLock();
            return lock;
        } catch (OverlappingFileLockException heldByOtherCode) {
            return null;
        } finally {
            if (lock == null) {
                channel.close();
            }
        }
    }

    private static InvalidInput refused(IOException failure) {
        return new InvalidInput(
                FILE, "could not be made (" + AtomicFile.reason(failure) + "); the folder must be writable");
    }

    private static InvalidInput heldElsewhere(Path folder) {
        return new InvalidInput(folder.toString(), HELD_ELSEWHERE);
    }

    /** Whether a fault says that another window or program holds the lock. */
    static boolean isHeldElsewhere(InvalidInput fault) {
        return fault.key().equals(HELD_ELSEWHERE);
    }

    /** Does something while the lock is held. */
    static <T> T whileHeld(CellarFolder folder, Supplier<T> action) {
        CellarLock lock = take(folder);
        try {
            return action.get();
        } finally {
            lock.close();
        }
    }

    /** Gives the lock back; a second call does nothing. */
    @Override
    public void close() {
        if (!lock.isValid()) {
            return;
        }
        try {
            lock.acquiredBy().close();
        } catch (IOException failure) {
            // Nothing was written through it, and the system gives it back at the latest with the end of the program.
        } finally {
            HELD_HERE.remove(folder);
        }
    }
}
