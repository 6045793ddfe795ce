package undercroft.store.disk;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.channels.FileChannel;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.function.BiPredicate;

/** A disk of which a test decides which calls fail, and which remembers the calls. A failing write writes half. */
public class FaultyDisk implements Disk {
    /** What may be made to fail. */
    public enum Call {
        ENTRY,
        CREATE,
        WRITE,
        FORCE,
        CLOSE,
        RENAME,
        FORCE_FOLDER,
        DELETE,
        MAKE_FOLDER,
        READ,
        LIST,
        LOCK
    }

    private final BiPredicate<Call, Path> fails;
    private final String reason;
    private volatile boolean resting;
    private final List<Call> calls = Collections.synchronizedList(new ArrayList<>());

    public FaultyDisk(String reason, BiPredicate<Call, Path> fails) {
        this.reason = reason;
        this.fails = fails;
    }

    /** Fails the {@code n}th call, counted from 0, of those that matter, and no other. */
    public static FaultyDisk failingOnce(int n) {
        int[] left = {n};
        return new FaultyDisk("a fault of the disk", (call, path) -> left[0]-- == 0);
    }

    /** Every call so far, those that failed too. */
    public List<Call> calls() {
        return List.copyOf(calls);
    }

    /** From here on no call fails or is remembered, until {@link #goOn}. */
    public void rest() {
        resting = true;
    }

    public void goOn() {
        resting = false;
    }

    private void call(Call call, Path path) throws IOException {
        if (resting) {
            return;
        }
        calls.add(call);
        if (fails.test(call, path)) {
            throw new IOException(reason);
        }
    }

    @Override
    public Entry entry(Path path) throws IOException {
        call(Call.ENTRY, path);
        return REAL.entry(path);
    }

    @Override
    public Output create(Path file) throws IOException {
        call(Call.CREATE, file);
        Output real = REAL.create(file);
        return new Output() {
            @Override
            public void write(ByteBuffer content) throws IOException {
                try {
                    call(Call.WRITE, file);
                } catch (IOException full) {
                    real.write(content.slice(content.position(), content.remaining() / 2));
                    throw full;
                }
                real.write(content);
            }

            @Override
            public void force() throws IOException {
                call(Call.FORCE, file);
            }

            @Override
            public void close() throws IOException {
                real.close();
                call(Call.CLOSE, file);
            }
        };
    }

    @Override
    public void rename(Path from, Path to) throws IOException {
        call(Call.RENAME, to);
        REAL.rename(from, to);
    }

    @Override
    public boolean forceFolder(Path folder) throws IOException {
        call(Call.FORCE_FOLDER, folder);
        return true;
    }

    @Override
    public void delete(Path entry) throws IOException {
        call(Call.DELETE, entry);
        REAL.delete(entry);
    }

    @Override
    public void makeFolder(Path folder) throws IOException {
        call(Call.MAKE_FOLDER, folder);
        REAL.makeFolder(folder);
    }

    @Override
    public byte[] read(Path file, int most) throws IOException {
        call(Call.READ, file);
        return REAL.read(file, most);
    }

    @Override
    public List<Path> list(Path folder) throws IOException {
        call(Call.LIST, folder);
        return REAL.list(folder);
    }

    @Override
    public FileChannel openToLock(Path file) throws IOException {
        call(Call.LOCK, file);
        return REAL.openToLock(file);
    }
}
