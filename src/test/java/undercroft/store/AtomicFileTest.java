package undercroft.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFileAttributeView;
import java.nio.file.attribute.PosixFilePermission;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import undercroft.cellar.Cellar;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;
import undercroft.store.disk.FileOperations;

class AtomicFileTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-01T12:00:00Z"), ZoneOffset.UTC);
    private static final Cellar CHANGED = RichCellar.CELLAR.withName("Changed");

    @TempDir
    Path folder;

    @BeforeEach
    void fill() throws IOException {
        RichCellar.folderWith(folder, RichCellar.CELLAR);
    }

    /** Half of the file is written, then the disk is full; only for names that end so. */
    private record FullDisk(String suffix) implements FileOperations {
        @Override
        public void write(Path file, ByteBuffer content) throws IOException {
            boolean full = file.toString().endsWith(suffix);
            FileOperations.super.write(file, full ? content.slice(0, content.remaining() / 2) : content);
            if (full) {
                throw new IOException("No space left on device");
            }
        }
    }

    private record NoRename(String suffix) implements FileOperations {
        @Override
        public void rename(Path from, Path to) throws IOException {
            if (to.toString().endsWith(suffix)) {
                throw new IOException("Held by another program");
            }
            FileOperations.super.rename(from, to);
        }
    }

    private record NoFolderSync() implements FileOperations {
        @Override
        public void forceFolder(Path path) throws IOException {
            throw new IOException("Is a directory");
        }
    }

    private void assertSavingFails(FileOperations operations, String reason) throws IOException {
        Map<String, String> before = RichCellar.contents(folder);
        try (CellarStore store = CellarStore.open(folder, CLOCK, "test", operations)) {
            InvalidInput fault = assertThrows(InvalidInput.class, () -> store.save(CHANGED));
            assertTrue(fault.getMessage().contains(reason), fault.getMessage());
            assertEquals(RichCellar.CELLAR, store.cellar());
        }
        assertEquals(before, RichCellar.contents(folder));
    }

    @Test
    void aFullDiskLeavesTheOldFileAndNothingElse() throws IOException {
        assertSavingFails(
                new FullDisk("cellar.json.tmp"), "cellar.json: could not be written (No space left on device)");
    }

    @Test
    void aFullDiskWhileTheEarlierVersionIsKeptLeavesEverythingAsItWas() throws IOException {
        assertSavingFails(new FullDisk("000Z.json.tmp"), "No space left on device");
    }

    @Test
    void aRefusedRenameLeavesTheOldFileAndNothingElse() throws IOException {
        assertSavingFails(new NoRename("cellar.json"), "cellar.json: could not be written (Held by another program)");
    }

    @Test
    void aSystemThatCannotForceFoldersStillSaves() {
        try (CellarStore store = CellarStore.open(folder, CLOCK, "test", new NoFolderSync())) {
            store.save(CHANGED);
        }
        assertEquals(CHANGED, CellarStore.read(folder));
    }

    @Test
    void afterAFailureTheNextSaveWorks() {
        boolean[] full = {true};
        FileOperations once = new FileOperations() {
            @Override
            public void write(Path file, ByteBuffer content) throws IOException {
                if (full[0]) {
                    throw new IOException("No space left on device");
                }
                FileOperations.super.write(file, content);
            }
        };
        try (CellarStore store = CellarStore.open(folder, CLOCK, "test", once)) {
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
        try (CellarStore store = CellarStore.open(folder, CLOCK, "test", new FullDisk(".tmp"))) {
            TimeSeries more = TimeSeries.of(new long[] {60}, new double[] {13});
            assertThrows(InvalidInput.class, () -> store.merge("loft", more));
            assertEquals(first, store.temperatures("loft"));
        }
        assertEquals(before, RichCellar.contents(folder));
    }

    @Test
    void aTemporaryFileLeftByACrashIsNoHindrance() throws IOException {
        Files.writeString(folder.resolve("cellar.json.tmp"), "half of a fi");
        try (CellarStore store = CellarStore.open(folder, CLOCK, "test")) {
            store.save(CHANGED);
        }
        assertEquals(CHANGED, CellarStore.read(folder));
        assertEquals(2, RichCellar.contents(folder).size(), "the cellar and its earlier version");
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
    void aLinkedFileStaysALink() throws IOException {
        Path elsewhere = Files.createDirectory(folder.resolve("elsewhere")).resolve("real.json");
        Files.move(folder.resolve("cellar.json"), elsewhere);
        Files.createSymbolicLink(folder.resolve("cellar.json"), elsewhere);
        try (CellarStore store = CellarStore.open(folder, CLOCK, "test")) {
            store.save(CHANGED);
        }
        assertTrue(Files.isSymbolicLink(folder.resolve("cellar.json")));
        assertEquals(CHANGED, CellarStore.read(folder));
    }
}
