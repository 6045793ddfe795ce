package undercroft;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import undercroft.WindowPreferences.Kept;
import undercroft.app.LastView;
import undercroft.app.Pages.Page;
import undercroft.app.WindowBounds;
import undercroft.wording.Language;

final class WindowPreferencesTest {
    @TempDir
    private Path folder;

    @Test
    void allOfItIsRemembered() {
        WindowPreferences memory = new WindowPreferences(folder.resolve("settings"));
        assertEquals(Kept.NOTHING, memory.read());
        Kept kept = new Kept(
                Language.GERMAN,
                true,
                true,
                Optional.of(new WindowBounds(-10.5, 20, 1100, 700)),
                new LastView(Page.SERVINGS, "weißbier=1"));
        memory.keep(kept);
        assertEquals(kept, new WindowPreferences(folder.resolve("settings")).read());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "dark=true\nbounds=1 2 3",
                "dark=maybe\npage=CELLARS\nbatch",
                "bounds=a b c d",
                "bounds=NaN 0 Infinity 1",
                "bounds=0 0 -5 1e300",
                "\\u12",
                "\u0000\u0000"
            })
    void aDamagedFileIsNoFault(String text) throws IOException {
        Files.writeString(folder.resolve("window.properties"), text);
        Kept read = new WindowPreferences(folder).read();
        assertEquals(Optional.empty(), read.bounds());
        assertEquals(Page.SHELF, read.view().page());
    }

    @Test
    void aFolderThatCannotBeMadeIsLetBe() throws IOException {
        Path file = Files.createFile(folder.resolve("taken"));
        WindowPreferences memory = new WindowPreferences(file);
        memory.keep(Kept.NOTHING.withDark(true));
        assertFalse(memory.read().dark());
    }
}
