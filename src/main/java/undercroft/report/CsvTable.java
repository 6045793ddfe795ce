package undercroft.report;

import de.siegmar.fastcsv.writer.CsvWriter;
import de.siegmar.fastcsv.writer.LineDelimiter;
import java.io.StringWriter;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * A table as CSV (RFC 4180): any table of the window to copy or save, and the series of a report. Numbers have a point and
 * no unit, whatever the reader's language; what is not known is empty.
 *
 * <p>A spreadsheet takes a text that begins with {@code =}, {@code +}, {@code -}, {@code @}, a tab or a carriage return for
 * a formula, and a cellar may come from a stranger: such a text gets an apostrophe before it (OWASP, "CSV Injection").
 */
public final class CsvTable {
    private static final String FORMULA_STARTS = "=+-@\t\r";

    private final StringWriter written = new StringWriter(1 << 12);
    private final CsvWriter csv =
            CsvWriter.builder().lineDelimiter(LineDelimiter.CRLF).build(written);
    private final List<String> row = new ArrayList<>();
    private final int columns;

    private CsvTable(int columns) {
        this.columns = columns;
    }

    public static CsvTable headed(List<String> head) {
        CsvTable table = new CsvTable(head.size());
        head.forEach(table::text);
        return table.endRow();
    }

    public CsvTable text(String text) {
        boolean formula = !text.isEmpty() && FORMULA_STARTS.indexOf(text.charAt(0)) >= 0;
        row.add(formula ? "'" + text : text);
        return this;
    }

    /** A number with fixed decimals; empty when it is not finite. */
    public CsvTable number(double value, int decimals) {
        row.add(
                Double.isFinite(value)
                        ? BigDecimal.valueOf(value)
                                .setScale(decimals, RoundingMode.HALF_UP)
                                .toPlainString()
                        : "");
        return this;
    }

    public CsvTable empty() {
        row.add("");
        return this;
    }

    /** Ends a row, which has as many cells as the head. */
    public CsvTable endRow() {
        if (row.size() != columns) {
            throw new IllegalStateException(row.size() + " cells under " + columns + " heads");
        }
        csv.writeRecord(row);
        row.clear();
        return this;
    }

    /** What was written, in whole rows. */
    public String text() {
        return written.toString();
    }
}
