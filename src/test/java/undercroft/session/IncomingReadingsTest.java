package undercroft.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import undercroft.cellar.Batch;
import undercroft.cellar.Origin;
import undercroft.cellar.Reading;
import undercroft.quantity.InvalidInput;
import undercroft.store.CellarStore;
import undercroft.store.RichCellar;
import undercroft.wording.Messages;

/** Readings that other programs put into {@code incoming/readings}. */
class IncomingReadingsTest {
    private static final Clock CLOCK = Clock.fixed(Instant.parse("2026-03-01T12:00:00Z"), ZoneOffset.UTC);

    /** As the README documents it, not as the program would write it. */
    private static final String TWO = """
            {"batch": "pale", "readings": [
              {"kind": "gauge", "at": "2026-02-20T08:00:00Z", "lot": "brown", "instrument": "gauge 2", "gaugeBar": 2.05},
              {"kind": "gravity", "at": "2026-02-20T08:10:00Z", "specificGravity": 1.0085}
            ]}
            """;

    private static final List<Reading> BOTH = List.of(
            new Reading.Gauge(Instant.parse("2026-02-20T08:00:00Z"), "brown", 2.05, Origin.instrument("gauge 2")),
            new Reading.Density(Instant.parse("2026-02-20T08:10:00Z"), 1.0085));

    @TempDir
    Path scratch;

    private Path folder;
    private final List<InvalidInput> told = new ArrayList<>();
    private final HandWork work = new HandWork();
    private final HandClock clock = new HandClock(CLOCK.instant());

    @BeforeEach
    void aCellar() {
        folder = scratch.resolve("cellar");
        CellarStore.create(folder, RichCellar.CELLAR, CLOCK, "test").close();
    }

    private void drop(String name, String text) throws IOException {
        Files.writeString(
                Files.createDirectories(folder.resolve("incoming/readings")).resolve(name), text);
    }

    private List<String> files() throws IOException {
        try (Stream<Path> all = Files.walk(folder.resolve("incoming"))) {
            return all.filter(Files::isRegularFile)
                    .map(file -> folder.relativize(file).toString())
                    .sorted()
                    .toList();
        }
    }

    private static void assertHasBothOnce(Batch batch) {
        List<Reading> all = new ArrayList<>(RichCellar.CELLAR.batch("pale").readings());
        all.addAll(BOTH);
        assertEquals(all, batch.readings());
    }

    @Test
    void aloneTheyAreSavedOnceAndTheirFileMovedAside() throws IOException {
        drop("a.json", TWO);
        drop("b.json", TWO);
        try (CellarStore store = CellarStore.open(folder, CLOCK, "test")) {
            assertEquals(List.of(), IncomingFiles.takeInAlone(store).faults());
            assertTrue(IncomingFiles.takeInAlone(store).isNothing());
        }
        assertHasBothOnce(CellarStore.read(folder).batch("pale"));
        assertEquals(List.of("incoming/done/readings/a.json", "incoming/done/readings/b.json"), files());
    }

    @Test
    void inAWindowTheyComeAtTheNextBeatAndUndoKeepsThem() throws IOException {
        try (OpenCellar open = OpenCellar.of(
                CellarStore.open(folder, CLOCK, "test"), clock, work.threads(), Optional.empty(), told::add)) {
            open.workspace().change("rename", cellar -> cellar.withName("Renamed"));
            drop("a.json", TWO);
            assertTrue(IncomingFiles.takeIn(CellarStore.look(folder, CLOCK)).isNothing(), "who only looks takes none");
            clock.goOn();
            work.beat();
            assertHasBothOnce(open.workspace().getCellar().batch("pale"));
            assertHasBothOnce(CellarStore.read(folder).batch("pale"));
            assertEquals(List.of("incoming/done/readings/a.json"), files());
            open.workspace().undo();
            assertHasBothOnce(open.workspace().getCellar().batch("pale"));
        }
        assertEquals(RichCellar.CELLAR.name(), CellarStore.read(folder).name());
        assertHasBothOnce(CellarStore.read(folder).batch("pale"));
        assertEquals(List.of(), told);
    }

    @Test
    void aFileStaysWhileItsReadingsAreNotSaved() throws IOException {
        drop("a.json", TWO);
        try (CellarStore store = CellarStore.open(folder, CLOCK, "test")) {
            IncomingFiles.Taken taken = IncomingFiles.takeIn(store);
            IncomingFiles.settle(store, taken.readings());
            assertEquals(List.of("incoming/readings/a.json"), files());
        }
    }

    @Test
    void whatCannotBeTakenIsToldKeptAndChangesNothing() throws IOException {
        drop("1.json", "");
        drop("2.json", "{\"batch\": \"pale\", \"readings\": []}");
        drop("3.json", TWO.replace("\"pale\"", "\"no-such\""));
        drop("4.json", TWO.replace("brown", "blue"));
        drop("5.json", TWO.replace("2.05", "205"));
        drop("6.json", TWO.replace("2026-02-20T08:10", "2025-02-20T08:10"));
        drop("7.json", TWO.replace("gravity", "density"));
        drop("8.json", "[" + TWO + "]");
        try (CellarStore store = CellarStore.open(folder, CLOCK, "test")) {
            told.addAll(IncomingFiles.takeInAlone(store).faults());
        }
        assertEquals(RichCellar.CELLAR, CellarStore.read(folder));
        assertEquals(8, told.size());
        assertTrue(files().stream().allMatch(name -> name.startsWith("incoming/refused/readings/")), "" + files());
        String third = Messages.english().fault(told.get(2));
        assertTrue(third.startsWith("incoming/readings/3.json") && third.contains("no-such"), third);
        String fifth = Messages.english().fault(told.get(4));
        assertTrue(fifth.contains("gaugeBar") && fifth.contains("16"), fifth);
    }
}
