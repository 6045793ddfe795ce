package undercroft.store;

import java.nio.file.Path;
import java.time.Clock;
import java.util.ArrayList;
import java.util.List;
import undercroft.cellar.Cellar;
import undercroft.quantity.InvalidInput;
import undercroft.store.disk.AtomicFile;
import undercroft.store.disk.Disk;
import undercroft.store.json.CellarJson;

/**
 * Brings back a cellar whose {@code cellar.json} is missing or cannot be read. Only versions that can be read are offered,
 * and nothing is moved before the chosen one has been read again; the damaged file is kept under another name.
 */
public final class Rescue {
    /** Newest versions looked into; each is read as a whole. */
    private static final int MOST_OFFERED = 60;

    private final CellarFolder folder;
    private final AtomicFile files;

    private Rescue(CellarFolder folder) {
        this.folder = folder;
        this.files = new AtomicFile(folder.disk());
    }

    /** The rescue of a folder, whatever is left in it. */
    public static Rescue of(Path folder) {
        return new Rescue(CellarFolder.of(folder));
    }

    /** The earlier versions that can be read, newest first. */
    public List<Version> versions() {
        List<Version> sound = new ArrayList<>();
        for (Version version : History.ofCellar(folder, files).versions()) {
            if (sound.size() < MOST_OFFERED && isSound(version)) {
                sound.add(version);
            }
        }
        return List.copyOf(sound);
    }

    private boolean isSound(Version version) {
        try {
            return !folder.json(version.file()).isNewer();
        } catch (InvalidInput damaged) {
            return false;
        }
    }

    /**
     * Puts an earlier version in the place of {@code cellar.json}. What stood there, if anything, is kept as
     * {@code cellar.json.unreadable-<time>}.
     */
    public Cellar restore(Version version, Clock clock) {
        return CellarLock.whileHeld(folder, () -> {
            CellarJson json = folder.json(version.file());
            if (folder.kindOf(folder.file()) != Disk.Kind.NOTHING) {
                moveAside(clock);
            }
            files.replace(folder.file(), json.bytes(), CellarFolder.FILE);
            files.confirm();
            return json.cellar();
        });
    }

    private void moveAside(Clock clock) {
        String name = CellarFolder.FILE + ".unreadable-" + History.FILE_TIME.format(clock.instant());
        Path aside = folder.path().resolve(name);
        for (int n = 2; folder.kindOf(aside) != Disk.Kind.NOTHING; n++) {
            aside = folder.path().resolve(name + "-" + n);
        }
        files.rename(folder.file(), aside, CellarFolder.FILE);
    }
}
