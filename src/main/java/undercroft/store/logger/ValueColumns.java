package undercroft.store.logger;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.regex.Pattern;
import undercroft.store.logger.text.NumberText;

/** Names the columns of numbers, finds their decimal mark, and picks the one most likely to be the temperature. */
final class ValueColumns {
    private static final int EXAMPLES = 3;
    private static final Pattern TEMPERATURE =
            Pattern.compile("temp|[°º]\\s*[cf]|celsius|fahrenheit|kelvin|[(\\[][cfk][)\\]]|\\bt\\d?\\b|thermo");
    private static final Pattern SOMETHING_ELSE =
            Pattern.compile("hum|\\brh\\b|%|dew|batt|volt|press|hpa|lux|light|signal|rssi|co2");
    private static final Pattern UNIT_ALONE = Pattern.compile("(?i)([°º]|deg)?\\s*[cfk]|celsius|fahrenheit|kelvin");
    private static final Pattern COUNTER = Pattern.compile("^(#|no\\.?|nr\\.?|n°|id|index|record|count|line|seq.*)$");

    /** What air in a house or a cellar may be, °C, at the least. */
    private static final double COLDEST = -40;

    /** All values within so little of nothing are a share, such as a relative humidity, until a person says otherwise. */
    private static final double SHARE = 1;

    private final Layout layout;
    private final int headerRow;
    private final int unnamed;

    ValueColumns(Layout layout, int headerRow) {
        this.layout = layout;
        this.headerRow = headerRow;
        this.unnamed = headerRow >= 0 && layout.hasRowNames(headerRow) ? 1 : 0;
    }

    /** What the header calls a column; empty where it has no name. */
    private String heading(int column) {
        return headerRow < 0 || column < unnamed ? "" : layout.cell(headerRow, column - unnamed);
    }

    String name(int column) {
        String name = heading(column);
        return name.isEmpty() ? "Column " + (column + 1) : name;
    }

    /** Whatever may state a column's unit: its name, its first cell, and a cell beside it that holds nothing else. */
    String said(int column) {
        int row = layout.data().get(0);
        String beside = layout.cell(row, column + 1);
        return heading(column) + " " + layout.cell(row, column)
                + (UNIT_ALONE.matcher(beside).matches() ? " " + beside : "");
    }

    List<Inspection.Column> all() {
        return layout.valueColumns().stream()
                .map(column -> new Inspection.Column(column, name(column), examples(column)))
                .toList();
    }

    private List<String> examples(int column) {
        return layout.data().stream()
                .map(row -> layout.cell(row, column))
                .filter(cell -> !NumberText.isNothing(cell))
                .limit(EXAMPLES)
                .toList();
    }

    int likeliest(char decimalMark) {
        int best = -1;
        int most = Integer.MIN_VALUE;
        for (int column : layout.valueColumns()) {
            String name = heading(column).toLowerCase(Locale.ROOT);
            String cell = example(column);
            int score = isCalledTemperature(column) ? 10 : 0;
            score -= SOMETHING_ELSE.matcher(name).find() || cell.endsWith("%") ? 15 : 0;
            score -= COUNTER.matcher(name).find() || countsUp(column, decimalMark) ? 20 : 0;
            if (score > most) {
                most = score;
                best = column;
            }
        }
        return best;
    }

    private String example(int column) {
        return examples(column).stream().findFirst().orElse("").toLowerCase(Locale.ROOT);
    }

    private boolean isCalledTemperature(int column) {
        return TEMPERATURE.matcher(heading(column).toLowerCase(Locale.ROOT)).find()
                || example(column).matches(".*[°º]\\s*[cf]");
    }

    /**
     * Whether a column surely is the temperature: it is called so, alone or before others that are called so too; or
     * it is the only column of numbers, is called nothing else, and its values are those of air in a house.
     */
    Confidence confidence(int chosen, char decimalMark) {
        if (isCalledTemperature(chosen)) {
            return Confidence.STATED;
        }
        boolean alone =
                layout.valueColumns().stream().allMatch(column -> column == chosen || countsUp(column, decimalMark));
        double[] values = values(chosen, decimalMark);
        boolean housely = Arrays.stream(values).allMatch(value -> value >= COLDEST)
                && Arrays.stream(values).anyMatch(value -> Math.abs(value) > SHARE);
        boolean other = SOMETHING_ELSE
                .matcher(heading(chosen).toLowerCase(Locale.ROOT) + " " + example(chosen))
                .find();
        return alone && housely && !other ? Confidence.LIKELY : Confidence.ASK;
    }

    private boolean countsUp(int column, char decimalMark) {
        double[] values = values(column, decimalMark);
        for (int i = 1; i < values.length; i++) {
            if (values[i] - values[i - 1] != 1) {
                return false;
            }
        }
        return values.length > 2;
    }

    double median(int column, char decimalMark) {
        double[] values = values(column, decimalMark);
        Arrays.sort(values);
        return values.length == 0 ? Double.NaN : values[values.length / 2];
    }

    private double[] values(int column, char decimalMark) {
        return layout.data().stream()
                .mapToDouble(row -> NumberText.parse(layout.cell(row, column), decimalMark))
                .filter(value -> !Double.isNaN(value))
                .toArray();
    }

    /** A lone mark with exactly three digits behind it could part thousands, so it speaks only when nothing else does. */
    char decimalMark() {
        List<Character> clear = new ArrayList<>();
        List<Character> faint = new ArrayList<>();
        for (int row : layout.data()) {
            for (int column : layout.valueColumns()) {
                String cell = layout.cell(row, column);
                int mark = Math.max(cell.lastIndexOf(','), cell.lastIndexOf('.'));
                if (mark >= 0) {
                    boolean both = cell.indexOf(',') >= 0 && cell.indexOf('.') >= 0;
                    boolean three = cell.substring(mark + 1).matches("\\d{3}(\\D.*)?");
                    (both || !three ? clear : faint).add(cell.charAt(mark));
                }
            }
        }
        List<Character> votes = clear.isEmpty() ? faint : clear;
        long commas = votes.stream().filter(mark -> mark == ',').count();
        return commas * 2 > votes.size() ? ',' : '.';
    }
}
