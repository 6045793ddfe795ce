package undercroft.store;

import static java.nio.charset.StandardCharsets.UTF_8;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import undercroft.quantity.InvalidInput;
import undercroft.wording.English;

class CellarLockTest {
    @TempDir
    Path folder;

    @BeforeEach
    void fill() throws IOException {
        RichCellar.folderWith(folder, RichCellar.CELLAR);
    }

    private CellarStore open() {
        return CellarStore.open(folder, Clock.systemUTC(), "test");
    }

    /** Opens a folder in a process of its own and prints how that went. */
    static final class SecondProgram {
        private SecondProgram() {}

        public static void main(String[] arguments) {
            try (CellarStore store = CellarStore.open(Path.of(arguments[0]), Clock.systemUTC(), "second")) {
                System.out.print("opened " + store.cellar().name());
            } catch (InvalidInput fault) {
                System.out.print(English.of(fault));
            }
        }
    }

    private String secondProgram() throws IOException, InterruptedException {
        Process process = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xshare:auto",
                        "-XX:TieredStopAtLevel=1",
                        "-cp",
                        System.getProperty("java.class.path"),
                        SecondProgram.class.getName(),
                        folder.toString())
                .redirectError(ProcessBuilder.Redirect.DISCARD)
                .start();
        String said = new String(process.getInputStream().readAllBytes(), UTF_8);
        assertEquals(0, process.waitFor());
        return said;
    }

    @Test
    void aSecondWindowIsTurnedAwayUntilTheFirstCloses() {
        CellarStore first = open();
        InvalidInput fault = assertThrows(InvalidInput.class, this::open);
        assertTrue(English.of(fault).startsWith("is open in another window or program"), English.of(fault));
        assertThrows(
                InvalidInput.class,
                () -> Rescue.of(folder)
                        .restore(new Version(Instant.EPOCH, folder.resolve("cellar.json")), Clock.systemUTC()));
        assertEquals(RichCellar.CELLAR, CellarStore.read(folder), "reading needs no lock");
        first.close();
        first.close();
        open().close();
    }

    @Test
    void aSecondWindowThroughAnotherPathIsTurnedAwayToo() throws IOException {
        try (CellarStore first = open()) {
            Path detour = folder.resolve("..").resolve(folder.getFileName());
            assertThrows(InvalidInput.class, () -> CellarStore.open(detour, Clock.systemUTC(), "test"));
            assertEquals(RichCellar.CELLAR, first.cellar());
        }
    }

    @Test
    void aSecondProgramIsTurnedAwayEvenAfterASecondWindowWas() throws IOException, InterruptedException {
        try (CellarStore first = open()) {
            assertThrows(InvalidInput.class, this::open);
            assertTrue(secondProgram().startsWith("is open in another window or program"));
            assertEquals(RichCellar.CELLAR, first.cellar());
        }
        assertEquals("opened Under the stairs", secondProgram());
    }

    @Test
    void aFailedOpeningGivesTheLockBack() throws IOException {
        java.nio.file.Files.writeString(folder.resolve("cellar.json"), "{");
        assertThrows(InvalidInput.class, this::open);
        RichCellar.folderWith(folder, RichCellar.CELLAR);
        open().close();
    }

    @Test
    void aClosedStoreSavesNoMore() {
        CellarStore store = open();
        store.close();
        assertThrows(IllegalStateException.class, () -> store.save(RichCellar.CELLAR.withName("Late")));
        assertEquals(RichCellar.CELLAR, CellarStore.read(folder));
    }
}
