package undercroft.command;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import undercroft.cellar.Batch;
import undercroft.cellar.FittedGauge;
import undercroft.cellar.Lot;
import undercroft.cellar.Reading;
import undercroft.demo.DemoShelf;
import undercroft.store.CellarStore;

class ExperimentCommandsTest {
    private static final String AT = DemoShelf.NOW.toString();

    @TempDir
    Path scratch;

    private Path folder;
    private Batch batch;

    @BeforeEach
    void anExperimentOnABatchOfTheDemo() {
        folder = scratch.resolve("cellar");
        batch = DemoShelf.cellar().batches().stream()
                .filter(each -> each.cappedAt()
                                .filter(capped -> capped.isBefore(DemoShelf.NOW.minus(Duration.ofDays(30))))
                                .isPresent()
                        && each.leftAt(DemoShelf.NOW) > 2)
                .findFirst()
                .orElseThrow();
        Instant capped = batch.cappedAt().orElseThrow();
        Lot lot = batch.lots().get(0);
        List<Reading> readings = new ArrayList<>();
        for (int day = 2; day <= 20; day += 2) {
            readings.add(
                    new Reading.Gauge(capped.plus(Duration.ofDays(day)), lot.id(), "dial", 0.1 * Math.min(day, 14)));
        }
        try (CellarStore store = CellarStore.create(
                folder,
                DemoShelf.cellar()
                        .withBatch(batch.withLot(lot.withGauge(new FittedGauge("dial", capped)))
                                .withReadings(readings)),
                Clock.fixed(DemoShelf.NOW, ZoneOffset.UTC),
                "test")) {
            DemoShelf.temperatures().forEach(store::merge);
        }
    }

    @Test
    void anExperimentIsExportedAndItsFileChecked() throws IOException {
        Path file = scratch.resolve("experiment.csv");
        Terminal export = Terminal.run(
                scratch, "export-experiment", folder.toString(), batch.id(), "--out", file.toString(), "--at", AT);
        assertEquals(0, export.code(), export.err());
        assertTrue(export.out().contains("10 readings up to day 20"), export.out());
        assertTrue(export.out().contains("Estimate only"), export.out());
        Terminal check = Terminal.run(scratch, "check-experiment", file.toString());
        assertEquals(0, check.code(), check.err());
        assertTrue(check.out().startsWith("No fault found in " + file), check.out());
        assertTrue(check.out().contains("10 readings up to day 20"), check.out());
        Files.writeString(file, Files.readString(file).replace("fill,,", "fill,,-"));
        Terminal faulty = Terminal.run(scratch, "check-experiment", file.toString());
        assertEquals(2, faulty.code());
        assertTrue(faulty.out().matches("(?s).*line \\d+: .*outside.*"), faulty.out());
    }

    @Test
    void aBatchWithoutAGaugeAndAFileThatIsNotThereAreToldInOneSentence() {
        String other = DemoShelf.cellar().batches().stream()
                .map(Batch::id)
                .filter(id -> !id.equals(batch.id()))
                .findFirst()
                .orElseThrow();
        Path file = scratch.resolve("none.csv");
        Terminal none = Terminal.run(
                scratch, "export-experiment", folder.toString(), other, "--out", file.toString(), "--at", AT);
        assertEquals(2, none.code());
        assertTrue(none.err().contains("no gauge was fitted"), none.err());
        assertFalse(Files.exists(file));
        Terminal gone = Terminal.run(scratch, "check-experiment", file.toString());
        assertEquals(2, gone.code());
        assertEquals(1, gone.err().lines().count(), gone.err());
    }

    @Test
    void aGaugesOwnFileBecomesReadingsThatTellSomethingAndOnlyOnce() throws IOException {
        Instant begin = batch.cappedAt().orElseThrow().plus(Duration.ofDays(21));
        StringBuilder text = new StringBuilder("time,pressure\n");
        for (int i = 0; i < 24 * 12; i++) {
            text.append(begin.plusSeconds(300L * i))
                    .append(',')
                    .append(20 + i / 72)
                    .append(".5\n");
        }
        Path log = Files.writeString(scratch.resolve("gauge.csv"), text);
        String bottle = batch.id() + "/" + batch.lots().get(0).id();
        String[] line = {
            "import", folder.toString(), "--gauge", bottle, "--unit", "psi", "--column", "pressure", log.toString()
        };
        Terminal first = Terminal.run(scratch, line);
        assertEquals(0, first.code(), first.err());
        assertTrue(first.out().contains("288 values in the file, 4 new readings"), first.out());
        List<Reading> readings = CellarStore.read(folder).batch(batch.id()).readings();
        assertEquals(14, readings.size());
        // 20.5 psi are 1.4134 bar (NIST SP 811).
        assertEquals(1.413, ((Reading.Gauge) readings.get(10)).gaugeBar(), 0.001);
        Terminal again = Terminal.run(scratch, line);
        assertTrue(again.out().contains("0 new readings"), again.out());
        assertEquals(14, CellarStore.read(folder).batch(batch.id()).readings().size());
        assertEquals(
                2,
                Terminal.run(scratch, "import", folder.toString(), "--gauge", "x", log.toString())
                        .code());
        assertEquals(
                2,
                Terminal.run(scratch, "import", folder.toString(), log.toString())
                        .code());
    }
}
