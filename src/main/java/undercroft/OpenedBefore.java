package undercroft;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import undercroft.store.RecentCellars;

/** The cellars opened before. What is known of them may be asked without waiting for a disk. */
final class OpenedBefore {
    private final RecentCellars file;
    private volatile List<Path> all = List.of();

    private OpenedBefore(RecentCellars file) {
        this.file = file;
    }

    static OpenedBefore on(HostEnvironment host) {
        return new OpenedBefore(RecentCellars.in(host.settingsFolder()));
    }

    /** The one that was open last, where it is still there. Reads a disk. */
    Optional<Path> last() {
        all = file.paths();
        return all.stream().findFirst().filter(Files::isDirectory);
    }

    /** A way into a cellar after which it is the newest. */
    <T> Callable<T> remembering(Path folder, Callable<T> way) {
        return () -> {
            T door = way.call();
            file.remember(folder);
            all = file.paths();
            return door;
        };
    }

    /** As far as they were read, newest first. */
    List<Path> all() {
        return all;
    }
}
