package undercroft.report;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import java.time.Instant;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import undercroft.outlook.lot.BatchOutlook;

/** The series read back with a CSV reader that is not ours. */
final class SeriesCsvTest {
    private static final List<String> RANGES =
            List.of("carbonation_%s_vol", "pressure_%s_bar_gauge", "bottle_%s_celsius");

    @Test
    void everyLineHasAnInstantAndRangesInOrder() {
        for (BatchOutlook batch : capped()) {
            Instant before = Instant.MIN;
            String lot = "";
            for (NamedCsvRecord line : lines(SeriesCsv.of(batch))) {
                Instant time = Instant.parse(line.getField("time_utc"));
                assertTrue(!line.getField("lot").equals(lot) || time.isAfter(before), "in order of time");
                lot = line.getField("lot");
                before = time;
                for (String range : RANGES) {
                    double low = number(line, range.replace("%s", "low"));
                    double median = number(line, range.replace("%s", "median"));
                    double high = number(line, range.replace("%s", "high"));
                    assertTrue(low <= median && median <= high, batch.id() + " " + range + " at " + time);
                }
            }
        }
    }

    @Test
    void aBatchInTwoPlacesHasTheSeriesOfBothLots() {
        BatchOutlook batch = Shelves.DEMO.batch("bramble-wheat");
        Set<String> lots = lines(SeriesCsv.of(batch)).stream()
                .map(line -> line.getField("lot"))
                .collect(Collectors.toSet());
        assertEquals(batch.batch().lots().stream().map(lot -> lot.id()).collect(Collectors.toSet()), lots);
    }

    @Test
    void theLineOfNowSaysWhatTheOutlookSays() {
        BatchOutlook batch = Shelves.DEMO.batch("quarry-porter");
        NamedCsvRecord now = lines(SeriesCsv.of(batch)).stream()
                .filter(line -> Instant.parse(line.getField("time_utc")).equals(Shelves.DEMO.at()))
                .findFirst()
                .orElseThrow();
        assertEquals(batch.mainLot().carbonation().atPresent().median(), number(now, "carbonation_median_vol"), 0.001);
        assertEquals(batch.mainLot().light().dose().median(), number(now, "light_dose"), 0.001);
    }

    @Test
    void whatIsNotKnownIsEmpty() {
        List<NamedCsvRecord> lines = lines(SeriesCsv.of(Shelves.DEMO.batch("millrace-saison")));
        NamedCsvRecord last = lines.get(lines.size() - 1);
        assertEquals("", last.getField("air_celsius"), "no air is logged ahead");
        assertEquals("", last.getField("light_dose"));
        assertTrue(
                lines.stream()
                        .filter(line -> line.getField("time_utc").startsWith("2026-10-05"))
                        .allMatch(line -> line.getField("air_celsius").isEmpty()),
                "nor in the gap of the log");
        assertFalse(SeriesCsv.of(Shelves.DEMO.batch("millrace-saison")).contains("NaN"));
    }

    private static List<BatchOutlook> capped() {
        return Shelves.DEMO.batches().stream().filter(BatchOutlook::isCapped).toList();
    }

    private static double number(NamedCsvRecord line, String field) {
        return Double.parseDouble(line.getField(field));
    }

    private static List<NamedCsvRecord> lines(String csv) {
        return CsvReader.builder().ofNamedCsvRecord(csv).stream().toList();
    }
}
