package undercroft.report;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import undercroft.plot.PlotTable;
import undercroft.plot.Readout;

/** The table of a plot as CSV: a line for each instant, for each plot the value that is read off it (the median of a band). */
public final class PlotCsv {
    private static final int DECIMALS = 4;

    private PlotCsv() {}

    public static String of(PlotTable table) {
        List<String> head = new ArrayList<>(List.of("time_utc"));
        head.addAll(table.titles());
        CsvTable csv = CsvTable.headed(head);
        for (PlotTable.Row row : table.rows()) {
            csv.text(Instant.ofEpochSecond(row.epochSecond()).toString());
            for (Readout value : row.values()) {
                csv.number(value.value().orElse(Double.NaN), DECIMALS);
            }
            csv.endRow();
        }
        return csv.text();
    }
}
