package undercroft;

import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.Properties;
import undercroft.quantity.InvalidInput;
import undercroft.store.disk.AtomicFile;
import undercroft.store.disk.Disk;
import undercroft.store.disk.WholeFile;

/** What the window looked like last, in {@code window.properties} of the settings folder. Nothing in it is precious. */
record WindowPreferences(Path folder) {
    private static final String FILE = "window.properties";
    private static final String DARK = "dark";

    boolean wasDark() {
        try {
            byte[] bytes = new WholeFile(Disk.REAL).bytes(folder.resolve(FILE), FILE, WholeFile.MOST_SMALL_BYTES);
            Properties kept = new Properties();
            kept.load(new ByteArrayInputStream(bytes));
            return Boolean.parseBoolean(kept.getProperty(DARK));
        } catch (IOException | IllegalArgumentException | InvalidInput nothingKept) {
            return false;
        }
    }

    /** Keeps the choice where it can; a folder that cannot be written is let be. */
    void keepDark(boolean dark) {
        try {
            AtomicFile files = new AtomicFile(Disk.REAL);
            files.makeFolders(folder, FILE);
            byte[] kept = (DARK + "=" + dark + "\n").getBytes(StandardCharsets.ISO_8859_1);
            files.replace(folder.resolve(FILE), kept, FILE);
        } catch (InvalidInput notKept) {
            return;
        }
    }
}
