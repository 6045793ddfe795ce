package undercroft;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class WindowPreferencesTest {
    @TempDir
    private Path folder;

    @Test
    void darkIsRememberedAndALostFileIsLight() throws IOException {
        WindowPreferences memory = new WindowPreferences(folder.resolve("settings"));
        assertFalse(memory.wasDark());
        memory.keepDark(true);
        assertTrue(new WindowPreferences(folder.resolve("settings")).wasDark());
        memory.keepDark(false);
        assertFalse(memory.wasDark());
    }

    @Test
    void aFolderThatCannotBeMadeIsLetBe() throws IOException {
        Path file = Files.createFile(folder.resolve("taken"));
        WindowPreferences memory = new WindowPreferences(file);
        memory.keepDark(true);
        assertFalse(memory.wasDark());
    }
}
