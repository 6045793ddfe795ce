package undercroft.store;

import java.io.IOException;
import java.nio.channels.FileChannel;
import java.nio.channels.FileLock;
import java.nio.channels.OverlappingFileLockException;
import java.nio.file.Path;
import java.util.Map;
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
 * a second window of this program must be turned away before it opens the file: hence the table of folders held here.
 *
 * <p>Who only passes by, to save something and go, locks the first byte alone. Who wants the whole file sees by its other
 * bytes that the holder will be gone soon, and waits instead of turning away.
 */
final class CellarLock implements AutoCloseable {
    static final String FILE = "cellar.lock";

    private static final String HELD_ELSEWHERE = "store.fault.open-elsewhere";

    private static final int LOOK_EVERY_MILLISECONDS = 20;
    private static final int MOST_LOOKS = 1_000;

    /** By folder, whether it is held in passing. */
    private static final Map<Path, Boolean> HELD_HERE = new ConcurrentHashMap<>();

    private final Path folder;

    /** Kept as an object: a lock that is garbage-collected no longer counts. */
    private final FileLock lock;

    private CellarLock(Path folder, FileLock lock) {
        this.folder = folder;
        this.lock = lock;
    }

    /** Takes it for as long as the cellar is open. Waits for somebody who only passes by. */
    static CellarLock take(CellarFolder cellar) {
        for (int looks = 1; ; looks++) {
            try {
                return take(cellar, false);
            } catch (HeldInPassing soonFree) {
                if (looks == MOST_LOOKS || !slept()) {
                    throw heldElsewhere(cellar.path());
                }
            }
        }
    }

    /** Takes it to save something and go; whoever comes meanwhile waits. */
    static CellarLock takeInPassing(CellarFolder cellar) {
        try {
            return take(cellar, true);
        } catch (HeldInPassing another) {
            throw heldElsewhere(cellar.path());
        }
    }

    private static boolean slept() {
        try {
            Thread.sleep(LOOK_EVERY_MILLISECONDS);
            return true;
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
            return false;
        }
    }

    /** The holder will be gone soon. */
    private static final class HeldInPassing extends Exception {
        private static final long serialVersionUID = 1L;
    }

    private static CellarLock take(CellarFolder cellar, boolean inPassing) throws HeldInPassing {
        Path folder = cellar.path();
        Boolean holder = HELD_HERE.putIfAbsent(folder, inPassing);
        if (holder != null) {
            throw turnedAway(folder, holder);
        }
        boolean taken = false;
        try {
            Path file = folder.resolve(FILE);
            Disk.Kind kind = cellar.disk().entry(file).kind();
            if (kind != Disk.Kind.FILE && kind != Disk.Kind.NOTHING) {
                throw new InvalidInput(FILE, "store.fault.not-ordinary");
            }
            FileLock lock = tryLock(cellar.disk().openToLock(file), folder, inPassing);
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

    private static FileLock tryLock(FileChannel channel, Path folder, boolean inPassing)
            throws IOException, HeldInPassing {
        FileLock lock = null;
        try {
            lock = tryLock(channel, 0, inPassing ? 1 : Long.MAX_VALUE);
            if (lock == null) {
                throw turnedAway(folder, tryLock(channel, 1, Long.MAX_VALUE - 1) != null);
            }
            return lock;
        } finally {
            if (lock == null) {
                channel.close();
            }
        }
    }

    private static FileLock tryLock(FileChannel channel, long from, long size) throws IOException {
        try {
            return channel.tryLock(from, size, false);
        } catch (OverlappingFileLockException heldByOtherCode) {
            return null;
        }
    }

    private static InvalidInput turnedAway(Path folder, boolean inPassing) throws HeldInPassing {
        if (inPassing) {
            throw new HeldInPassing();
        }
        return heldElsewhere(folder);
    }

    private static InvalidInput refused(IOException failure) {
        return new InvalidInput(FILE, "store.fault.not-locked", AtomicFile.reason(failure));
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
