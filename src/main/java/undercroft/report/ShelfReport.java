package undercroft.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.function.Consumer;
import java.util.function.Supplier;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.EvidenceCourse;
import undercroft.report.page.ShelfPage;
import undercroft.wording.ShelfWords;

/**
 * The report of a shelf: {@code report.json}, {@code index.html} and a CSV file for each capped batch under
 * {@code series}. Only what is in the files; {@code store} puts them on a disk, one after the other, so that a large cellar
 * is never in memory as text.
 */
public final class ShelfReport {
    public static final String DATA = "report.json";
    public static final String PAGE = "index.html";

    private ShelfReport() {}

    /**
     * What writes each file, by its name, in order; a stroke parts a folder from its file.
     *
     * @param courses what was seen of batches step by step, by their ids; a batch may have none
     */
    public static Map<String, Consumer<Writer>> of(ShelfWords words, Map<String, EvidenceCourse> courses) {
        Map<String, Consumer<Writer>> files = new LinkedHashMap<>();
        files.put(DATA, text(() -> ShelfJson.of(words.outlook())));
        files.put(PAGE, out -> ShelfPage.write(words, courses, out));
        words.outlook().batches().stream()
                .filter(BatchOutlook::isCapped)
                .forEach(batch -> files.put("series/" + batch.id() + ".csv", text(() -> SeriesCsv.of(batch))));
        return files;
    }

    private static Consumer<Writer> text(Supplier<String> text) {
        return out -> {
            try {
                out.write(text.get());
            } catch (IOException failure) {
                throw new UncheckedIOException(failure);
            }
        };
    }
}
