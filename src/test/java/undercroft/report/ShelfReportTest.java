package undercroft.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.StringWriter;
import java.io.Writer;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;
import org.junit.jupiter.api.Test;
import undercroft.wording.English;

final class ShelfReportTest {
    @Test
    void aReportIsThreeKindsOfFileAndASeriesForEachCappedBatch() {
        Map<String, Consumer<Writer>> files = ShelfReport.of(English.of(Shelves.NO_TEMPERATURES), Map.of());
        assertEquals(
                List.of("report.json", "index.html", "series/lock-gate-bitter.csv", "series/bramble-wheat.csv"),
                List.copyOf(files.keySet()));
        StringWriter data = new StringWriter();
        files.get("report.json").accept(data);
        assertEquals(ShelfJson.of(Shelves.NO_TEMPERATURES), data.toString());
    }
}
