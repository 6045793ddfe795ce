package undercroft.store.disk;

import java.io.IOException;
import java.nio.file.Path;
import undercroft.quantity.InvalidInput;

/**
 * Reads a file as a whole, once it is known to be an ordinary one of a size that fits into memory: a pipe would be waited
 * for without end, a device has none.
 */
public final class WholeFile {
    /** {@code cellar.json} and its versions: a thousand batches with all their readings take about a quarter of it. */
    public static final int MOST_CELLAR_BYTES = 32 << 20;

    /** A place's temperatures: about 9 million samples, seventeen years of one a minute. */
    public static final int MOST_TEMPERATURE_BYTES = 256 << 20;

    /** A logger's own file, which is read line by line. */
    public static final long MOST_LOGGER_BYTES = 1L << 30;

    /** Settings, forecasts, single readings. */
    public static final int MOST_SMALL_BYTES = 1 << 20;

    private final Disk disk;

    public WholeFile(Disk disk) {
        this.disk = disk;
    }

    /** The bytes of a file inside a folder of ours, where no links are followed; {@code name} is what the user calls it. */
    public byte[] bytes(Path file, String name, int most) {
        try {
            require(disk.entry(file), name, most);
            byte[] bytes = disk.read(file, most);
            if (bytes.length > most) {
                throw tooLarge(name, most);
            }
            return bytes;
        } catch (IOException failure) {
            throw unreadable(name, failure);
        }
    }

    /** The file the user named, links resolved, if it is an ordinary one of a size that may be read. */
    public Path named(Path file, String name, long most) {
        try {
            Path resolved = file.toRealPath();
            require(disk.entry(resolved), name, most);
            return resolved;
        } catch (java.nio.file.NoSuchFileException nothing) {
            throw new InvalidInput(name, "store.fault.no-file");
        } catch (IOException failure) {
            throw unreadable(name, failure);
        }
    }

    private static void require(Disk.Entry entry, String name, long most) {
        switch (entry.kind()) {
            case NOTHING -> throw new InvalidInput(name, "store.fault.absent");
            case FOLDER -> throw new InvalidInput(name, "store.fault.is-folder");
            case LINK -> throw new InvalidInput(name, "store.fault.is-link");
            case OTHER -> throw new InvalidInput(name, "store.fault.is-device");
            case FILE -> {
                if (entry.bytes() > most) {
                    throw tooLarge(name, most);
                }
            }
        }
    }

    private static InvalidInput tooLarge(String name, long most) {
        return new InvalidInput(name, "store.fault.too-large", most >> 20);
    }

    private static InvalidInput unreadable(String name, IOException failure) {
        InvalidInput fault = new InvalidInput(name, "store.fault.unreadable", AtomicFile.reason(failure));
        fault.initCause(failure);
        return fault;
    }
}
