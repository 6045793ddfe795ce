package undercroft.view.kit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import org.junit.jupiter.api.Test;

class SavedFilesTest {
    @Test
    void aNameWithADotInItGetsItsEndingToo() {
        assertEquals(Path.of("No. 5.html"), SavedFiles.withEnding(Path.of("No. 5"), "html"));
        assertEquals(Path.of("pale.HTML"), SavedFiles.withEnding(Path.of("pale.HTML"), "html"));
        assertEquals(Path.of("/a.b/pale.png"), SavedFiles.withEnding(Path.of("/a.b/pale"), "png"));
    }
}
