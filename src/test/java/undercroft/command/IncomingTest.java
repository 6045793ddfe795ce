package undercroft.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import undercroft.catalogue.LightPlace;
import undercroft.cellar.Cellar;
import undercroft.cellar.LightSetting;
import undercroft.cellar.Place;
import undercroft.cellar.TemperatureSource;
import undercroft.session.IncomingFiles;
import undercroft.store.CellarStore;

/** What other programs put into {@code incoming}. */
class IncomingTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-11-22T12:00:00Z"), ZoneOffset.UTC);

    @TempDir
    Path scratch;

    private Path folder;
    private Path log;

    @BeforeEach
    void aCellarWithOnePlace() throws IOException {
        folder = scratch.resolve("cellar");
        Place loft = new Place(
                "loft", "Loft", new TemperatureSource.FixedGuess(18, 3), 3, LightSetting.usual(LightPlace.DARK));
        CellarStore.create(folder, Cellar.empty("Test", ZoneOffset.UTC).withPlace(loft), CLOCK, "test")
                .close();
        log = scratch.resolve("logger.csv");
        Files.writeString(log, "time;temperature °C\n2026-11-21 20:00;7,4\n2026-11-21 20:30;7,5\n");
    }

    private List<String> files(String inside) throws IOException {
        try (Stream<Path> all = Files.walk(folder.resolve("incoming"))) {
            return all.filter(Files::isRegularFile)
                    .map(file -> folder.relativize(file).toString())
                    .filter(name -> name.startsWith(inside))
                    .toList();
        }
    }

    @Test
    void anImportWhileTheCellarIsOpenWaitsThereAndIsTakenInByWhoeverHasIt() throws IOException {
        try (CellarStore open = CellarStore.open(folder, CLOCK, "test")) {
            Terminal done = Terminal.run(scratch, "import", folder.toString(), log.toString(), "--place", "loft");
            assertEquals(0, done.code(), done.err());
            assertTrue(done.out().contains("open elsewhere"), done.out());
            assertEquals(1, files("incoming/loft/").size());
            IncomingFiles.Taken taken = IncomingFiles.takeInAlone(open);
            assertEquals(1, taken.celsius().size());
            assertEquals(2, open.temperatures("loft").size());
            assertEquals(
                    new TemperatureSource.Logged(), open.cellar().place("loft").temperature());
            assertEquals(List.of(), files("incoming/loft/"));
            assertEquals(1, files("incoming/done/loft/").size());
            assertTrue(IncomingFiles.takeInAlone(open).isNothing(), "once is enough");
        }
    }

    @Test
    void ofWhatWasTakenInTheNewestStay() throws IOException {
        Path done = Files.createDirectories(folder.resolve("incoming/done/loft"));
        for (int i = 0; i < 2_005; i++) {
            Path old = Files.createFile(done.resolve("log-" + i + ".csv"));
            // The names do not tell the age: the last made are the oldest here.
            Files.setLastModifiedTime(old, FileTime.fromMillis(1_700_000_000_000L - 1_000L * i));
        }
        Files.createDirectories(done.resolve("a-folder"));
        CellarStore.open(folder, CLOCK, "test").close();
        List<String> left = files("incoming/done/loft/");
        assertEquals(2_000, left.size());
        assertTrue(left.contains("incoming/done/loft/log-0.csv"));
        assertFalse(left.contains("incoming/done/loft/log-2004.csv"));
        assertTrue(Files.isDirectory(done.resolve("a-folder")));
    }

    @Test
    void aFileThatLeavesSomethingOpenIsRefusedKeptAndTold() throws IOException {
        Path in = Files.createDirectories(folder.resolve("incoming/loft"));
        Files.writeString(in.resolve("a.csv"), "time,value\n2026-11-21 20:00,0.55\n2026-11-21 20:30,0.56\n");
        Files.writeString(in.resolve("b.csv"), "nothing at all\n");
        Files.copy(log, in.resolve("c.csv"));
        try (CellarStore open = CellarStore.open(folder, CLOCK, "test")) {
            IncomingFiles.Taken taken = IncomingFiles.takeInAlone(open);
            assertEquals(2, taken.faults().size());
            assertEquals(2, open.temperatures("loft").size());
        }
        assertEquals(2, files("incoming/refused/loft/").size());
    }

    @Test
    void aLinkInItLeadsNowhere() throws IOException {
        Path outside = Files.createDirectory(scratch.resolve("outside"));
        Files.copy(log, outside.resolve("c.csv"));
        Files.createDirectories(folder.resolve("incoming"));
        Files.createSymbolicLink(folder.resolve("incoming/loft"), outside);
        try (CellarStore open = CellarStore.open(folder, CLOCK, "test")) {
            assertTrue(IncomingFiles.takeInAlone(open).isNothing());
        }
        assertTrue(Files.exists(outside.resolve("c.csv")));
        Terminal drop;
        try (CellarStore open = CellarStore.open(folder, CLOCK, "test")) {
            assertFalse(open.lookOnly().isPresent());
            drop = Terminal.run(scratch, "import", folder.toString(), log.toString(), "--place", "loft");
        }
        assertEquals(2, drop.code(), drop.out());
        try (Stream<Path> there = Files.list(outside)) {
            assertEquals(1, there.count(), "nothing is written through the link");
        }
    }
}
