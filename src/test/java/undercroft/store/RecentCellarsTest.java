package undercroft.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class RecentCellarsTest {
    @TempDir
    Path folder;

    @Test
    void theLastOpenedComesFirstOnceAndTenAreKept() {
        RecentCellars recent = RecentCellars.in(folder.resolve("settings"));
        for (int i = 0; i < 12; i++) {
            recent.remember(folder.resolve("cellar " + i));
        }
        recent.remember(folder.resolve("cellar 5"));
        List<Path> paths = RecentCellars.in(folder.resolve("settings")).paths();
        assertEquals(10, paths.size());
        assertEquals(folder.resolve("cellar 5"), paths.get(0));
        assertEquals(folder.resolve("cellar 11"), paths.get(1));
        assertEquals(
                1, paths.stream().filter(folder.resolve("cellar 5")::equals).count());
        recent.forget(folder.resolve("cellar 5"));
        assertEquals(folder.resolve("cellar 11"), recent.paths().get(0));
    }

    @ParameterizedTest
    @ValueSource(strings = {"", "{", "[]", "{\"cellars\": 3}", "{\"cellars\": [1, null]}", "\u0000"})
    void aDamagedListStartsAnew(String text) throws IOException {
        Files.writeString(folder.resolve(RecentCellars.FILE), text);
        RecentCellars recent = RecentCellars.in(folder);
        assertEquals(List.of(), recent.paths());
        recent.remember(folder.resolve("mine"));
        assertEquals(List.of(folder.resolve("mine")), recent.paths());
    }

    @Test
    void aFolderThatCannotBeWrittenIsLetBe() throws IOException {
        Path file = Files.createFile(folder.resolve("file"));
        RecentCellars.in(file).remember(folder);
        assertEquals(List.of(), RecentCellars.in(file).paths());
    }
}
