package undercroft.store.logger;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import undercroft.store.logger.text.ClockText;
import undercroft.store.logger.text.DayNumbers;
import undercroft.store.logger.text.NumberText;
import undercroft.store.logger.text.TimeFormat;

/** What each cell of a table could be, and what each column therefore is. */
final class ColumnKinds {
    enum Kind {
        MOMENT,
        DATE,
        CLOCK,
        UNIX_SECONDS,
        UNIX_MILLISECONDS,
        NUMBER
    }

    /** No logger has more columns; a damaged line may seem to. */
    private static final int MOST_COLUMNS = 200;

    private static final TimeFormat[] ORDERS = {TimeFormat.DAY_FIRST, TimeFormat.MONTH_FIRST, TimeFormat.YEAR_FIRST};

    private final List<List<Set<Kind>>> cells = new ArrayList<>();
    private final ClockText clock = new ClockText();
    private int columns;

    private ColumnKinds() {}

    static ColumnKinds of(List<List<String>> rows) {
        ColumnKinds kinds = new ColumnKinds();
        for (List<String> row : rows) {
            kinds.cells.add(row.stream().limit(MOST_COLUMNS).map(kinds::kindsOf).toList());
            kinds.columns = Math.max(kinds.columns, Math.min(MOST_COLUMNS, row.size()));
        }
        return kinds;
    }

    private Set<Kind> kindsOf(String cell) {
        Set<Kind> kinds = EnumSet.noneOf(Kind.class);
        if (cell.length() > 64) {
            return kinds;
        }
        double number = NumberText.parse(cell, '.');
        if (!Double.isNaN(number) || !Double.isNaN(NumberText.parse(cell, ','))) {
            kinds.add(Kind.NUMBER);
        }
        if (number >= 315_532_800d && DayNumbers.isPlausible((long) number) && isCount(cell)) {
            kinds.add(Kind.UNIX_SECONDS);
        } else if (DayNumbers.isPlausible((long) (number / 1000)) && isCount(cell)) {
            kinds.add(Kind.UNIX_MILLISECONDS);
        }
        if (clock.read(cell)) {
            if (!clock.hasDate) {
                kinds.add(Kind.CLOCK);
            } else if (isCalendarDate()) {
                kinds.add(clock.hasClock ? Kind.MOMENT : Kind.DATE);
            }
        }
        return kinds;
    }

    private static boolean isCount(String cell) {
        return cell.indexOf(',') < 0 && cell.indexOf(' ') < 0;
    }

    private boolean isCalendarDate() {
        for (TimeFormat order : ORDERS) {
            if (clock.midnight(order) != ClockText.NO_TIME) {
                return true;
            }
        }
        return false;
    }

    /** The column with most cells of a kind, the first of equals; −1 when there is none. */
    int most(Kind kind) {
        int best = -1;
        int most = 0;
        for (int column = 0; column < columns; column++) {
            int count = 0;
            for (List<Set<Kind>> row : cells) {
                count += has(row, column, kind) ? 1 : 0;
            }
            if (count > most) {
                most = count;
                best = column;
            }
        }
        return best;
    }

    /** Every other column that holds a number anywhere. */
    List<Integer> numbersBeside(int date, int clockColumn) {
        List<Integer> numbers = new ArrayList<>();
        for (int column = 0; column < columns; column++) {
            if (column != date && column != clockColumn) {
                for (List<Set<Kind>> row : cells) {
                    if (has(row, column, Kind.NUMBER)) {
                        numbers.add(column);
                        break;
                    }
                }
            }
        }
        return numbers;
    }

    boolean isData(int row, int date, int clockColumn, TimeFormat unix, List<Integer> values) {
        List<Set<Kind>> kinds = cells.get(row);
        boolean timed;
        if (unix != null) {
            timed = has(kinds, date, unix == TimeFormat.UNIX_SECONDS ? Kind.UNIX_SECONDS : Kind.UNIX_MILLISECONDS);
        } else if (date == clockColumn) {
            timed = has(kinds, date, Kind.MOMENT) || has(kinds, date, Kind.DATE);
        } else {
            timed = has(kinds, date, Kind.DATE) && has(kinds, clockColumn, Kind.CLOCK);
        }
        return timed && values.stream().anyMatch(column -> has(kinds, column, Kind.NUMBER));
    }

    /** Those columns that hold a number in at least a tenth of the data lines. */
    List<Integer> oftenAmong(List<Integer> values, List<Integer> data) {
        return values.stream()
                .filter(column -> data.stream()
                                        .filter(row -> has(cells.get(row), column, Kind.NUMBER))
                                        .count()
                                * 10
                        >= data.size())
                .filter(column -> !data.isEmpty())
                .toList();
    }

    private static boolean has(List<Set<Kind>> row, int column, Kind kind) {
        return column < row.size() && row.get(column).contains(kind);
    }
}
