package undercroft.store.logger;

import java.io.IOException;
import java.nio.file.ClosedWatchServiceException;
import java.nio.file.FileSystems;
import java.nio.file.Path;
import java.nio.file.StandardWatchEventKinds;
import java.nio.file.WatchKey;
import java.nio.file.WatchService;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import undercroft.series.TimeSeries;

/**
 * A file a logger appends to. Waits for the folder to report a change and, because some file systems never do, looks at
 * the file's size every two seconds; reads only what is new. A file put in its place or cut short is read anew, so
 * samples may be handed out again: merge them with {@link ImportMerge}.
 */
public final class FollowedFile implements AutoCloseable {
    private static final long LOOK_EVERY_SECONDS = 2;

    /** A logger that writes many small pieces is read a few times a second at most. */
    private static final long REST_MILLISECONDS = 200;

    private final GrowingFile file;
    private final Consumer<TimeSeries> onSamples;
    private final WatchService watch;
    private final Thread thread;
    private volatile boolean closed;

    private FollowedFile(Path path, Choices choices, Consumer<TimeSeries> onSamples) throws IOException {
        this.file = new GrowingFile(path, choices);
        this.onSamples = onSamples;
        Path folder = path.toAbsolutePath().getParent();
        this.watch = FileSystems.getDefault().newWatchService();
        try {
            folder.register(watch, StandardWatchEventKinds.ENTRY_CREATE, StandardWatchEventKinds.ENTRY_MODIFY);
        } catch (IOException noSuchFolder) {
            watch.close();
            throw noSuchFolder;
        }
        this.thread = new Thread(this::run, "following " + path.getFileName());
        thread.setDaemon(true);
    }

    /**
     * Begins with everything in the file now, then hands out what is added, from a thread of its own.
     *
     * @param onSamples gets new samples in °C at UTC seconds; must not throw
     * @throws IOException when the file's folder cannot be watched
     */
    public static FollowedFile follow(Path file, Choices choices, Consumer<TimeSeries> onSamples) throws IOException {
        FollowedFile followed = new FollowedFile(file, choices, onSamples);
        followed.thread.start();
        return followed;
    }

    private void run() {
        try {
            while (!closed) {
                file.readNew(onSamples);
                WatchKey key = watch.poll(LOOK_EVERY_SECONDS, TimeUnit.SECONDS);
                if (key != null) {
                    key.pollEvents();
                    key.reset();
                    Thread.sleep(REST_MILLISECONDS);
                }
            }
        } catch (InterruptedException | ClosedWatchServiceException ended) {
            Thread.currentThread().interrupt();
        } finally {
            file.close();
        }
    }

    /** Stops following. No samples are handed out after this returns, unless called from {@code onSamples} itself. */
    @Override
    public void close() {
        closed = true;
        try {
            watch.close();
            if (Thread.currentThread() != thread) {
                thread.join(TimeUnit.SECONDS.toMillis(LOOK_EVERY_SECONDS));
            }
        } catch (IOException alreadyGone) {
            thread.interrupt();
        } catch (InterruptedException hurried) {
            Thread.currentThread().interrupt();
        }
    }
}
