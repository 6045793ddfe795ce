package undercroft.calc.gas;

import java.util.Arrays;
import undercroft.quantity.Interval;

/**
 * The gauge pressure in a lot's bottles when everything fermentable is gone, over all that is not known of them, and what
 * follows from it for the strongest bottle: its 95 % pressure and the heat limit. This is the one definition for everything
 * that has no temperatures to follow: a plan, a question on the command line. Bar gauge and °C. Immutable.
 */
public final class FinishedPressure {
    private final PossibleContents contents;
    private final PressureTable table;

    private FinishedPressure(PossibleContents contents, PressureTable table) {
        this.contents = contents;
        this.table = table;
    }

    /** The bottle with all the contents it may have. */
    public static FinishedPressure of(ClosedBottle bottle, PossibleContents contents) {
        double middle = 0;
        for (int v = 0; v < contents.size(); v++) {
            middle += contents.beerFactor(v) / contents.size();
        }
        return new FinishedPressure(contents, PressureTable.of(bottle, ClosedBottle.MOST_GRAMS_PER_LITRE, middle));
    }

    /** The same bottle with other contents of like beer; what was prepared for it is used again. */
    public FinishedPressure holding(PossibleContents others) {
        return new FinishedPressure(others, table);
    }

    /**
     * Pressure of the bottle that got {@code factor} times the average sugar: 5, 50, 95 %.
     *
     * @param celsius held to −5 to 60 °C
     * @param factor 1 for the average bottle, {@link StrongestBottle#typicalFactor} for the strongest
     */
    public Interval gaugeBar(double celsius, double factor) {
        return interval(bars(table.row().at(celsius), factor));
    }

    /** The share of versions, 0 to 1, in which that bottle is over a pressure at a temperature. */
    public double probabilityOver(double celsius, double factor, double bar) {
        return Arrays.stream(bars(table.row().at(celsius), factor))
                        .filter(each -> each > bar)
                        .count()
                / (double) contents.size();
    }

    /** The warmest storage at which the 95 % pressure of that bottle stays within its working pressure. */
    public HeatLimit heatLimit(double factor, PressureLimits limits) {
        double[] weights = new double[contents.size()];
        Arrays.fill(weights, 1.0 / weights.length);
        PressureTable.Row row = table.row();
        return LimitTemperatures.of((celsius, bars) -> fill(row.at(celsius), factor, bars), weights, limits)
                .heatLimit();
    }

    private double[] bars(PressureTable.Row row, double factor) {
        double[] bars = new double[contents.size()];
        fill(row, factor, bars);
        return bars;
    }

    private void fill(PressureTable.Row row, double factor, double[] bars) {
        for (int v = 0; v < bars.length; v++) {
            bars[v] = row.gaugeBar(
                    contents.gramsPerLitre(v, factor),
                    contents.beerFactor(v),
                    contents.airAmount(v),
                    contents.airTrapped(v));
        }
    }

    /** 5, 50 and 95 % of equally likely values: a share lies at or below, never less. */
    static Interval interval(double[] values) {
        double[] sorted = values.clone();
        Arrays.sort(sorted);
        int n = sorted.length;
        return Interval.of(
                sorted[(int) Math.ceil(0.05 * n) - 1],
                sorted[(int) Math.ceil(0.5 * n) - 1],
                sorted[(int) Math.ceil(0.95 * n) - 1]);
    }
}
