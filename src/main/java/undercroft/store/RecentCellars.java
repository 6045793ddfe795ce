package undercroft.store;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import undercroft.quantity.InvalidInput;
import undercroft.store.disk.AtomicFile;
import undercroft.store.disk.Disk;
import undercroft.store.disk.WholeFile;
import undercroft.store.json.JsonText;

/**
 * The cellars opened last, newest first, in {@code recent-cellars.json} of a folder. Nothing in it is precious: a file that
 * cannot be read counts as empty, and one that cannot be written is let be.
 */
public final class RecentCellars {
    static final int KEPT = 10;
    static final String FILE = "recent-cellars.json";

    private final Path folder;

    private RecentCellars(Path folder) {
        this.folder = folder;
    }

    public static RecentCellars in(Path folder) {
        return new RecentCellars(folder);
    }

    /** The folders, newest first; they may be gone by now. */
    public List<Path> paths() {
        List<Path> paths = new ArrayList<>();
        try {
            for (JsonNode entry : JsonText.parse(
                            new WholeFile(Disk.REAL).bytes(folder.resolve(FILE), FILE, WholeFile.MOST_SMALL_BYTES))
                    .withArray("cellars")) {
                if (entry.isTextual() && paths.size() < KEPT) {
                    paths.add(Path.of(entry.textValue()));
                }
            }
        } catch (InvalidInput | InvalidPathException | UnsupportedOperationException unreadable) {
            return List.copyOf(paths);
        }
        return List.copyOf(paths);
    }

    /** Puts a folder at the top. */
    public void remember(Path cellarFolder) {
        Path absolute = cellarFolder.toAbsolutePath().normalize();
        List<Path> paths = new ArrayList<>(paths());
        paths.remove(absolute);
        paths.add(0, absolute);
        write(paths);
    }

    /** Takes a folder off the list, for one that is gone. */
    public void forget(Path cellarFolder) {
        List<Path> paths = new ArrayList<>(paths());
        if (paths.remove(cellarFolder.toAbsolutePath().normalize())) {
            write(paths);
        }
    }

    private void write(List<Path> paths) {
        ObjectNode tree = JsonNodeFactory.instance.objectNode();
        ArrayNode cellars = tree.putArray("cellars");
        paths.stream().limit(KEPT).forEach(path -> cellars.add(path.toString()));
        try {
            AtomicFile files = new AtomicFile(Disk.REAL);
            files.makeFolders(folder, FILE);
            files.replace(folder.resolve(FILE), JsonText.print(tree), FILE);
        } catch (InvalidInput unwritable) {
            // See the class comment.
        }
    }
}
