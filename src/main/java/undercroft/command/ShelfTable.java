package undercroft.command;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import picocli.CommandLine.Help;
import picocli.CommandLine.Help.Ansi;
import picocli.CommandLine.Help.Column;
import picocli.CommandLine.Help.Column.Overflow;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.report.page.ShelfPage;
import undercroft.wording.AlertWords;
import undercroft.wording.Headlines;
import undercroft.wording.ShelfWords;

/** The shelf as a short table of plain text, for where there is no window. */
final class ShelfTable {
    private static final int GAP = 2;
    private static final int LONGEST_NAME = 24;
    private static final int LEAST_SENTENCE = 12;

    private ShelfTable() {}

    /** Lines of at most {@code width} columns, 70 or more, what wants attention first; long texts go on below. */
    static String of(ShelfWords words, int width) {
        Headlines headlines = new Headlines(words);
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of(
                "",
                words.of("command.table.batch"),
                words.of("command.table.stage"),
                words.of("command.table.left"),
                ""));
        for (BatchOutlook batch : ShelfPage.inOrder(words.outlook())) {
            rows.add(List.of(
                    new AlertWords(words.format().messages()).word(batch.alert()),
                    onOneLine(batch.batch().name()),
                    words.nameOf(batch.stage()),
                    batch.isCapped() ? String.format(Locale.ROOT, "%4d", batch.bottlesLeft()) : "   -",
                    onOneLine(headlines.of(batch))));
        }
        if (rows.size() == 1) {
            return words.of("report.shelf.empty") + "\n";
        }
        Column[] columns = columns(rows, width);
        Help.TextTable table = Help.TextTable.forColumns(Help.defaultColorScheme(Ansi.OFF), columns);
        table.setAdjustLineBreaksForWideCJKCharacters(true);
        rows.forEach(row -> table.addRowValues(row.toArray(String[]::new)));
        return table.toString();
    }

    private static Column[] columns(List<List<String>> rows, int width) {
        Column[] columns = new Column[rows.get(0).size()];
        int left = width;
        for (int i = 0; i < columns.length - 1; i++) {
            int column = i;
            int longest = rows.stream()
                    .mapToInt(row -> row.get(column).length())
                    .max()
                    .orElse(0);
            int indent = i == 0 ? 0 : GAP;
            int wide = Math.min(longest, LONGEST_NAME) + indent;
            columns[i] = new Column(wide, indent, Overflow.WRAP);
            left -= wide;
        }
        columns[columns.length - 1] = new Column(Math.max(LEAST_SENTENCE, left), GAP, Overflow.WRAP);
        return columns;
    }

    /** A name may hold a line's end, or a mark that turns the direction of writing. */
    private static String onOneLine(String text) {
        return text.replaceAll("[\\p{Cc}\\p{Cf}]+", " ").strip();
    }
}
