package undercroft.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.BlockingQueue;
import java.util.concurrent.LinkedBlockingQueue;
import java.util.concurrent.TimeUnit;
import java.util.function.BooleanSupplier;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import undercroft.cellar.Cellar;
import undercroft.outlook.SpellSamples;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;
import undercroft.store.logger.Choices;
import undercroft.store.logger.LoggerFile;
import undercroft.wording.English;

// What follows works by itself until it is closed.
@SuppressWarnings("try")
class FollowedLogsTest {
    private static final String BEGUN = "time,celsius\n2026-05-01 00:00,10\n2026-05-01 01:00,11\n";

    @TempDir
    Path folder;

    private final BlockingQueue<Runnable> window = new LinkedBlockingQueue<>();
    private final List<InvalidInput> faults = new ArrayList<>();

    private Workspace workspace(Path file) {
        Cellar cellar = SpellSamples.cellar(120, "room");
        Choices choices =
                Choices.from(LoggerFile.inspect("shelf.csv", BEGUN.getBytes(StandardCharsets.UTF_8), ZoneOffset.UTC));
        return SampleWorkspace.of(
                cellar.withPlace(cellar.place("room").withFollowed(Optional.of(choices.followed(file)))));
    }

    private FollowedLogs follow(Workspace workspace) {
        return new FollowedLogs(workspace, new BackgroundTasks(Runnable::run, Runnable::run), window::add, faults::add);
    }

    private static int size(Workspace workspace) {
        return workspace
                .getState()
                .temperatures()
                .getOrDefault("room", TimeSeries.empty())
                .size();
    }

    private void runUntil(BooleanSupplier done) throws InterruptedException {
        for (int i = 0; i < 20 && !done.getAsBoolean(); i++) {
            Runnable next = window.poll(500, TimeUnit.MILLISECONDS);
            if (next != null) {
                next.run();
            }
        }
        assertTrue(done.getAsBoolean());
    }

    @Test
    void whatALoggerAddsIsTakenInAndUndoDoesNotTakeItBack() throws Exception {
        Path file = Files.writeString(folder.resolve("shelf.csv"), BEGUN);
        Workspace workspace = workspace(file);
        workspace.change("rename", cellar -> cellar.withName("Other"));
        try (FollowedLogs followed = follow(workspace)) {
            runUntil(() -> size(workspace) == 2);
            Files.writeString(file, "2026-05-01 02:00,12\n", StandardOpenOption.APPEND);
            runUntil(() -> size(workspace) == 3);
            workspace.undo();
            assertEquals("Test", workspace.getCellar().name());
            assertEquals(3, size(workspace));
            // Cut short and begun anew, as loggers do when they are emptied: what was taken in stays.
            Files.writeString(file, "time,celsius\n2026-05-02 00:00,9\n");
            runUntil(() -> size(workspace) == 4);
        }
        assertEquals(List.of(), faults);
    }

    @Test
    void aFileThatIsNotThereIsOneSentence() throws IOException {
        try (FollowedLogs followed = follow(workspace(folder.resolve("gone.csv")))) {
            assertEquals(1, faults.size());
            assertTrue(English.of(faults.get(0)).contains("Room"));
        }
        faults.clear();
        try (FollowedLogs followed = follow(workspace(folder.resolve("no-folder/gone.csv")))) {
            assertTrue(English.of(faults.get(faults.size() - 1)).contains("cannot be watched"));
        }
    }

    @Test
    void afterFollowingEndedNothingIsTakenIn() throws Exception {
        Path file = Files.writeString(folder.resolve("shelf.csv"), BEGUN);
        Workspace workspace = workspace(file);
        try (FollowedLogs followed = follow(workspace)) {
            runUntil(() -> size(workspace) == 2);
            workspace.change(
                    "stop", cellar -> cellar.withPlace(cellar.place("room").withFollowed(Optional.empty())));
            Files.writeString(file, "2026-05-01 02:00,12\n", StandardOpenOption.APPEND);
            Runnable late = window.poll(3, TimeUnit.SECONDS);
            if (late != null) {
                late.run();
            }
            assertEquals(2, size(workspace));
        }
    }
}
