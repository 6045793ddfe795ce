package undercroft.report;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import undercroft.quantity.InvalidInput;
import undercroft.report.page.ShelfPage;
import undercroft.wording.English;

final class ShelfReportTest {
    @TempDir
    private Path folder;

    @Test
    void aReportIsThreeKindsOfFileAndNothingIsLeftBeside() throws IOException {
        Path out = folder.resolve("deep/er");
        List<Path> written = ShelfReport.write(out, English.of(Shelves.NO_TEMPERATURES));
        List<Path> expected = List.of(
                out.resolve("report.json"),
                out.resolve("index.html"),
                out.resolve("series/lock-gate-bitter.csv"),
                out.resolve("series/bramble-wheat.csv"));
        assertEquals(expected, written);
        try (Stream<Path> found = Files.walk(out)) {
            assertEquals(4, found.filter(Files::isRegularFile).count());
        }
        assertEquals(ShelfJson.of(Shelves.NO_TEMPERATURES), Files.readString(out.resolve("report.json")));
    }

    @Test
    void aSecondReportReplacesTheFirst() throws IOException {
        ShelfReport.write(folder, English.of(Shelves.NEVER_READY));
        byte[] first = Files.readAllBytes(folder.resolve("index.html"));
        ShelfReport.write(folder, English.of(Shelves.EMPTY));
        assertEquals(ShelfPage.of(English.of(Shelves.EMPTY)), Files.readString(folder.resolve("index.html")));
        ShelfReport.write(folder, English.of(Shelves.NEVER_READY));
        assertArrayEquals(first, Files.readAllBytes(folder.resolve("index.html")));
    }

    @Test
    void aFileInThePlaceOfTheFolderIsRefusedAndKept() throws IOException {
        Path file = Files.writeString(folder.resolve("notes.txt"), "mine");
        for (Path out : List.of(file, file.resolve("below"))) {
            InvalidInput fault =
                    assertThrows(InvalidInput.class, () -> ShelfReport.write(out, English.of(Shelves.EMPTY)));
            assertEquals(out.toString(), fault.where());
            assertTrue(English.of(fault).startsWith("the report could not be written: "), English.of(fault));
        }
        assertEquals("mine", Files.readString(file));
    }

    @Test
    void aFolderInThePlaceOfAFileIsRefusedWithoutDebris() throws IOException {
        Files.createDirectories(folder.resolve("report.json/inside"));
        assertThrows(InvalidInput.class, () -> ShelfReport.write(folder, English.of(Shelves.EMPTY)));
        try (Stream<Path> found = Files.list(folder)) {
            assertEquals(List.of(folder.resolve("report.json")), found.toList());
        }
    }
}
