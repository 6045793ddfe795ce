package undercroft.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.json.JsonMapper;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import undercroft.catalogue.FillingMethod;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Origin;
import undercroft.cellar.Reading;
import undercroft.quantity.InvalidInput;
import undercroft.store.disk.FaultyDisk;
import undercroft.store.json.CellarJson;
import undercroft.wording.English;

/** Files of every schema there was: one sample of each lies beside this class and is never written anew. */
class SchemaTest {
    private static final Instant NOW = Instant.parse("2026-03-01T12:00:00Z");
    private static final Clock CLOCK = Clock.fixed(NOW, ZoneOffset.UTC);

    @TempDir
    Path folder;

    private static byte[] sample(int schema) {
        try (InputStream in = SchemaTest.class.getResourceAsStream("cellar-schema-" + schema + ".json")) {
            return in.readAllBytes();
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private void put(byte[] json) throws IOException {
        Files.write(folder.resolve("cellar.json"), json);
    }

    private List<Path> backups() throws IOException {
        try (Stream<Path> all = Files.list(folder.resolve("history"))) {
            return all.filter(file -> file.getFileName().toString().startsWith("cellar-schema-1-"))
                    .toList();
        }
    }

    @Test
    void theSampleOfSchemaTwoIsWhatIsWrittenNow() {
        assertEquals(
                new String(sample(2), StandardCharsets.UTF_8), RichCellar.json(), "the format changed: is it still 2?");
    }

    @Test
    void whatSchemaOneHeldIsAllThere() {
        Cellar old = CellarJson.read(sample(1), "cellar.json").cellar();
        Batch pale = old.batch("pale");
        assertEquals(
                List.of("sunday", "easter"),
                old.servings().stream().map(each -> each.id()).toList());
        assertEquals(Optional.of("shed"), old.servings().get(0).placeId());
        assertEquals(1.0105, pale.beer().gravityAtBottling().getAsDouble());
        assertEquals(1.01, pale.beer().expectedFinalGravity().getAsDouble());
        assertEquals(RichCellar.CELLAR.batch("pale").beer().kind(), pale.beer().kind());
        assertEquals(RichCellar.CELLAR.batch("pale").yeast(), pale.yeast());
        assertEquals(FillingMethod.FOAM_CAPPED, old.batch("next").fillingMethod());
        Reading.Gauge gauge = (Reading.Gauge) pale.readings().get(0);
        assertEquals(0.85, gauge.gaugeBar());
        assertEquals("gauge 1", gauge.gauge());
        assertEquals("gauge 1", gauge.bottle(), "the gauge stands for the bottle it is fitted to");
        assertEquals(Origin.UNTOLD, pale.readings().get(1).origin());
        assertEquals(
                RichCellar.CELLAR.batch("pale").readings().get(3).at(),
                pale.readings().get(2).at());
    }

    @Test
    void everyNumberOfSchemaTwoTellsItsUnit() throws IOException {
        List<String> bare = new ArrayList<>();
        collect(new JsonMapper().readTree(sample(2)), "", bare);
        assertEquals(List.of(), bare);
    }

    /** Counts and shares have no unit; specific gravity and lux are their own. */
    private static void collect(JsonNode node, String key, List<String> bare) {
        if (node.isNumber()
                && !key.matches("(?i).*(litres|grams|celsius|kelvin|bar|percent|ibu|ebc|volumes|hours|metres|lux)")
                && !key.matches(
                        "(?i).*(specificGravity.*|ReducedHopShare|count|bottles|schema|PerDay|CelsiusAtCapping)")
                && !key.matches("low|median|high")) {
            bare.add(key);
        }
        node.properties().forEach(field -> collect(field.getValue(), field.getKey(), bare));
        if (node.isArray()) {
            node.forEach(each -> collect(each, key, bare));
        }
    }

    @Test
    void lookingAtSchemaOneWritesNothing() throws IOException {
        put(sample(1));
        try (CellarStore store = CellarStore.open(folder, CLOCK, "test")) {
            store.save(store.cellar());
        }
        assertArrayEquals(sample(1), Files.readAllBytes(folder.resolve("cellar.json")));
    }

    @Test
    void theFirstSaveUpgradesAfterABackupThatIsNeverPruned() throws IOException {
        put(sample(1));
        Instant[] now = {NOW};
        Clock clock = new Clock() {
            @Override
            public java.time.ZoneId getZone() {
                return ZoneOffset.UTC;
            }

            @Override
            public Clock withZone(java.time.ZoneId zone) {
                return this;
            }

            @Override
            public Instant instant() {
                return now[0];
            }
        };
        try (CellarStore store = CellarStore.open(folder, clock, "test")) {
            for (int day = 0; day < 100; day++) {
                store.save(store.cellar().withName("Day " + day));
                now[0] = now[0].plus(Duration.ofDays(1));
            }
        }
        assertEquals(
                2,
                new JsonMapper()
                        .readTree(folder.resolve("cellar.json").toFile())
                        .get("schema")
                        .intValue());
        assertEquals(1, backups().size());
        assertArrayEquals(sample(1), Files.readAllBytes(backups().get(0)));
    }

    @Test
    void aBackupThatCannotBeWrittenStopsTheUpgrade() throws IOException {
        put(sample(1));
        FaultyDisk full = new FaultyDisk(
                "No space left on device",
                (call, path) -> call == FaultyDisk.Call.WRITE && path.toString().contains("schema-1"));
        try (CellarStore store = CellarStore.open(folder, CLOCK, "test", full)) {
            Cellar changed = store.cellar().withName("Changed");
            InvalidInput fault = assertThrows(InvalidInput.class, () -> store.save(changed));
            assertTrue(English.placed(fault).contains("No space left on device"), English.placed(fault));
        }
        assertArrayEquals(sample(1), Files.readAllBytes(folder.resolve("cellar.json")));
    }

    @Test
    void unknownKeysOfSchemaOneOutliveTheUpgrade() throws IOException {
        String json = new String(sample(1), StandardCharsets.UTF_8)
                .replace("\"barGauge\": 0.85", "\"barGauge\": 0.85, \"serial\": 7")
                .replace("\"id\": \"sunday\"", "\"id\": \"sunday\", \"mood\": \"warm\"");
        put(json.getBytes(StandardCharsets.UTF_8));
        try (CellarStore store = CellarStore.open(folder, CLOCK, "test")) {
            store.save(store.cellar().withName("Changed"));
        }
        JsonNode after = new JsonMapper().readTree(folder.resolve("cellar.json").toFile());
        assertEquals(7, after.at("/batches/0/readings/0/serial").intValue());
        assertEquals(0.85, after.at("/batches/0/readings/0/gaugeBar").doubleValue());
        assertEquals("warm", after.at("/servings/0/mood").textValue());
        assertTrue(after.at("/pours").isMissingNode());
    }

    @Test
    void aFaultInSchemaOneIsToldByTheKeyThatStandsThere() {
        String json = new String(sample(1), StandardCharsets.UTF_8)
                .replace("\"barGauge\": 0.85", "\"barGauge\": 85")
                .replace("\"batch\": \"pale\"", "\"batch\": 7");
        List<InvalidInput> faults = new ArrayList<>();
        CellarJson.read(json.getBytes(StandardCharsets.UTF_8), "cellar.json", faults);
        assertEquals(
                List.of(
                        "cellar.json: batches[0].readings[0].barGauge",
                        "cellar.json: pours[0].batch",
                        "cellar.json: pours[1].batch"),
                faults.stream().map(InvalidInput::where).toList());
    }

    @Test
    void aNewerSchemaOpensToBeLookedAtAndIsNeverWritten() throws IOException {
        byte[] newer =
                RichCellar.json().replace("\"schema\": 2", "\"schema\": 3").getBytes(StandardCharsets.UTF_8);
        put(newer);
        assertEquals(RichCellar.CELLAR, CellarStore.read(folder));
        try (CellarStore store = CellarStore.open(folder, CLOCK, "test")) {
            assertEquals(RichCellar.CELLAR, store.cellar());
            String said = English.placed(store.lookOnly().orElseThrow());
            assertTrue(said.contains("is 3, written by a newer version"), said);
            assertThrows(InvalidInput.class, () -> store.save(RichCellar.CELLAR.withName("Changed")));
            assertThrows(
                    InvalidInput.class, () -> store.replaceTemperatures("loft", undercroft.series.TimeSeries.empty()));
        }
        assertArrayEquals(newer, Files.readAllBytes(folder.resolve("cellar.json")));
        assertEquals(
                1,
                CellarStore.faults(folder).stream()
                        .filter(fault -> English.placed(fault).contains("newer version"))
                        .count());
    }

    @Test
    void aNewerSchemaThatCannotBeReadSaysThatAndNothingElse() throws IOException {
        put("{\"schema\": 3, \"lager\": []}".getBytes(StandardCharsets.UTF_8));
        InvalidInput fault = assertThrows(InvalidInput.class, () -> CellarStore.read(folder));
        assertTrue(English.placed(fault).contains("is 3, written by a newer version"), English.placed(fault));
    }
}
