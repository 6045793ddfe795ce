package undercroft.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import undercroft.cellar.Cellar;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;
import undercroft.session.BackgroundTasks;
import undercroft.session.FolderRepository;
import undercroft.session.IncomingFiles;
import undercroft.session.Workspace;
import undercroft.store.Export.Replacing;
import undercroft.store.disk.Disk;
import undercroft.store.disk.FaultyDisk;

/**
 * Every call to the disk that a good piece of work makes is made to fail once, each in a run of its own: what was
 * acknowledged stays, what was not is kept in memory, told in a sentence and tried again, and in the end the folder holds
 * what it holds after a good run.
 */
class FailingDiskTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-01T12:00:00Z"), ZoneOffset.UTC);
    private static final String LOFT = "loft";
    private static final TimeSeries LOGGED = TimeSeries.of(new long[] {600, 1200, 1800}, new double[] {11, 12, 13});
    private static final TimeSeries MORE = TimeSeries.of(new long[] {1200, 2400}, new double[] {12.5, 14});
    private static final Cellar NOTHING_YET = Cellar.empty("New", ZoneOffset.UTC);
    private static final String NEW_NAME = "Changed";
    private static final Set<FaultyDisk.Call> ALL_OF_A_WRITE = Set.of(
            FaultyDisk.Call.ENTRY,
            FaultyDisk.Call.CREATE,
            FaultyDisk.Call.WRITE,
            FaultyDisk.Call.FORCE,
            FaultyDisk.Call.CLOSE,
            FaultyDisk.Call.RENAME,
            FaultyDisk.Call.FORCE_FOLDER);

    @TempDir
    Path scratch;

    private int runs;

    /** A piece of work in a fresh folder on a disk. */
    private interface Work {
        void on(FaultyDisk disk, Path folder) throws IOException;
    }

    /** Runs it well to count its calls, then lets one call after the other fail. */
    private void failEach(Work work, Set<FaultyDisk.Call> atLeast) throws IOException {
        FaultyDisk good = FaultyDisk.failingOnce(-1);
        work.on(good, fresh());
        assertTrue(good.calls().containsAll(atLeast), () -> "" + good.calls());
        for (int n = 0; n < good.calls().size(); n++) {
            FaultyDisk failing = FaultyDisk.failingOnce(n);
            try {
                work.on(failing, fresh());
            } catch (InvalidInput | AssertionError wrong) {
                throw new AssertionError("call " + n + " failed: " + calls(failing, n), wrong);
            }
        }
    }

    private static String calls(FaultyDisk disk, int n) {
        List<FaultyDisk.Call> calls = disk.calls();
        return calls.subList(Math.max(0, n - 5), Math.min(n + 1, calls.size())).toString();
    }

    private Path fresh() throws IOException {
        return Files.createDirectory(scratch.resolve("run-" + runs++));
    }

    private static Path cellarIn(Path folder) throws IOException {
        RichCellar.folderWith(folder, RichCellar.CELLAR);
        try (CellarStore store = CellarStore.open(folder, CLOCK, "test")) {
            store.replaceTemperatures(LOFT, LOGGED);
        }
        return folder;
    }

    private static void assertTold(InvalidInput fault) {
        assertTrue(fault.getMessage().contains("a fault of the disk"), fault.getMessage());
        assertFalse(fault.getMessage().contains("\n"), fault.getMessage());
    }

    /** Opens as the old or the new state, each part whole. */
    private static void assertOneOf(Path folder, Cellar before, Cellar after, List<TimeSeries> logs) {
        assertEquals(List.of(), CellarStore.faults(folder));
        Cellar there = CellarStore.read(folder);
        assertTrue(there.equals(before) || there.equals(after), there::name);
        TimeSeries log = CellarStore.temperatures(folder, there).celsius().getOrDefault(LOFT, TimeSeries.empty());
        assertTrue(logs.contains(log), log::toString);
    }

    private static CellarStore open(Path folder, Disk disk) {
        return CellarStore.open(folder, CLOCK, "test", disk);
    }

    /** The next one to work in it finds the new state, and nothing half is left. */
    private static void assertEndsAs(Path folder, Cellar cellar, TimeSeries log) throws IOException {
        open(folder, Disk.REAL).close();
        assertOneOf(folder, cellar, cellar, List.of(log));
        try (Stream<Path> all = Files.walk(folder)) {
            assertEquals(
                    List.of(),
                    all.filter(file -> file.toString().endsWith(".tmp")).toList());
        }
    }

    @Test
    void aSaveIsKeptInMemoryToldTriedAgainAndCanGoElsewhere() throws IOException {
        Cellar after = RichCellar.CELLAR.withName(NEW_NAME);
        TimeSeries grown = LOGGED.mergedWith(MORE);
        failEach(
                (disk, scratchFolder) -> {
                    Path folder = cellarIn(scratchFolder.resolve("cellar"));
                    disk.rest();
                    try (CellarStore store = open(folder, disk)) {
                        BackgroundTasks atOnce = new BackgroundTasks(Runnable::run, Runnable::run);
                        Workspace workspace = new Workspace(new FolderRepository(store), atOnce);
                        disk.goOn();
                        workspace.change("rename", cellar -> cellar.withName(NEW_NAME));
                        workspace.changeTemperatures("import", LOFT, grown);
                        disk.rest();
                        assertEquals(after, workspace.getCellar());
                        assertEquals(grown, workspace.getState().temperatures().get(LOFT));
                        assertOneOf(folder, RichCellar.CELLAR, after, List.of(LOGGED, grown));
                        if (workspace.hasUnsaved()) {
                            assertTold(workspace.saveFaultProperty().get());
                            Path other = scratchFolder.resolve("other");
                            workspace.saveElsewhere(other);
                            assertEndsAs(other, after, grown);
                        }
                        workspace.saveAgain();
                        assertFalse(workspace.hasUnsaved());
                        assertEquals(null, workspace.saveFaultProperty().get());
                    }
                    assertEndsAs(folder, after, grown);
                },
                ALL_OF_A_WRITE);
    }

    @Test
    void anOpeningChangesNothingAndGivesTheLockBack() throws IOException {
        failEach(
                (disk, folder) -> {
                    cellarIn(folder);
                    Files.writeString(folder.resolve("cellar.json.0123456789abcdef.tmp"), "of a dead writer");
                    disk.goOn();
                    try (CellarStore store = open(folder, disk)) {
                        LoggedTemperatures logged = store.temperatures();
                        assertEquals(RichCellar.CELLAR, store.cellar());
                        if (logged.faults().isEmpty()) {
                            assertEquals(LOGGED, logged.celsius().get(LOFT));
                        } else {
                            assertTold(logged.faults().get(0));
                        }
                    } catch (InvalidInput fault) {
                        assertTold(fault);
                    }
                    assertEndsAs(folder, RichCellar.CELLAR, LOGGED);
                },
                Set.of(
                        FaultyDisk.Call.ENTRY,
                        FaultyDisk.Call.READ,
                        FaultyDisk.Call.LOCK,
                        FaultyDisk.Call.LIST,
                        FaultyDisk.Call.DELETE));
    }

    @Test
    void anImportThatFailsIsTakenInTheNextTime() throws IOException {
        TimeSeries grown = LOGGED.mergedWith(MORE);
        failEach(
                (disk, folder) -> {
                    cellarIn(folder);
                    disk.rest();
                    try (CellarStore store = open(folder, disk)) {
                        disk.goOn();
                        try {
                            store.incoming().drop(LOFT, MORE, CLOCK.instant());
                        } catch (InvalidInput fault) {
                            assertTold(fault);
                            disk.rest();
                            store.incoming().drop(LOFT, MORE, CLOCK.instant());
                        }
                        disk.goOn();
                        try {
                            IncomingFiles.takeInAlone(store).faults().forEach(FailingDiskTest::assertTold);
                        } catch (InvalidInput fault) {
                            assertTold(fault);
                        }
                        disk.rest();
                        assertOneOf(folder, RichCellar.CELLAR, RichCellar.CELLAR, List.of(LOGGED, grown));
                        assertEquals(List.of(), IncomingFiles.takeInAlone(store).faults());
                    }
                    assertFalse(Files.exists(folder.resolve("incoming/refused")), "nothing sound is put aside");
                    letAnHourGoBy(folder);
                    assertEndsAs(folder, RichCellar.CELLAR, grown);
                },
                Set.of(
                        FaultyDisk.Call.LIST,
                        FaultyDisk.Call.READ,
                        FaultyDisk.Call.RENAME,
                        FaultyDisk.Call.MAKE_FOLDER));
    }

    /** In {@code incoming}, which no lock is held on, only what is older is taken for a dead writer's. */
    private static void letAnHourGoBy(Path folder) throws IOException {
        try (Stream<Path> all = Files.walk(folder)) {
            for (Path file : all.filter(Files::isRegularFile).toList()) {
                Files.setLastModifiedTime(file, FileTime.from(CLOCK.instant().minus(Duration.ofHours(2))));
            }
        }
    }

    @Test
    void anUpgradeThatFailsLeavesTheOldFileOrTheNewOneWithTheOldOneKept() throws IOException {
        byte[] old;
        try (InputStream in = FailingDiskTest.class.getResourceAsStream("cellar-schema-1.json")) {
            old = in.readAllBytes();
        }
        failEach(
                (disk, folder) -> {
                    cellarIn(folder);
                    Files.write(folder.resolve(CellarFolder.FILE), old);
                    Cellar before = CellarStore.read(folder);
                    Cellar after = before.withName(NEW_NAME);
                    disk.rest();
                    try (CellarStore store = open(folder, disk)) {
                        disk.goOn();
                        try {
                            store.save(after);
                        } catch (InvalidInput fault) {
                            assertTold(fault);
                        }
                        disk.rest();
                        assertOneOf(folder, before, after, List.of(LOGGED));
                        boolean isOld = Arrays.equals(old, Files.readAllBytes(folder.resolve(CellarFolder.FILE)));
                        assertTrue(isOld || isKeptForGood(folder, old), "what an older program can read is there");
                        store.save(after);
                    }
                    assertTrue(isKeptForGood(folder, old));
                    assertEndsAs(folder, after, LOGGED);
                },
                ALL_OF_A_WRITE);
    }

    private static boolean isKeptForGood(Path folder, byte[] old) throws IOException {
        try (Stream<Path> all = Files.list(folder.resolve("history"))) {
            for (Path file : all.filter(each -> each.getFileName().toString().startsWith("cellar-schema-1-"))
                    .toList()) {
                if (Arrays.equals(old, Files.readAllBytes(file))) {
                    return true;
                }
            }
        }
        return false;
    }

    @Test
    void aNewCellarIsMadeOrNotAndCanBeMadeAgain() throws IOException {
        failEach(
                (disk, scratchFolder) -> {
                    Path folder = scratchFolder.resolve("new");
                    try {
                        CellarStore.create(folder, NOTHING_YET, CLOCK, "test", disk)
                                .close();
                    } catch (InvalidInput fault) {
                        assertTold(fault);
                    }
                    if (!Files.exists(folder.resolve(CellarFolder.FILE))) {
                        CellarStore.create(folder, NOTHING_YET, CLOCK, "test", Disk.REAL)
                                .close();
                    }
                    assertEndsAs(folder, NOTHING_YET, TimeSeries.empty());
                },
                ALL_OF_A_WRITE);
    }

    @Test
    void aReportIsWholeInEachFileAndCanBeWrittenAgain() throws IOException {
        String head = "<!DOCTYPE html>\n<html><head><meta name=\"generator\" content=\"Undercroft\"></head>";
        Map<String, String> before = Map.of("index.html", head + "old", "series/ale.csv", "time_utc,lot,old");
        Map<String, String> after = Map.of("index.html", head + "new", "series/ale.csv", "time_utc,lot,new");
        failEach(
                (disk, folder) -> {
                    Export.on(Disk.REAL).texts(folder, before, Replacing.ANY);
                    try {
                        Export.on(disk).texts(folder, after, Replacing.ANY);
                    } catch (InvalidInput fault) {
                        assertTold(fault);
                    }
                    for (String name : before.keySet()) {
                        String there = Files.readString(folder.resolve(name));
                        assertTrue(there.equals(before.get(name)) || there.equals(after.get(name)), there);
                    }
                    Export.on(Disk.REAL).texts(folder, after, Replacing.ANY);
                    for (String name : after.keySet()) {
                        assertEquals(after.get(name), Files.readString(folder.resolve(name)));
                    }
                },
                ALL_OF_A_WRITE);
    }
}
