package undercroft.store;

import java.nio.file.Path;
import java.time.Clock;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import undercroft.cellar.Cellar;
import undercroft.quantity.InvalidInput;
import undercroft.store.disk.AtomicFile;
import undercroft.store.disk.Disk;
import undercroft.store.json.CellarJson;

/**
 * Other versions of a cellar in its folder: {@code cellar.json} changed behind our back, copies that sync services leave
 * beside it when two machines wrote ({@code cellar (conflicted copy).json} and the like), and what could not be saved.
 */
final class OtherVersions {
    private static final String UNSAVED = "cellar-unsaved-";

    private final CellarFolder folder;
    private final AtomicFile files;
    private final Clock clock;
    private Path mine;

    OtherVersions(CellarFolder folder, AtomicFile files, Clock clock) {
        this.folder = folder;
        this.files = files;
        this.clock = clock;
    }

    /** Whether {@code cellar.json} is there and is not what was read or written last. */
    boolean isChanged(CellarJson current) {
        return folder.kindOf(folder.file()) != Disk.Kind.NOTHING && !Arrays.equals(folder.bytes(), current.bytes());
    }

    /** Keeps what could not be saved beside the file, in one file however often it is tried, and returns its name. */
    String keepMine(CellarJson unsaved) {
        if (mine == null) {
            mine = folder.path().resolve(UNSAVED + History.FILE_TIME.format(clock.instant()) + ".json");
        }
        String name = mine.getFileName().toString();
        files.replace(mine, unsaved.bytes(), name);
        return name;
    }

    /** What was kept beside the file goes to the history. */
    void settle(History history) {
        if (mine != null && folder.kindOf(mine) == Disk.Kind.FILE) {
            putAway(mine, history);
        }
        mine = null;
    }

    /** Another version beside the file, if there is one; the one kept because of this very opening left out. */
    Optional<Conflict> copy(Cellar open) {
        return copies().stream()
                .filter(file -> !file.equals(mine))
                .findFirst()
                .map(file -> new Conflict(open, read(file), file));
    }

    private List<Path> copies() {
        return folder.list(folder.path(), folder.path().toString()).stream()
                .filter(OtherVersions::isNamedLikeACopy)
                .filter(file -> folder.kindOf(file) == Disk.Kind.FILE)
                .toList();
    }

    static boolean isNamedLikeACopy(Path file) {
        String name = file.getFileName().toString();
        return name.startsWith("cellar") && name.endsWith(".json") && !name.equals(CellarFolder.FILE);
    }

    Optional<Cellar> read(Path file) {
        try {
            return Optional.of(folder.json(file).cellar());
        } catch (InvalidInput unreadable) {
            return Optional.empty();
        }
    }

    /** Moves a copy into the history, as a version of this moment. */
    void putAway(Path copy, History history) {
        history.keep(folder.bytes(copy), clock.instant());
        files.discard(copy);
    }
}
