package undercroft.store.logger;

import java.util.ArrayList;
import java.util.List;
import undercroft.store.logger.text.Cells;
import undercroft.store.logger.text.TimeFormat;

/**
 * One way to see a file's first lines as a table, and how many of them it explains.
 *
 * @param rows the cells of every line
 * @param data indexes of the lines with a time and a number
 * @param unix the format when time is a count, else null
 */
record Layout(
        char separator,
        List<List<String>> rows,
        List<Integer> data,
        int dateColumn,
        int clockColumn,
        TimeFormat unix,
        List<Integer> valueColumns) {
    private static final char[] SEPARATORS = {'\t', ';', '|', ','};

    /** The best of all separators, or null when none shows a line with a time and a number. */
    static Layout of(List<String> lines) {
        Layout best = null;
        for (char separator : SEPARATORS) {
            Layout layout = with(lines, separator);
            if (!layout.data.isEmpty() && (best == null || layout.data.size() > best.data.size())) {
                best = layout;
            }
        }
        return best;
    }

    private static Layout with(List<String> lines, char separator) {
        List<List<String>> rows =
                lines.stream().map(line -> Cells.of(line, separator)).toList();
        ColumnKinds kinds = ColumnKinds.of(rows);
        int date = kinds.most(ColumnKinds.Kind.MOMENT);
        int clock = date;
        TimeFormat unix = null;
        if (date < 0) {
            date = kinds.most(ColumnKinds.Kind.DATE);
            clock = date < 0 ? -1 : kinds.most(ColumnKinds.Kind.CLOCK);
            clock = clock < 0 ? date : clock;
        }
        if (date < 0) {
            date = kinds.most(ColumnKinds.Kind.UNIX_MILLISECONDS);
            unix = TimeFormat.UNIX_MILLISECONDS;
            if (date < 0) {
                date = kinds.most(ColumnKinds.Kind.UNIX_SECONDS);
                unix = TimeFormat.UNIX_SECONDS;
            }
            clock = date;
        }
        List<Integer> data = new ArrayList<>();
        List<Integer> values = new ArrayList<>();
        if (date >= 0) {
            values = kinds.numbersBeside(date, clock);
            for (int row = 0; row < rows.size(); row++) {
                if (kinds.isData(row, date, clock, unix, values)) {
                    data.add(row);
                }
            }
            values = kinds.oftenAmong(values, data);
        }
        return new Layout(separator, rows, values.isEmpty() ? List.of() : data, date, clock, unix, values);
    }

    String cell(int row, int column) {
        List<String> cells = rows.get(row);
        return column < cells.size() ? cells.get(column) : "";
    }

    /** Date and time of a row as one text. */
    String time(int row) {
        return dateColumn == clockColumn ? cell(row, dateColumn) : cell(row, dateColumn) + " " + cell(row, clockColumn);
    }

    /**
     * Whether commas seem to stand both between columns and in numbers: every data line has one cell more than the
     * heading, and a whole number is followed by bare digits.
     */
    boolean splitsNumbers(int headerRow) {
        int named = rows.get(headerRow).size();
        if (separator != ',') {
            return false;
        }
        for (int row : data) {
            List<String> cells = rows.get(row);
            if (cells.size() != named + 1
                    || !cells.get(named).matches("\\d+")
                    || !cells.get(named - 1).matches("[+−-]?\\d+")) {
                return false;
            }
        }
        return true;
    }

    /**
     * Whether the heading has one name fewer than every line has cells, as programs for statistics write a table whose
     * first column holds names or numbers of the rows.
     */
    boolean hasRowNames(int headerRow) {
        int named = rows.get(headerRow).size();
        return data.stream().allMatch(row -> rows.get(row).size() == named + 1);
    }

    /** The line before the first data when it names columns, or −1. */
    int headerRow() {
        int row = data.get(0) - 1;
        while (row >= 0 && rows.get(row).stream().allMatch(String::isEmpty)) {
            row--;
        }
        if (row < 0 || rows.get(row).size() < 2) {
            return -1;
        }
        for (int column : valueColumns) {
            if (cell(row, column).chars().anyMatch(Character::isLetter)) {
                return row;
            }
        }
        return -1;
    }
}
