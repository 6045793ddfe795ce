package undercroft.store;

import java.nio.file.Path;
import java.util.Optional;
import undercroft.cellar.Cellar;

/**
 * Two versions of one cellar, of which a person must choose one: what is open here, and what another program or a sync
 * service put into the folder. Both are on the disk until one is chosen; the other one then goes to the history.
 *
 * @param theirs empty when the other version cannot be read
 * @param file the other version: {@code cellar.json} itself, or a copy beside it
 */
public record Conflict(Cellar mine, Optional<Cellar> theirs, Path file) {
    /** Whether the other version is a copy beside {@code cellar.json}, as sync services leave them. */
    public boolean isCopy() {
        return !file.getFileName().toString().equals(CellarFolder.FILE);
    }
}
