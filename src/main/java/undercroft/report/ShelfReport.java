package undercroft.report;

import java.util.LinkedHashMap;
import java.util.Map;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.report.page.ShelfPage;
import undercroft.wording.ShelfWords;

/**
 * The report of a shelf: {@code report.json}, {@code index.html} and a CSV file for each capped batch under
 * {@code series}. Only texts; {@code store} puts them on a disk.
 */
public final class ShelfReport {
    public static final String DATA = "report.json";
    public static final String PAGE = "index.html";

    private ShelfReport() {}

    /** The texts by the names of their files, in order; a stroke parts a folder from its file. */
    public static Map<String, String> of(ShelfWords words) {
        Map<String, String> files = new LinkedHashMap<>();
        files.put(DATA, ShelfJson.of(words.outlook()));
        files.put(PAGE, ShelfPage.of(words));
        words.outlook().batches().stream()
                .filter(BatchOutlook::isCapped)
                .forEach(batch -> files.put("series/" + batch.id() + ".csv", SeriesCsv.of(batch)));
        return files;
    }
}
