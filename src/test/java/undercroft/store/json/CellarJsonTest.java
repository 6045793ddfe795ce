package undercroft.store.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import undercroft.catalogue.CoolingMedium;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Lot;
import undercroft.cellar.Serving;
import undercroft.cellar.Settings;
import undercroft.cellar.TaskNote;
import undercroft.cellar.TemperatureSource;
import undercroft.quantity.UnitSystem;
import undercroft.store.RichCellar;

class CellarJsonTest {
    private static final String FILE = "cellar.json";

    private static CellarJson read(String json) {
        return CellarJson.read(json.getBytes(StandardCharsets.UTF_8), FILE);
    }

    private static JsonNode saved(CellarJson before, Cellar changed) throws IOException {
        return new ObjectMapper().readTree(before.with(changed, "a test").bytes());
    }

    @Test
    void aCellarOfEveryKindComesBackAsItWas() {
        assertEquals(RichCellar.CELLAR, read(RichCellar.json()).cellar());
    }

    @Test
    void aCellarReadAndWrittenAgainHasTheSameBytes() {
        CellarJson read = read(RichCellar.json());
        assertEquals(
                RichCellar.json(), new String(read.with(read.cellar(), "a test").bytes(), StandardCharsets.UTF_8));
    }

    @Test
    void kindsAndIdsAndUnitsStandInTheText() throws IOException {
        JsonNode json = new ObjectMapper().readTree(RichCellar.json());
        assertEquals(2, json.at("/schema").intValue());
        assertEquals("logged", json.at("/places/0/temperature/kind").textValue());
        assertEquals(11.5, json.at("/places/1/temperature/celsius").doubleValue());
        assertEquals("08-03", json.at("/places/2/temperature/warmestDay").textValue());
        assertEquals(18.9, json.at("/batches/0/priming/beerLitres").doubleValue());
        assertEquals("2026-01-10T15:00:00Z", json.at("/batches/0/cappedAt").textValue());
        assertEquals("closed-box", json.at("/batches/0/lots/0/stays/1/cover").textValue());
        assertEquals(
                List.of("gauge", "gauge", "squeeze", "opened", "gravity"),
                json.at("/batches/0/readings").findValuesAsText("kind"));
        assertTrue(json.at("/batches/1/cappedAt").isNull());
    }

    @Test
    void whatMayBeLeftOutMayBeLeftOut() {
        Cellar cellar = read("""
                {"schema": 1, "name": "Bare", "zone": "UTC", "places": [], "batches": []}
                """).cellar();
        assertEquals(Settings.USUAL, cellar.settings());
        assertEquals(List.of(), cellar.servings());
    }

    @Test
    void unknownKeysStayAtEveryLevel() throws IOException {
        String json = RichCellar.json()
                .replaceFirst("\"schema\": 2,", "\"schema\": 2, \"motto\": {\"deep\": [1.10, NULL]},")
                .replace("NULL", "null")
                .replace("\"units\": \"us\"", "\"units\": \"us\", \"paper\": \"A4\"")
                .replace("\"kind\": \"logged\"", "\"kind\": \"logged\", \"logger\": \"two-channel\"")
                .replace("\"id\": \"brown\"", "\"id\": \"brown\", \"crate\": 7")
                .replace("\"id\": \"next\"", "\"id\": \"next\", \"mood\": true")
                .replace("\"fate\": \"burst\"", "\"fate\": \"burst\", \"cap\": \"red\"")
                .replace(
                        "\"instrument\": \"gauge 1\"",
                        "\"instrument\": \"gauge 1\", \"serial\": 123456789012345678901234567890")
                .replace("\"sugar\": \"dextrose\"", "\"sugar\": \"dextrose\", \"packet\": 1e400");
        CellarJson before = read(json);
        JsonNode after = saved(before, before.cellar().withName("Renamed"));
        assertEquals("Renamed", after.at("/name").textValue());
        assertEquals("{\"deep\":[1.1,null]}", after.at("/motto").toString());
        assertEquals("A4", after.at("/settings/paper").textValue());
        assertEquals("two-channel", after.at("/places/0/temperature/logger").textValue());
        assertEquals(7, after.at("/batches/0/lots/0/crate").intValue());
        assertTrue(after.at("/batches/1/mood").booleanValue());
        assertEquals("red", after.at("/batches/0/lots/0/draws/1/cap").textValue());
        assertEquals(
                "123456789012345678901234567890",
                after.at("/batches/0/readings/0/serial").asText());
        String text =
                new String(before.with(before.cellar().withName("Renamed"), "t").bytes(), StandardCharsets.UTF_8);
        assertTrue(text.contains("\"packet\": 1E+400"), "a number too large for a double keeps its value");
        assertTrue(text.contains("1.10"), "a number keeps its digits");
    }

    @Test
    void unknownKeysFollowTheirIdWhenAListIsReordered() throws IOException {
        CellarJson before = read(RichCellar.json().replace("\"id\": \"pale\",", "\"id\": \"pale\", \"mark\": \"p\","));
        List<Batch> batches = before.cellar().batches();
        JsonNode after = saved(before, before.cellar().withBatches(List.of(batches.get(1), batches.get(0))));
        assertEquals("p", after.at("/batches/1/mark").textValue());
        assertTrue(after.at("/batches/0/mark").isMissingNode());
    }

    @Test
    void unknownKeysOfADrawStayWithItWhenAnEarlierDrawGoes() throws IOException {
        CellarJson before =
                read(RichCellar.json().replace("\"fate\": \"burst\"", "\"fate\": \"burst\", \"cap\": \"red\""));
        Batch pale = before.cellar().batch("pale");
        Lot brown = pale.lot("brown");
        Lot shorter = brown.withDraws(brown.draws().subList(1, 2));
        JsonNode after = saved(before, before.cellar().withBatch(pale.withLot(shorter)));
        assertEquals("red", after.at("/batches/0/lots/0/draws/0/cap").textValue());
    }

    @Test
    void keysOfAnotherKindDoNotStayAsUnknownOnes() throws IOException {
        CellarJson before = read(RichCellar.json());
        Cellar changed = before.cellar()
                .withPlace(before.cellar().place("shed").withTemperature(new TemperatureSource.Logged()));
        JsonNode after = saved(before, changed);
        assertEquals("{\"kind\":\"logged\"}", after.at("/places/1/temperature").toString());
    }

    @Test
    void settingsOfBothUnitSystemsComeBack() {
        for (UnitSystem units : UnitSystem.values()) {
            Cellar cellar = RichCellar.CELLAR.withSettings(new Settings(units, -12));
            assertEquals(
                    cellar,
                    CellarJson.read(CellarJson.of(cellar, "a test").bytes(), FILE)
                            .cellar());
        }
    }

    @Test
    void whatWasSaidToATaskAndAKindOfColdComeBack() {
        Instant until = Instant.parse("2026-04-05T07:00:00Z");
        Serving serving = RichCellar.CELLAR.servings().get(0);
        Serving iced = new Serving(
                serving.id(),
                serving.batchId(),
                serving.bottles(),
                serving.at(),
                serving.placeId(),
                CoolingMedium.ICE_WATER,
                serving.glassCelsius(),
                serving.note());
        Cellar told = RichCellar.CELLAR
                .withServing(iced)
                .withTaskNotes(List.of(
                        new TaskNote("chill/pale/sunday", TaskNote.What.POSTPONED, Optional.of(until)),
                        new TaskNote("first-taste/pale", TaskNote.What.DONE, Optional.empty())));
        byte[] bytes = CellarJson.of(told, "a test").bytes();
        assertEquals(told, read(new String(bytes, StandardCharsets.UTF_8)).cellar());
    }

    @Test
    void unknownKeysOfATaskNoteAreKept() throws IOException {
        Cellar told = RichCellar.CELLAR.withTaskNotes(
                List.of(new TaskNote("first-taste/pale", TaskNote.What.DONE, Optional.empty())));
        String json = new String(CellarJson.of(told, "a test").bytes(), StandardCharsets.UTF_8)
                .replace("\"first-taste/pale\"", "\"first-taste/pale\", \"by\" : \"Anna\"");
        JsonNode after = saved(read(json), told.withName("Another"));
        assertEquals("Anna", after.at("/taskNotes/0/by").textValue());
    }
}
