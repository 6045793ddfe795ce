package undercroft.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import undercroft.cellar.Cellar;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;
import undercroft.wording.English;

class CellarStoreTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-01T12:00:00Z"), ZoneOffset.UTC);
    private static final String PROGRAM = "undercroft test";

    @TempDir
    Path folder;

    private CellarStore open() {
        return CellarStore.open(folder, CLOCK, PROGRAM);
    }

    private static Cellar renamed(String name) {
        return RichCellar.CELLAR.withName(name);
    }

    @Test
    void aSavedCellarIsReadAgainAndTheOneBeforeIsInTheHistory() throws IOException {
        RichCellar.folderWith(folder, RichCellar.CELLAR);
        try (CellarStore store = open()) {
            store.save(renamed("Second"));
            assertEquals("Second", store.cellar().name());
            assertEquals(1, store.versions().size());
            assertEquals(RichCellar.CELLAR, store.read(store.versions().get(0)));
        }
        assertEquals(renamed("Second"), CellarStore.read(folder));
        assertTrue(Files.exists(folder.resolve("history/cellar-2026-03-01T12-00-00-000Z.json")));
    }

    @Test
    void savingAnUnchangedCellarWritesNothing() throws IOException {
        RichCellar.folderWith(folder, RichCellar.CELLAR);
        Path file = folder.resolve("cellar.json");
        Files.setLastModifiedTime(file, FileTime.fromMillis(1_000));
        try (CellarStore store = open()) {
            store.save(RichCellar.CELLAR.withName("Under the stairs"));
            assertEquals(List.of(), store.versions());
        }
        assertEquals(FileTime.fromMillis(1_000), Files.getLastModifiedTime(file));
    }

    @Test
    void aDeletedFileIsWrittenAgain() throws IOException {
        RichCellar.folderWith(folder, RichCellar.CELLAR);
        try (CellarStore store = open()) {
            Files.delete(folder.resolve("cellar.json"));
            store.save(renamed("Back"));
        }
        assertEquals("Back", CellarStore.read(folder).name());
    }

    @Test
    void aCellarThatCouldNotBeReadAgainIsNotSaved() throws IOException {
        RichCellar.folderWith(folder, RichCellar.CELLAR);
        Map<String, String> before = RichCellar.contents(folder);
        String endless = "x".repeat(200_000);
        try (CellarStore store = open()) {
            Cellar unreadable =
                    RichCellar.CELLAR.withBatch(RichCellar.CELLAR.batch("next").withNotes(endless));
            assertThrows(InvalidInput.class, () -> store.save(unreadable));
        }
        assertEquals(before, RichCellar.contents(folder));
    }

    @Test
    void aNewCellarGoesIntoANewOrEmptyFolderOnly() throws IOException {
        Cellar empty = Cellar.empty("New", ZoneId.of("UTC"));
        Path fresh = folder.resolve("deep/new");
        CellarStore.create(fresh, empty, CLOCK, PROGRAM).close();
        assertEquals(empty, CellarStore.read(fresh));

        InvalidInput twice = assertThrows(InvalidInput.class, () -> CellarStore.create(fresh, empty, CLOCK, PROGRAM));
        assertTrue(English.placed(twice).contains("holds a cellar already"), English.placed(twice));

        Path photos = Files.createDirectory(folder.resolve("photos"));
        Files.createFile(photos.resolve("cat.jpg"));
        InvalidInput full = assertThrows(InvalidInput.class, () -> CellarStore.create(photos, empty, CLOCK, PROGRAM));
        assertTrue(English.placed(full).contains("cat.jpg"), English.placed(full));
        assertEquals(Map.of("cat.jpg", ""), RichCellar.contents(photos));

        Path littered = Files.createDirectory(folder.resolve("littered"));
        Files.createFile(littered.resolve(".DS_Store"));
        CellarStore.create(littered, empty, CLOCK, PROGRAM).close();
    }

    @Test
    void whatIsNoCellarFolderIsToldApart() throws IOException {
        Path file = Files.createFile(folder.resolve("file"));
        Path bare = Files.createDirectory(folder.resolve("bare"));
        for (Path wrong : List.of(folder.resolve("nowhere"), file, bare)) {
            assertThrows(InvalidInput.class, () -> CellarStore.open(wrong, CLOCK, PROGRAM));
            assertThrows(InvalidInput.class, () -> CellarStore.read(wrong));
            assertEquals(1, CellarStore.faults(wrong).size());
        }
        assertFalse(Files.exists(bare.resolve("cellar.lock")), "looking leaves nothing behind");
    }

    @Test
    void aNewerSchemaIsRefusedAndNothingTouched() throws IOException {
        Files.writeString(folder.resolve("cellar.json"), "{\"schema\": 7, \"barrels\": []}");
        Map<String, String> before = RichCellar.contents(folder);
        InvalidInput fault = assertThrows(InvalidInput.class, this::open);
        assertTrue(English.placed(fault).contains("newer version"), English.placed(fault));
        assertEquals(before, RichCellar.contents(folder));
    }

    @Test
    void temperaturesAreMergedInOrderAndMergingAgainWritesNothing() throws IOException {
        RichCellar.folderWith(folder, RichCellar.CELLAR);
        try (CellarStore store = open()) {
            assertTrue(store.temperatures("loft").isEmpty());
            store.merge("loft", TimeSeries.of(new long[] {1_800, 3_600}, new double[] {12.3456, 13}));
            TimeSeries both = store.merge("loft", TimeSeries.of(new long[] {0, 3_600}, new double[] {11, -0.5}));
            TimeSeries expected = TimeSeries.of(new long[] {0, 1_800, 3_600}, new double[] {11, 12.346, -0.5});
            assertEquals(expected, both);
            assertEquals(Map.of("loft", expected), store.temperatures().celsius());
            Path file = folder.resolve("temperatures/loft.csv");
            Files.setLastModifiedTime(file, FileTime.fromMillis(1_000));
            store.merge("loft", TimeSeries.of(new long[] {1_800}, new double[] {12.3456}));
            assertEquals(FileTime.fromMillis(1_000), Files.getLastModifiedTime(file));
            assertThrows(InvalidInput.class, () -> store.merge("attic", TimeSeries.empty()));
        }
    }
}
