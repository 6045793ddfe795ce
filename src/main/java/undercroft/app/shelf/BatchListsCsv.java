package undercroft.app.shelf;

import java.util.List;
import undercroft.report.CsvTable;
import undercroft.wording.Messages;

/** Readings, bottles and moves of a batch as one table, worded as the page words them. */
public final class BatchListsCsv {
    private BatchListsCsv() {}

    public static String of(BatchPage page, Messages messages) {
        CsvTable table = CsvTable.headed(List.of(
                messages.of("batch.table.list"),
                messages.of("batch.table.when"),
                messages.of("batch.table.what"),
                messages.of("batch.table.note")));
        rows(table, messages.of("batch.table.readings"), page.readings());
        rows(table, messages.of("batch.table.bottles"), page.draws());
        rows(table, messages.of("batch.table.moves"), page.moves());
        return table.text();
    }

    private static void rows(CsvTable table, String list, List<BatchPage.Row> rows) {
        rows.forEach(row -> table.text(list)
                .text(row.when())
                .text(row.what())
                .text(row.note())
                .endRow());
    }
}
