package undercroft.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import com.networknt.schema.ValidationMessage;
import java.io.IOException;
import java.io.InputStream;
import java.util.Set;
import java.util.TreeSet;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import undercroft.outlook.CellarOutlook;
import undercroft.quantity.Interval;

/** The published JSON Schema (draft 2020-12), read by a validator that is not ours. */
final class ReportSchemaTest {
    private static final ObjectMapper JSON = new ObjectMapper();

    @ParameterizedTest
    @MethodSource("undercroft.report.Shelves#all")
    void everyReportIsValid(CellarOutlook outlook) throws IOException {
        assertEquals(Set.of(), faults(JSON.readTree(ShelfJson.of(outlook))));
    }

    @Test
    void theSchemaRefusesWhatIsNotInTheContract() throws IOException {
        ObjectNode report = (ObjectNode) JSON.readTree(ShelfJson.of(Shelves.DEMO));
        ObjectNode batch = (ObjectNode) report.get("batches").get(0);
        batch.put("stage", "SLEEPING");
        assertFalse(faults(report).isEmpty(), "an unknown stage");
        batch.put("stage", "READY").put("extra", 1);
        assertFalse(faults(report).isEmpty(), "an unknown key");
        batch.remove("extra");
        assertTrue(faults(report).isEmpty());
        batch.remove("bottlesLeft");
        assertFalse(faults(report).isEmpty(), "a key left out");
    }

    @Test
    void aBatchThatNeverGetsReadyHasNoDays() throws IOException {
        JsonNode ready = JSON.readTree(ShelfJson.of(Shelves.NEVER_READY))
                .get("batches")
                .get(0)
                .get("ready");
        assertTrue(ready.get("median").isNull() && ready.get("late").isNull(), ready.toString());
    }

    /** A reader of the file alone must know what each number is. */
    @ParameterizedTest
    @MethodSource("undercroft.report.Shelves#all")
    void everyNumberHasItsUnitInItsKey(CellarOutlook outlook) throws IOException {
        Set<String> keys = new TreeSet<>();
        collectNumbers(JSON.readTree(ShelfJson.of(outlook)), "", keys);
        keys.removeIf(key -> key.matches(
                ".*(GaugeBar|Celsius|Volumes|Dose|DosePerDay)|(shelf|carbonation)Days.*|hours.*|fractionDone|coverage|chance|.*Chance"
                        + "|dose|lightDose.*|bottles|bottlesLeft|batches|readings|timesAsFast|schema"));
        assertEquals(Set.of(), keys);
    }

    private static void collectNumbers(JsonNode node, String key, Set<String> keys) {
        node.properties().forEach(field -> {
            boolean part = Set.of("low", "median", "high").contains(field.getKey());
            collectNumbers(field.getValue(), part ? key : field.getKey(), keys);
        });
        if (node.isArray()) {
            node.forEach(each -> collectNumbers(each, key, keys));
        } else if (node.isNumber()) {
            keys.add(key);
        }
    }

    @Test
    void aBatchStandsNoMoreHeatThanItsWeakestLotWithBottlesLeft() throws IOException {
        int several = 0;
        for (JsonNode batch : JSON.readTree(ShelfJson.of(Shelves.DEMO)).get("batches")) {
            double lowest = Double.POSITIVE_INFINITY;
            int lots = 0;
            for (JsonNode lot : batch.get("lots")) {
                JsonNode limit = lot.get("pressure").get("heatLimitCelsius");
                if (lot.get("bottlesLeft").asInt() > 0) {
                    lots++;
                    lowest = limit.isNull() ? lowest : Math.min(lowest, limit.asDouble());
                }
            }
            if (lots > 0) {
                JsonNode limit = batch.get("pressure").get("heatLimitCelsius");
                assertEquals(
                        lowest,
                        limit.isNull() ? Double.POSITIVE_INFINITY : limit.asDouble(),
                        batch.get("id").asText());
            }
            several += lots > 1 ? 1 : 0;
        }
        assertTrue(several > 0, "a batch in two places");
    }

    @Test
    void anAlertComesWithItsCausesTheGravestFirst() throws IOException {
        for (JsonNode batch : JSON.readTree(ShelfJson.of(Shelves.DEMO)).get("batches")) {
            JsonNode causes = batch.get("causes");
            String first =
                    causes.isEmpty() ? "CLEAR" : causes.get(0).get("alert").asText();
            assertEquals(batch.get("alert").asText(), first, batch.get("id").asText());
        }
    }

    @Test
    void theCautionStandsOnce() {
        String report = ShelfJson.of(Shelves.DEMO);
        assertEquals(1, report.split("\"caution\"", -1).length - 1);
        assertEquals(1, report.split("licensed practice", -1).length - 1);
    }

    /** Worked by hand: five digits, never more hopeful than the number itself. */
    @Test
    void limitsAreCutAndTheEndsOfARangeRoundedOutward() {
        ObjectNode node = JsonShapes.object();
        JsonShapes.putLimit(node, "limit", 3.4999999);
        JsonShapes.putLimit(node, "whole", 5.8);
        JsonShapes.putLimit(node, "cold", -1.000001);
        JsonShapes.put(node, "range", Interval.of(2.123456, 2.2, 2.345601));
        assertEquals(
                "{\"limit\":3.4999,\"whole\":5.8,\"cold\":-1.0001,"
                        + "\"range\":{\"low\":2.1234,\"median\":2.2,\"high\":2.3457}}",
                node.toString());
    }

    private static Set<ValidationMessage> faults(JsonNode report) throws IOException {
        try (InputStream schema = ShelfJson.class.getResourceAsStream("report.schema.json")) {
            JsonSchema read = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                    .getSchema(schema);
            return read.validate(report);
        }
    }
}
