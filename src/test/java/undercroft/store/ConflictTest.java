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
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import undercroft.cellar.Cellar;
import undercroft.quantity.InvalidInput;
import undercroft.store.json.CellarJson;
import undercroft.wording.English;

/** Two writers at a time: whatever the order, both versions are on the disk until the user has chosen, and after it. */
class ConflictTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-01T12:00:00Z"), ZoneOffset.UTC);
    private static final String KEPT = "cellar-unsaved-2026-03-01T12-00-00-000Z.json";
    private static final Cellar MINE = RichCellar.CELLAR.withName("Mine");
    private static final Cellar THEIRS = RichCellar.CELLAR.withName("Theirs");

    @TempDir
    Path folder;

    @BeforeEach
    void fill() throws IOException {
        RichCellar.folderWith(folder, RichCellar.CELLAR);
    }

    private CellarStore open() {
        return CellarStore.open(folder, CLOCK, "test");
    }

    private List<String> history() {
        return Rescue.of(folder).versions().stream()
                .map(version ->
                        CellarFolder.of(folder).json(version.file()).cellar().name())
                .toList();
    }

    private CellarStore openAndChangedByBoth() throws IOException {
        CellarStore store = open();
        RichCellar.folderWith(folder, THEIRS);
        InvalidInput fault = assertThrows(InvalidInput.class, () -> store.save(MINE));
        assertTrue(English.placed(fault).contains("changed by another program"), English.placed(fault));
        return store;
    }

    @Test
    void aFileChangedByAnotherProgramIsNotOverwrittenAndBothAreKept() throws IOException {
        try (CellarStore store = openAndChangedByBoth()) {
            assertThrows(
                    InvalidInput.class, () -> store.save(MINE.withName("Mine")), "told each time, kept in one file");
            assertEquals("Theirs", CellarStore.read(folder).name());
            Conflict conflict = store.conflict(MINE).orElseThrow();
            assertEquals(Optional.of(THEIRS), conflict.theirs());
            assertEquals(MINE, conflict.mine());
            assertFalse(conflict.isCopy());
        }
        assertEquals(
                "Mine",
                CellarFolder.of(folder).json(folder.resolve(KEPT)).cellar().name());
    }

    @Test
    void mineChosenMeansTheirsIsInTheHistory() throws IOException {
        try (CellarStore store = openAndChangedByBoth()) {
            store.keepMine(MINE, store.conflict(MINE).orElseThrow());
            assertEquals(Optional.empty(), store.conflict(MINE));
            store.save(MINE.withName("Later"));
        }
        assertEquals("Later", CellarStore.read(folder).name());
        assertTrue(history().containsAll(List.of("Mine", "Theirs")), history().toString());
        assertFalse(Files.exists(folder.resolve(KEPT)));
    }

    @Test
    void theirsChosenMeansMineIsInTheHistory() throws IOException {
        try (CellarStore store = openAndChangedByBoth()) {
            assertEquals(THEIRS, store.takeTheirs(MINE, store.conflict(MINE).orElseThrow()));
            assertEquals(Optional.empty(), store.conflict(THEIRS));
            store.save(THEIRS.withName("Later"));
        }
        assertTrue(history().containsAll(List.of("Mine", "Theirs")), history().toString());
        assertFalse(Files.exists(folder.resolve(KEPT)));
    }

    @Test
    void theirsThatCannotBeReadCannotBeTakenButMineCanStay() throws IOException {
        try (CellarStore store = open()) {
            Files.writeString(folder.resolve("cellar.json"), "half a fi");
            assertThrows(InvalidInput.class, () -> store.save(MINE));
            Conflict conflict = store.conflict(MINE).orElseThrow();
            assertEquals(Optional.empty(), conflict.theirs());
            assertThrows(InvalidInput.class, () -> store.takeTheirs(MINE, conflict));
            assertEquals("half a fi", Files.readString(folder.resolve("cellar.json")));
            store.keepMine(MINE, conflict);
        }
        assertEquals("Mine", CellarStore.read(folder).name());
        try (var kept = Files.list(folder.resolve("history"))) {
            assertTrue(kept.anyMatch(file -> file.toFile().length() == "half a fi".length()), "the other is kept");
        }
    }

    @Test
    void theCopyOfASyncServiceIsFoundAndEitherMayBeChosen() throws IOException {
        for (boolean takeTheirs : List.of(true, false)) {
            RichCellar.folderWith(folder, RichCellar.CELLAR);
            Path copy = folder.resolve("cellar (another machine's copy 2026-03-01).json");
            Files.write(copy, CellarJson.of(THEIRS, "test").bytes());
            assertEquals(
                    1,
                    CellarStore.faults(folder).stream()
                            .filter(fault -> fault.where().contains("copy"))
                            .count());
            try (CellarStore store = open()) {
                Conflict conflict = store.conflict(store.cellar()).orElseThrow();
                assertTrue(conflict.isCopy());
                if (takeTheirs) {
                    store.takeTheirs(store.cellar(), conflict);
                } else {
                    store.keepMine(store.cellar(), conflict);
                }
            }
            Cellar chosen = CellarStore.read(folder);
            assertEquals(takeTheirs ? THEIRS : RichCellar.CELLAR, chosen);
            assertTrue(history().contains("Theirs"), "the copy is kept as a version");
            assertFalse(Files.exists(copy));
            assertTrue(!takeTheirs || history().contains("Under the stairs"));
        }
    }

    @Test
    void whatCouldNotBeSavedIsOfferedWhenTheCellarIsOpenedAgain() throws IOException {
        openAndChangedByBoth().close();
        try (CellarStore store = open()) {
            assertEquals(
                    Optional.of(MINE),
                    store.conflict(store.cellar()).orElseThrow().theirs());
        }
    }

    @Test
    void aFolderThatIsNotTheirsOrMineHasNoConflict() throws IOException {
        Files.writeString(folder.resolve("notes.json"), "{}");
        try (CellarStore store = open()) {
            assertEquals(Optional.empty(), store.conflict(store.cellar()));
        }
    }

    @Test
    void aCellarHeldElsewhereCanBeLookedAtAndIsNotTouched() throws IOException {
        try (CellarStore writer = open();
                CellarStore looker = CellarStore.look(folder, CLOCK)) {
            assertEquals(RichCellar.CELLAR, looker.cellar());
            assertTrue(English.placed(looker.lookOnly().orElseThrow()).contains("only looked at"));
            assertThrows(InvalidInput.class, () -> looker.save(MINE));
            writer.save(MINE);
        }
        assertEquals("Mine", CellarStore.read(folder).name());
    }
}
