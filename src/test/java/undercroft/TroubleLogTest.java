package undercroft;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class TroubleLogTest {
    @TempDir
    Path folder;

    private TroubleLog log() {
        return new TroubleLog(
                folder.resolve("state"), Clock.fixed(Instant.parse("2026-11-25T12:00:00Z"), ZoneOffset.UTC));
    }

    @Test
    void itSaysWhereAFaultCameFromAndNothingOfThePerson() throws IOException {
        Throwable trouble = new IllegalStateException(
                "batch \"Grandmother's Cherry\" in /home/ada", new IOException("/home/ada/secret"));
        Path file = log().note(trouble).orElseThrow();
        String text = Files.readString(file);
        assertTrue(text.startsWith("2026-11-25T12:00:00Z undercroft "), text);
        assertTrue(text.contains("java.lang.IllegalStateException") && text.contains("java.io.IOException"), text);
        assertTrue(text.contains("TroubleLogTest"), text);
        assertFalse(text.contains("Cherry") || text.contains("ada"), text);
    }

    @Test
    void itNeverGrowsBeyondItsBoundAndKeepsTheNewest() throws IOException {
        Path file = folder.resolve("state").resolve(TroubleLog.FILE);
        Files.createDirectories(file.getParent());
        Files.writeString(file, "an old line\n".repeat(TroubleLog.MOST_BYTES / 10));
        log().note(new IllegalStateException());
        String text = Files.readString(file);
        assertTrue(text.length() <= TroubleLog.MOST_BYTES, () -> "" + text.length());
        assertTrue(text.startsWith("an old line\n"), "what is left begins with a whole line");
        assertTrue(text.contains("java.lang.IllegalStateException"));
    }

    @Test
    void aFolderThatCannotBeWrittenIsNoSecondFault() throws IOException {
        Files.createFile(folder.resolve("state"));
        assertEquals(Optional.empty(), log().note(new IllegalStateException()));
    }
}
