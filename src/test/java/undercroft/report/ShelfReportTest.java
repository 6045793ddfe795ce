package undercroft.report;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import undercroft.wording.English;

final class ShelfReportTest {
    @Test
    void aReportIsThreeKindsOfFileAndASeriesForEachCappedBatch() {
        Map<String, String> files = ShelfReport.of(English.of(Shelves.NO_TEMPERATURES));
        assertEquals(
                List.of("report.json", "index.html", "series/lock-gate-bitter.csv", "series/bramble-wheat.csv"),
                List.copyOf(files.keySet()));
        assertEquals(ShelfJson.of(Shelves.NO_TEMPERATURES), files.get("report.json"));
    }
}
