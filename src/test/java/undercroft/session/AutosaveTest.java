package undercroft.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import undercroft.cellar.Cellar;
import undercroft.outlook.SpellSamples;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;
import undercroft.store.CellarStore;
import undercroft.wording.English;

/** What could not be saved is kept, told, tried again and can be saved elsewhere. */
class AutosaveTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-05-01T12:00:00Z"), ZoneOffset.UTC);
    private static final TimeSeries ONE = TimeSeries.of(new long[] {0}, new double[] {10});
    private static final TimeSeries TWO = TimeSeries.of(new long[] {0, 600}, new double[] {10, 11});

    @TempDir
    Path folder;

    private final Broken disk = new Broken(SpellSamples.cellar(120, "room"));
    private final Deque<Runnable> waiting = new ArrayDeque<>();

    /** A repository whose parts fail when told to. */
    private static final class Broken implements CellarRepository {
        private Cellar cellar;
        private final Map<String, TimeSeries> logs = new HashMap<>();
        private final Set<String> failing = new HashSet<>();
        private boolean memoryIsOut;
        private TimeSeries others = TimeSeries.empty();

        private Broken(Cellar cellar) {
            this.cellar = cellar;
        }

        @Override
        public Cellar cellar() {
            return cellar;
        }

        @Override
        public Map<String, TimeSeries> temperatures() {
            return logs;
        }

        @Override
        public List<InvalidInput> faults() {
            return List.of();
        }

        private void mayFail(String part) {
            if (memoryIsOut) {
                throw new OutOfMemoryError("a test");
            }
            if (failing.contains(part)) {
                throw new InvalidInput(part, "fault.not-done", "a test");
            }
        }

        @Override
        public void save(Cellar changed) {
            mayFail("cellar");
            cellar = changed;
        }

        @Override
        public TimeSeries saveTemperatures(String placeId, TimeSeries celsius) {
            mayFail(placeId);
            logs.put(placeId, celsius.mergedWith(others));
            TimeSeries told = others;
            others = TimeSeries.empty();
            return told;
        }

        @Override
        public void saveElsewhere(Path target, Cellar changed, Map<String, TimeSeries> temperatures) {
            mayFail("elsewhere");
        }

        @Override
        public void close() {}
    }

    private Workspace workspace() {
        return new Workspace(disk, new BackgroundTasks(Runnable::run, Runnable::run));
    }

    @Test
    void aTemperatureSaveThatFailedIsTriedAgainWithTheNextEditAndToldUntilThen() {
        Workspace workspace = workspace();
        disk.failing.add("room");
        workspace.changeTemperatures("import", "room", ONE);
        assertEquals("room", workspace.saveFaultProperty().get().where());
        workspace.change("rename", cellar -> cellar.withName("Other"));
        assertEquals("Other", disk.cellar.name(), "what can be saved is saved");
        assertNotNull(workspace.saveFaultProperty().get(), "an edit that was saved does not hide what was not");
        assertTrue(workspace.hasUnsaved());
        disk.failing.clear();
        workspace.change("rename", cellar -> cellar.withName("Third"));
        assertEquals(ONE, disk.logs.get("room"));
        assertNull(workspace.saveFaultProperty().get());
        assertFalse(workspace.hasUnsaved());
    }

    @Test
    void whatIsLeftIsSavedWhenAsked() {
        Workspace workspace = workspace();
        disk.failing.addAll(Set.of("room", "cellar"));
        workspace.changeTemperatures("import", "room", ONE);
        workspace.change("rename", cellar -> cellar.withName("Other"));
        workspace.saveAgain();
        assertTrue(workspace.hasUnsaved());
        disk.failing.clear();
        workspace.saveAgain();
        assertFalse(workspace.hasUnsaved());
        assertEquals("Other", disk.cellar.name());
        assertEquals(ONE, disk.logs.get("room"));
    }

    @Test
    void anEditWaitingToBeSavedIsUnsavedAndManyAreSavedAtOnce() {
        Workspace workspace = new Workspace(disk, new BackgroundTasks(waiting::add, Runnable::run));
        workspace.changeTemperatures("import", "room", ONE);
        workspace.changeTemperatures("import", "room", TWO);
        assertTrue(workspace.hasUnsaved());
        waiting.poll().run();
        assertFalse(workspace.hasUnsaved(), "the first save takes what is newest");
        assertEquals(TWO, disk.logs.get("room"));
        waiting.poll().run();
        assertNull(workspace.saveFaultProperty().get());
    }

    @Test
    void outOfMemoryInASaveIsOneSentenceAndIsTriedAgain() {
        Workspace workspace = workspace();
        disk.memoryIsOut = true;
        workspace.changeTemperatures("import", "room", ONE);
        String said = English.of(workspace.saveFaultProperty().get());
        assertTrue(said.contains("memory"), said);
        assertTrue(workspace.hasUnsaved());
        disk.memoryIsOut = false;
        workspace.saveAgain();
        assertFalse(workspace.hasUnsaved());
    }

    @Test
    void whatAnotherProgramWroteIntoTheLogIsSeenAtOnce() {
        Workspace workspace = workspace();
        disk.others = TimeSeries.of(new long[] {600}, new double[] {11});
        workspace.changeTemperatures("import", "room", ONE);
        assertEquals(TWO, workspace.getState().temperatures().get("room"));
        assertEquals(TWO, disk.logs.get("room"));
        assertFalse(workspace.hasUnsaved());
    }

    @Test
    void onADiskAsWellALineAppendedByAnotherIsTakenInAndALogOfAPlaceThatWentStays() throws IOException {
        Cellar cellar = SpellSamples.cellar(120, "room");
        Path path = folder.resolve("cellar");
        Path log = path.resolve("temperatures/room.csv");
        try (CellarStore store = CellarStore.create(path, cellar, CLOCK, "test")) {
            Workspace workspace =
                    new Workspace(new FolderRepository(store), new BackgroundTasks(Runnable::run, Runnable::run));
            workspace.changeTemperatures("import", "room", TimeSeries.of(new long[] {0}, new double[] {10.00049}));
            Files.writeString(log, "1970-01-01T00:10:00Z,11\n", StandardOpenOption.APPEND);
            workspace.changeTemperatures(
                    "import", "room", TimeSeries.of(new long[] {0, 1200}, new double[] {10.00049, 12}));
            assertEquals(3, workspace.getState().temperatures().get("room").size());
            assertEquals(11, workspace.getState().temperatures().get("room").valueAt(1));
            assertNull(workspace.saveFaultProperty().get());
        }
        assertEquals(4, Files.readAllLines(log).size());
    }

    @Test
    void allIsSavedElsewhereAsACellarOfItsOwn() {
        Cellar cellar = SpellSamples.cellar(120, "room");
        Path elsewhere = folder.resolve("elsewhere");
        try (CellarStore store = CellarStore.create(folder.resolve("cellar"), cellar, CLOCK, "test")) {
            Workspace workspace =
                    new Workspace(new FolderRepository(store), new BackgroundTasks(waiting::add, Runnable::run));
            workspace.change("rename", each -> each.withName("Rescued"));
            workspace.changeTemperatures("import", "room", TWO);
            workspace.saveElsewhere(elsewhere);
            assertThrows(InvalidInput.class, () -> workspace.saveElsewhere(elsewhere), "it is not empty any more");
            assertEquals(cellar.name(), store.cellar().name());
        }
        assertEquals(List.of(), CellarStore.faults(elsewhere));
        Cellar read = CellarStore.read(elsewhere);
        assertEquals("Rescued", read.name());
        assertEquals(TWO, CellarStore.temperatures(elsewhere, read).celsius().get("room"));
    }
}
