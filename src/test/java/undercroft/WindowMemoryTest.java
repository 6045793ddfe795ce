package undercroft;

import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class WindowMemoryTest {
    @TempDir
    private Path folder;

    @Test
    void darkIsRememberedAndALostFileIsLight() throws IOException {
        WindowMemory memory = new WindowMemory(folder.resolve("settings"));
        assertFalse(memory.wasDark());
        memory.keepDark(true);
        assertTrue(new WindowMemory(folder.resolve("settings")).wasDark());
        memory.keepDark(false);
        assertFalse(memory.wasDark());
    }

    @Test
    void aFolderThatCannotBeMadeIsLetBe() throws IOException {
        Path file = Files.createFile(folder.resolve("taken"));
        WindowMemory memory = new WindowMemory(file);
        memory.keepDark(true);
        assertFalse(memory.wasDark());
    }
}
