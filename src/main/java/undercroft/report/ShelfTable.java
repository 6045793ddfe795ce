package undercroft.report;

import undercroft.outlook.BatchOutlook;
import undercroft.outlook.CellarOutlook;

/** The shelf as plain text. */
public final class ShelfTable {
    private ShelfTable() {}

    public static String of(CellarOutlook outlook, int columns) {
        StringBuilder text = new StringBuilder();
        for (BatchOutlook batch : outlook.batches()) {
            String line = batch.batch().name() + ": " + batch.headline();
            text.append(line, 0, Math.min(columns, line.length())).append('\n');
        }
        return text.toString();
    }
}
