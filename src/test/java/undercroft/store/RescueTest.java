package undercroft.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import undercroft.quantity.InvalidInput;

class RescueTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-01T12:00:00Z"), ZoneOffset.UTC);

    @TempDir
    Path folder;

    private Path file;

    @BeforeEach
    void saveThreeTimes() throws IOException {
        RichCellar.folderWith(folder, RichCellar.CELLAR);
        file = folder.resolve("cellar.json");
        try (CellarStore store = CellarStore.open(folder, CLOCK, "test")) {
            for (int save = 1; save <= 3; save++) {
                store.save(RichCellar.CELLAR.withName("Save " + save));
            }
        }
    }

    private List<Version> versions() {
        return Rescue.of(folder).versions();
    }

    @Test
    void aDamagedFileIsKeptAndTheNewestVersionPutInItsPlace() throws IOException {
        Files.writeString(file, "{ \"schema\": 1, ");
        assertThrows(InvalidInput.class, () -> CellarStore.open(folder, CLOCK, "test"));
        assertEquals("{ \"schema\": 1, ", Files.readString(file), "looking changes nothing");
        assertEquals(
                "Save 2", Rescue.of(folder).restore(versions().get(0), CLOCK).name());
        assertEquals("Save 2", CellarStore.read(folder).name());
        Path aside = folder.resolve("cellar.json.unreadable-2026-03-01T12-00-00-000Z");
        assertEquals("{ \"schema\": 1, ", Files.readString(aside));
    }

    @Test
    void aMissingFileIsBroughtBack() throws IOException {
        Files.delete(file);
        assertEquals(
                "Save 2", Rescue.of(folder).restore(versions().get(0), CLOCK).name());
        assertEquals("Save 2", CellarStore.read(folder).name());
    }

    @Test
    void aVersionThatIsItselfDamagedIsNotOffered() throws IOException {
        Files.writeString(file, "");
        Files.writeString(versions().get(0).file(), "\0\0\0\0");
        assertEquals(
                "Save 1", Rescue.of(folder).restore(versions().get(0), CLOCK).name());
    }

    @Test
    void aVersionThatIsDamagedAfterItWasChosenLeavesEverythingWhereItWas() throws IOException {
        Files.writeString(file, "damaged");
        Version chosen = versions().get(0);
        Files.writeString(chosen.file(), "damaged too");
        assertThrows(InvalidInput.class, () -> Rescue.of(folder).restore(chosen, CLOCK));
        assertEquals("damaged", Files.readString(file));
        try (var all = Files.list(folder)) {
            assertFalse(all.anyMatch(each -> each.toString().contains("unreadable")));
        }
    }

    @Test
    void twoRescuesInOneMillisecondKeepBothDamagedFiles() throws IOException {
        for (String damage : List.of("first", "second")) {
            Files.writeString(file, damage);
            Rescue.of(folder).restore(versions().get(0), CLOCK);
        }
        assertEquals("first", Files.readString(folder.resolve("cellar.json.unreadable-2026-03-01T12-00-00-000Z")));
        assertEquals("second", Files.readString(folder.resolve("cellar.json.unreadable-2026-03-01T12-00-00-000Z-2")));
    }

    @Test
    void aFolderWithNothingToRestoreOffersNothing() throws IOException {
        Path bare = Files.createDirectory(folder.resolve("bare"));
        assertTrue(Rescue.of(bare).versions().isEmpty());
    }
}
