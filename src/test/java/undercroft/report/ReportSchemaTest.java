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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import undercroft.outlook.CellarOutlook;

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

    private static Set<ValidationMessage> faults(JsonNode report) throws IOException {
        try (InputStream schema = ShelfJson.class.getResourceAsStream("report.schema.json")) {
            JsonSchema read = JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012)
                    .getSchema(schema);
            return read.validate(report);
        }
    }
}
