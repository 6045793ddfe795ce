package undercroft;

import java.io.IOException;
import java.io.Reader;
import java.io.Writer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Properties;

/** What the window looked like last, in {@code window.properties} of the settings folder. Nothing in it is precious. */
record WindowPreferences(Path folder) {
    private static final String FILE = "window.properties";
    private static final String DARK = "dark";

    boolean wasDark() {
        try (Reader in = Files.newBufferedReader(folder.resolve(FILE))) {
            Properties kept = new Properties();
            kept.load(in);
            return Boolean.parseBoolean(kept.getProperty(DARK));
        } catch (IOException | IllegalArgumentException nothingKept) {
            return false;
        }
    }

    /** Keeps the choice where it can; a folder that cannot be written is let be. */
    void keepDark(boolean dark) {
        try {
            Files.createDirectories(folder);
            try (Writer out = Files.newBufferedWriter(folder.resolve(FILE))) {
                Properties kept = new Properties();
                kept.setProperty(DARK, Boolean.toString(dark));
                kept.store(out, null);
            }
        } catch (IOException notKept) {
            return;
        }
    }
}
