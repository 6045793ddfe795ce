package undercroft.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import undercroft.cellar.Cellar;
import undercroft.outlook.CellarOutlook;
import undercroft.quantity.InvalidInput;
import undercroft.store.CellarStore;

class OpenCellarTest {
    private static final Instant NOON = Instant.parse("2026-11-25T12:00:00Z");

    @TempDir
    Path folder;

    private final HandWork work = new HandWork();
    private final List<InvalidInput> faults = new ArrayList<>();
    private final HandClock clock = new HandClock(NOON);

    private OpenCellar open(String name) {
        Path cellar = folder.resolve(name);
        CellarStore store = CellarStore.create(cellar, Cellar.empty(name, ZoneOffset.UTC), clock, "test");
        return OpenCellar.of(store, clock, work.threads(), Optional.empty(), faults::add);
    }

    private static Instant lookedAt(OpenCellar cellar) {
        CellarOutlook outlook = cellar.forecasts().outlookProperty().get();
        return outlook == null ? null : outlook.at();
    }

    @Test
    void theClockOfEachCellarRunsWhileItIsOpenAndNoLonger() {
        try (OpenCellar first = open("first")) {
            work.beat();
            assertEquals(NOON, first.ticker().nowProperty().get());
            clock.goOn();
            work.beat();
            assertEquals(clock.instant(), lookedAt(first));
            first.end();
            assertEquals(0, work.running());
            try (OpenCellar second = open("second")) {
                clock.goOn();
                work.beat();
                assertEquals(1, work.running(), "only the open cellar has a clock");
                assertEquals(clock.instant(), lookedAt(second), "the second cellar follows the clock as the first did");
                assertEquals(
                        NOON.plus(Duration.ofMinutes(5)), lookedAt(first), "a closed cellar is worked out no more");
            }
        }
        assertEquals(List.of(), faults);
    }

    @Test
    void theNewestChangeIsOnTheDiskAndTheFolderIsFreeOnceItIsClosed() {
        OpenCellar cellar = open("shelf");
        cellar.workspace().change("rename", each -> each.withName("Loft"));
        assertThrows(InvalidInput.class, () -> CellarStore.open(folder.resolve("shelf"), clock, "test"), "it is held");
        cellar.close();
        cellar.close();
        try (CellarStore again = CellarStore.open(folder.resolve("shelf"), clock, "test")) {
            assertEquals("Loft", again.cellar().name());
        }
    }

    @Test
    void whatIsOnlyLookedAtRefusesEveryChangeAndStaysAsItIs() {
        try (OpenCellar writer = open("shelf");
                OpenCellar looker = OpenCellar.of(
                        CellarStore.look(folder.resolve("shelf"), clock),
                        clock,
                        work.threads(),
                        Optional.empty(),
                        faults::add)) {
            Cellar before = looker.workspace().getCellar();
            assertEquals(true, looker.lookOnly().isPresent());
            assertThrows(InvalidInput.class, () -> looker.workspace().change("rename", each -> each.withName("Loft")));
            assertEquals(before, looker.workspace().getCellar());
            writer.workspace().change("rename", each -> each.withName("Attic"));
            assertEquals("Attic", CellarStore.read(folder.resolve("shelf")).name());
        }
    }

    /** Two batches of the sample have bottles left at that noon. */
    @Test
    void aCellarOfAnEarlierVersionIsToldWhyItsLimitsFellUntilItIsSavedAnew() throws Exception {
        Path cellar = java.nio.file.Files.createDirectories(folder.resolve("old"));
        try (java.io.InputStream sample = CellarStore.class.getResourceAsStream("cellar-schema-1.json")) {
            java.nio.file.Files.copy(sample, cellar.resolve("cellar.json"));
        }
        try (OpenCellar opened = OpenCellar.of(
                CellarStore.open(cellar, clock, "test"), clock, work.threads(), Optional.empty(), faults::add)) {
            InvalidInput line = opened.limitsFell().orElseThrow();
            assertEquals("store.limits-fell", line.key());
            opened.workspace().change("rename", each -> each.withName("Loft"));
            assertEquals(Optional.empty(), opened.limitsFell());
        }
        try (OpenCellar fresh = open("fresh")) {
            assertEquals(Optional.empty(), fresh.limitsFell());
        }
    }
}
