package undercroft.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import undercroft.quantity.InvalidInput;
import undercroft.store.json.CellarJson;
import undercroft.wording.English;
import undercroft.wording.Messages;

/** What is JSON and what is not is taken from RFC 8259 (2017); times from ISO 8601. */
class CellarFaultsTest {
    private static InvalidInput faultOf(String json) {
        return faultOf(json.getBytes(StandardCharsets.UTF_8));
    }

    private static InvalidInput faultOf(byte[] json) {
        return assertThrows(InvalidInput.class, () -> CellarJson.read(json, "cellar.json"));
    }

    private static String with(String old, String replacement) {
        String json = RichCellar.json();
        String changed = json.replace(old, replacement);
        assertNotEquals(json, changed, "the sample holds " + old);
        return changed;
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '`',
            value = {
                "\"count\": 40 | \"count\": -3 | batches[0].lots[0].count: -3 is outside what is possible here; give a whole number from 1 to 10,000",
                "\"count\": 40 | \"count\": 2.5 | batches[0].lots[0].count: is not a whole number",
                "\"count\": 40 | \"count\": 1e99 | batches[0].lots[0].count: is not a whole number",
                "\"count\": 40 | \"count\": \"40\" | batches[0].lots[0].count: is text; give a whole number",
                "\"count\": 40, | | batches[0].lots[0].count: is missing",
                "\"count\": 40 | \"count\": null | batches[0].lots[0].count: is null",
                "\"lots\": [ | \"lots\": {}, \"x\": [ | batches[0].lots: is an object; give a list",
                "\"stays\": [ | \"stays\": [7, | batches[0].lots[0].stays[0]: is a number; give an object",
                "\"scuffed\": true | \"scuffed\": \"yes\" | batches[0].lots[0].scuffed: is text; give true or false",
                "\"beerLitres\": 18.9 | \"beerLitres\": NaN | batches[0].priming.beerLitres: this is not a number",
                "\"beerLitres\": 18.9 | \"beerLitres\": -Infinity | batches[0].priming.beerLitres: this is not a number",
                "\"beerLitres\": 18.9 | \"beerLitres\": 1e999 | batches[0].priming.beerLitres: this is not a number",
                "\"beerLitres\": 18.9 | \"beerLitres\": 0 | batches[0].priming.beerLitres: 0 is outside",
                "\"beerLitres\": 18.9 | \"beerLitres\": 18.9, \"beerLitres\": 2 | beerLitres: stands twice at line",
                "\"beerLitres\": 18.9 | \"beerLitres\": 18,9 | is not JSON at line",
                "\"schema\": 2 | \"schema\": \"one\" | schema: is text",
                "\"schema\": 2 | \"schema\": 0 | schema: is 0, which never was",
                "\"schema\": 2, | | schema: is missing",
                "\"cappedAt\": \"2026-01-10T15 | \"cappedAt\": \"2026-02-30T15 | batches[0].cappedAt: “2026-02-30T15:00:00Z” is no time",
                "2026-01-10T15:00:00Z | yesterday | batches[0].cappedAt: “yesterday” is no time",
                "2026-02-10T19:00:00.250Z | 9926-02-10T19:00:00Z | batches[0].lots[0].draws[1].at: is not between",
                "\"warmestDay\": \"08-03\" | \"warmestDay\": \"02-30\" | places[2].temperature.warmestDay: “02-30” is no day",
                "Europe/Vienna | Europe/Nowhere | zone: “Europe/Nowhere” is no time zone",
                "\"units\": \"us\" | \"units\": \"imperial\" | settings.units: “imperial” is not known",
                "\"kind\": \"guess\" | \"kind\": \"hunch\" | places[1].temperature.kind: “hunch” is not known; use one of",
                "\"kind\": \"gravity\" | \"kind\": \"taste\" | batches[0].readings[4].kind: “taste” is not known",
                "\"fate\": \"burst\" | \"fate\": \"lost\" | batches[0].lots[0].draws[1].fate: “lost” is not known; use one",
                "\"place\": \"loft\" | \"place\": \"attic\" | batches[0].lots[0].stays[0].place: “attic” is not known",
                "\"bottle\": \"stone-750\" | \"bottle\": \"jug\" | batches[0].lots[1].bottle: “jug” is not known",
                "\"sugar\": \"dextrose\" | \"sugar\": \"salt\" | batches[0].priming.sugars[0].sugar: “salt” is not known",
                "\"batch\": \"pale\" | \"batch\": \"dark\" | servings[0].batch: “dark” is not known",
                "\"id\": \"shed\" | \"id\": \"loft\" | places[1].id: “loft” is used twice",
                "\"id\": \"shed\" | \"id\": \"The Shed\" | places[1].id: “The Shed” is not an id",
                "\"count\": 2, | \"count\": 41, | batches[0].lots[0].draws[0].count: more bottles are taken than the 40 that are left",
                "2026-02-01T09:30:00Z | 2025-02-01T09:30:00Z | batches[0].lots[0].stays[1].from: this does not come after",
                "\"low\": 0.25 | \"low\": 0.35 | sugars[0].gramsCarbonDioxidePerGram: does not rise",
                "\"brimfulMillilitres\": 781.5 | \"brimfulMillilitres\": 700 | bottles[0].brimfulMillilitres: the brimful capacity is not above",
            })
    void aFaultIsToldByItsPlace(String old, String replacement, String expected) {
        InvalidInput fault = faultOf(with(old, replacement == null ? "" : replacement));
        String sentence = Messages.english().fault(fault);
        assertTrue(sentence.startsWith("cellar.json: "), sentence);
        assertTrue(sentence.contains(expected), sentence);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {"", "   \n", "[]", "3", "null", "hello", "<cellar/>", "{} {}", "{'schema': 1}", "{\"a\": 1,}"})
    void whatIsNoJsonObjectIsRefusedInOneSentence(String text) {
        String message = English.placed(faultOf(text));
        assertTrue(message.startsWith("cellar.json: "), message);
        assertFalse(message.contains("\n"), message);
    }

    @Test
    void aTruncatedFileIsToldWithLineAndColumn() {
        String json = RichCellar.json();
        for (int length = json.indexOf("\"places\""); length < json.lastIndexOf('}'); length += 7) {
            String message = English.placed(faultOf(json.substring(0, length)));
            assertTrue(message.matches("cellar\\.json: breaks off at line \\d+, column \\d+; .*"), message);
        }
    }

    @Test
    void bytesThatAreNoTextAreRefused() {
        byte[] bytes = RichCellar.json().getBytes(StandardCharsets.UTF_8);
        int quote = RichCellar.json().indexOf("Under the stairs");
        bytes[quote] = (byte) 0xFF;
        assertEquals("cellar.json", faultOf(bytes).where().split(":", 2)[0]);
        assertEquals(
                "cellar.json", faultOf(new byte[] {0, 1, 2, 3, (byte) 0xFE, 9}).where());
    }

    @Test
    void nestingWithoutEndIsRefused() {
        assertTrue(faultOf("{\"schema\":".repeat(100_000)).getMessage().startsWith("cellar.json"));
    }

    @Test
    void anIdOfAMegabyteIsRefused() {
        assertTrue(English.placed(faultOf(with("\"id\": \"shed\"", "\"id\": \"" + "a-".repeat(500_000) + "\"")))
                .endsWith("places[1].id: this is longer than 200 characters; shorten it"));
    }

    @Test
    void notANumberIsRefusedInUnknownKeysToo() {
        InvalidInput fault = faultOf(with("\"schema\": 2,", "\"schema\": 2, \"mood\": [1, NaN],"));
        assertEquals("cellar.json: mood[1]", fault.where());
    }

    @Test
    void halfACharacterIsRefusedSinceItCouldNotBeWrittenAgain() {
        InvalidInput fault = faultOf(with("Under the stairs", "Under \\ud83c"));
        assertEquals("cellar.json: name", fault.where());
    }

    @Test
    void allFaultsOfAFileAreToldTogether() {
        String json = with("\"count\": 40", "\"count\": -3")
                .replace("\"celsius\": 11.5", "\"celsius\": \"cold\"")
                .replace("\"spreadKelvin\": 3", "\"spreadKelvin\": null")
                .replace("\"gaugeBar\": 0.85", "\"gaugeBar\": 85")
                .replace("\"fate\": \"burst\"", "\"fate\": \"lost\"");
        List<InvalidInput> faults = new ArrayList<>();
        CellarJson.read(json.getBytes(StandardCharsets.UTF_8), "cellar.json", faults);
        assertEquals(
                List.of(
                        "cellar.json: places[1].temperature.celsius",
                        "cellar.json: places[1].temperature.spreadKelvin",
                        "cellar.json: batches[0].lots[0].draws[1].fate",
                        "cellar.json: batches[0].readings[0].gaugeBar"),
                faults.stream().map(InvalidInput::where).toList());
    }
}
