package undercroft.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import undercroft.cellar.Cellar;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;
import undercroft.store.disk.AtomicFile;
import undercroft.store.disk.Disk;
import undercroft.store.disk.FaultyDisk;
import undercroft.wording.English;

class AtomicFileTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-01T12:00:00Z"), ZoneOffset.UTC);
    private static final Cellar CHANGED = RichCellar.CELLAR.withName("Changed");

    @TempDir
    Path folder;

    @BeforeEach
    void fill() throws IOException {
        RichCellar.folderWith(folder, RichCellar.CELLAR);
    }

    private static FaultyDisk fullFor(String name) {
        return new FaultyDisk(
                "No space left on device",
                (call, path) -> call == FaultyDisk.Call.WRITE
                        && path.getFileName().toString().startsWith(name));
    }

    private static FaultyDisk faulty(FaultyDisk.Call which, String reason) {
        return new FaultyDisk(reason, (call, path) -> call == which);
    }

    private void assertSavingFails(Disk operations, String reason) throws IOException {
        Map<String, String> before = RichCellar.contents(folder);
        try (CellarStore store = CellarStore.open(folder, CLOCK, "test", operations)) {
            InvalidInput fault = assertThrows(InvalidInput.class, () -> store.save(CHANGED));
            assertTrue(English.placed(fault).contains(reason), English.placed(fault));
            assertEquals(RichCellar.CELLAR, store.cellar());
        }
        assertEquals(before, RichCellar.contents(folder));
    }

    @Test
    void aFullDiskLeavesTheOldFileAndNothingElse() throws IOException {
        assertSavingFails(fullFor("cellar.json"), "cellar.json: could not be written (No space left on device)");
    }

    @Test
    void aFullDiskWhileTheEarlierVersionIsKeptLeavesEverythingAsItWas() throws IOException {
        assertSavingFails(fullFor("cellar-2026"), "No space left on device");
    }

    @Test
    void aRefusedRenameLeavesTheOldFileAndNothingElse() throws IOException {
        FaultyDisk held = new FaultyDisk(
                "Held by another program",
                (call, path) -> call == FaultyDisk.Call.RENAME && path.endsWith("cellar.json"));
        assertSavingFails(held, "cellar.json: could not be written (Held by another program)");
    }

    @Test
    void aSystemThatCannotForceFoldersStillSaves() {
        Disk system = new FaultyDisk("", (call, path) -> false) {
            @Override
            public boolean forceFolder(Path path) {
                return false;
            }
        };
        try (CellarStore store = CellarStore.open(folder, CLOCK, "test", system)) {
            store.save(CHANGED);
        }
        assertEquals(CHANGED, CellarStore.read(folder));
    }

    @Test
    void aFolderThatTheDiskDoesNotConfirmIsToldAndForcedAgain() {
        boolean[] failing = {true};
        FaultyDisk disk = new FaultyDisk(
                "Input/output error", (call, path) -> failing[0] && call == FaultyDisk.Call.FORCE_FOLDER);
        try (CellarStore store = CellarStore.open(folder, CLOCK, "test", disk)) {
            InvalidInput fault = assertThrows(InvalidInput.class, () -> store.save(CHANGED));
            assertTrue(
                    English.placed(fault).contains("did not confirm it (Input/output error)"), English.placed(fault));
            assertEquals(CHANGED, store.cellar(), "it is there all the same");
            assertThrows(InvalidInput.class, () -> store.save(CHANGED), "and told until it is confirmed");
            failing[0] = false;
            store.save(CHANGED);
        }
        assertEquals(CHANGED, CellarStore.read(folder));
    }

    @Test
    void afterAFailureTheNextSaveWorks() {
        boolean[] full = {true};
        FaultyDisk disk =
                new FaultyDisk("No space left on device", (call, path) -> full[0] && call == FaultyDisk.Call.WRITE);
        try (CellarStore store = CellarStore.open(folder, CLOCK, "test", disk)) {
            assertThrows(InvalidInput.class, () -> store.save(CHANGED));
            full[0] = false;
            store.save(CHANGED);
        }
        assertEquals(CHANGED, CellarStore.read(folder));
    }

    @Test
    void aTemperatureFileSurvivesAFullDisk() throws IOException {
        TimeSeries first = TimeSeries.of(new long[] {0}, new double[] {12});
        try (CellarStore store = CellarStore.open(folder, CLOCK, "test")) {
            store.merge("loft", first);
        }
        Map<String, String> before = RichCellar.contents(folder);
        try (CellarStore store =
                CellarStore.open(folder, CLOCK, "test", faulty(FaultyDisk.Call.WRITE, "No space left on device"))) {
            TimeSeries more = TimeSeries.of(new long[] {60}, new double[] {13});
            assertThrows(InvalidInput.class, () -> store.merge("loft", more));
            assertEquals(first, store.temperatures("loft"));
        }
        assertEquals(before, RichCellar.contents(folder));
    }

    @Test
    void whatWritersThatDiedLeftIsRemovedWhenTheCellarIsOpened() throws IOException {
        Files.createDirectories(folder.resolve("temperatures"));
        Files.createDirectories(folder.resolve("history"));
        List<String> leftovers = List.of(
                "cellar.json.tmp",
                "cellar.json.0123456789abcdef.tmp",
                "temperatures/loft.csv.fedcba9876543210.tmp",
                "history/cellar-2026-01-01T00-00-00-000Z.json.00000000000000ff.tmp");
        for (String leftover : leftovers) {
            Files.writeString(folder.resolve(leftover), "half of a fi");
        }
        Files.writeString(folder.resolve("mine.tmp"), "a file of the user's");
        CellarStore.open(folder, CLOCK, "test").close();
        assertEquals(
                Set.of("cellar.json", "mine.tmp"), RichCellar.contents(folder).keySet());
    }

    @Test
    void noTwoWritesUseOneNameAndNoneOfThemIsInTheWay() throws IOException {
        Set<String> names = new HashSet<>();
        FaultyDisk disk = new FaultyDisk("", (call, path) -> {
            if (call == FaultyDisk.Call.CREATE) {
                names.add(path.getFileName().toString());
            }
            return false;
        });
        AtomicFile files = new AtomicFile(disk);
        Files.createDirectory(folder.resolve("cellar.json.tmp"));
        for (int i = 0; i < 20; i++) {
            files.replace(folder.resolve("cellar.json"), new byte[] {(byte) i}, "cellar.json");
        }
        assertEquals(20, names.size());
    }

    @Test
    void theFileKeepsItsPermissions() throws IOException {
        Path file = folder.resolve("cellar.json");
        assumeTrue(Files.getFileStore(file).supportsFileAttributeView(PosixFileAttributeView.class));
        Set<PosixFilePermission> shared = PosixFilePermissions.fromString("rw-rw-rw-");
        Files.setPosixFilePermissions(file, shared);
        try (CellarStore store = CellarStore.open(folder, CLOCK, "test")) {
            store.save(CHANGED);
        }
        assertEquals(shared, Files.getPosixFilePermissions(file));
    }

    @Test
    void aFolderThatIsGoneIsNotMadeAgain() throws IOException {
        Path stick = RichCellar.folderWith(folder.resolve("stick"), RichCellar.CELLAR);
        try (CellarStore store = CellarStore.open(stick, CLOCK, "test")) {
            Files.move(stick, folder.resolve("pulled out"));
            assertThrows(InvalidInput.class, () -> store.save(CHANGED));
            assertThrows(InvalidInput.class, () -> store.merge("loft", TimeSeries.empty()));
        }
        assertFalse(Files.exists(stick));
        assertEquals(RichCellar.CELLAR, CellarStore.read(folder.resolve("pulled out")));
    }

    @Test
    void aLinkInTheFolderIsNeitherReadNorWrittenThrough() throws IOException {
        Path secret = Files.writeString(folder.resolve("secret"), "not a cellar's business");
        Path loft = Files.createDirectories(folder.resolve("temperatures")).resolve("loft.csv");
        Files.createSymbolicLink(loft, secret);
        try (CellarStore store = CellarStore.open(folder, CLOCK, "test")) {
            InvalidInput fault = assertThrows(
                    InvalidInput.class,
                    () -> store.replaceTemperatures("loft", TimeSeries.of(new long[] {0}, new double[] {12})));
            assertTrue(English.placed(fault).contains("temperatures/loft.csv: is a link"), English.placed(fault));
            assertEquals(1, store.temperatures().faults().size());
        }
        assertEquals("not a cellar's business", Files.readString(secret));
    }

    @Test
    void aLinkInThePlaceOfTheCellarFileIsRefused() throws IOException {
        Path elsewhere = Files.createDirectory(folder.resolve("elsewhere")).resolve("real.json");
        Files.move(folder.resolve("cellar.json"), elsewhere);
        Files.createSymbolicLink(folder.resolve("cellar.json"), elsewhere);
        InvalidInput fault = assertThrows(InvalidInput.class, () -> CellarStore.open(folder, CLOCK, "test"));
        assertTrue(English.placed(fault).startsWith("cellar.json: is a link"), English.placed(fault));
    }

    @Test
    void foldersInsideMayNotBeLinksEither() throws IOException {
        Path elsewhere = Files.createDirectory(folder.resolve("elsewhere"));
        for (String inside : List.of("history", "temperatures")) {
            Files.createSymbolicLink(folder.resolve(inside), elsewhere);
        }
        try (CellarStore store = CellarStore.open(folder, CLOCK, "test")) {
            assertThrows(InvalidInput.class, () -> store.save(CHANGED));
            TimeSeries one = TimeSeries.of(new long[] {0}, new double[] {12});
            assertThrows(InvalidInput.class, () -> store.replaceTemperatures("loft", one));
        }
        assertEquals(0, elsewhere.toFile().list().length);
    }

    @Test
    void theFolderTheUserNamesMayBeALink() throws IOException {
        Path link = Files.createSymbolicLink(folder.resolve("synced"), Files.createDirectory(folder.resolve("real")));
        RichCellar.folderWith(folder.resolve("real"), RichCellar.CELLAR);
        try (CellarStore store = CellarStore.open(link, CLOCK, "test")) {
            store.save(CHANGED);
        }
        assertEquals(CHANGED, CellarStore.read(folder.resolve("real")));
        assertTrue(Files.isSymbolicLink(link));
    }

    @Test
    void aLinkInThePlaceOfTheLockIsNotFollowed() throws IOException {
        Path target = folder.resolve("target");
        Files.createSymbolicLink(folder.resolve("cellar.lock"), target);
        assertThrows(InvalidInput.class, () -> CellarStore.open(folder, CLOCK, "test"));
        assertFalse(Files.exists(target));
    }
}
