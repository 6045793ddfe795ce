package undercroft.plot;

import java.util.ArrayList;
import java.util.List;

/**
 * A stack of plots as a table: what each plot says at a row of instants, for those who cannot see it and for other programs.
 *
 * @param titles of the plots, from top to bottom
 */
public record PlotTable(List<String> titles, List<Row> rows) {
    private static final int MOST_ROWS = 60;
    private static final long HOUR = 3_600;
    /** Steps that a person counts in, in hours. */
    private static final long[] STEPS = {1, 3, 6, 12, 24, 48, 168, 336, 672};

    public PlotTable {
        titles = List.copyOf(titles);
        rows = List.copyOf(rows);
    }

    /** An instant with one readout for each plot. */
    public record Row(long epochSecond, List<Readout> values) {
        public Row {
            values = List.copyOf(values);
        }
    }

    /** At most sixty rows over the time that is shown, at whole hours, and one at its present moment. */
    public static PlotTable of(PlotStack stack) {
        long span = stack.until() - stack.from();
        long step = STEPS[STEPS.length - 1] * HOUR;
        for (int i = STEPS.length - 1; i >= 0 && span / (STEPS[i] * HOUR) < MOST_ROWS; i--) {
            step = STEPS[i] * HOUR;
        }
        List<Row> rows = new ArrayList<>();
        long now = stack.now().orElse(Long.MIN_VALUE);
        for (long at = Math.floorDiv(stack.from() + step - 1, step) * step; at <= stack.until(); at += step) {
            if (now > at - step && now < at && now >= stack.from()) {
                rows.add(new Row(now, stack.valuesAt(now)));
            }
            rows.add(new Row(at, stack.valuesAt(at)));
        }
        return new PlotTable(stack.plots().stream().map(Plot::title).toList(), rows);
    }
}
