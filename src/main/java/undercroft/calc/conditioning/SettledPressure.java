package undercroft.calc.conditioning;

import undercroft.quantity.Interval;

/** The quantiles of pressure over temperature once nothing ferments any more: rows 1.25 K apart, straight between. */
final class SettledPressure {
    static final int ROWS = 53;
    private static final double COLDEST = -5;
    private static final double STEP_KELVIN = 1.25;
    private static final int MEDIAN = 2;
    private static final double[] DEVIATIONS = {
        -Interval.NORMAL_95, -Interval.NORMAL_75, 0, Interval.NORMAL_75, Interval.NORMAL_95
    };

    private final double[][] rows;

    /** Takes over the rows, coldest first. */
    SettledPressure(double[][] rows) {
        this.rows = rows;
    }

    static double celsiusOf(int row) {
        return COLDEST + row * STEP_KELVIN;
    }

    /**
     * Writes the 5, 25, 50, 75 and 95 % values at a temperature, held to −5 to 60 °C. What the temperature's own spread adds
     * is independent of what the bottles differ in, so the two distances from the median add in quadrature.
     *
     * @param spreadKelvin standard deviation of the temperature, 0 or more
     */
    void at(double celsius, double spreadKelvin, double[] out) {
        int row = row(celsius);
        double share = share(celsius, row);
        for (int k = 0; k < out.length; k++) {
            out[k] = rows[row][k] + share * (rows[row + 1][k] - rows[row][k]);
        }
        if (spreadKelvin > 0) {
            double median = out[MEDIAN];
            double barPerSpread = (rows[row + 1][MEDIAN] - rows[row][MEDIAN]) / STEP_KELVIN * spreadKelvin;
            for (int k = 0; k < out.length; k++) {
                out[k] = median
                        + Math.copySign(Math.hypot(out[k] - median, DEVIATIONS[k] * barPerSpread), DEVIATIONS[k]);
            }
        }
    }

    private static int row(double celsius) {
        return (int) Math.max(0, Math.min(ROWS - 2, (celsius - COLDEST) / STEP_KELVIN));
    }

    private static double share(double celsius, int row) {
        return Math.max(0, Math.min(1, (celsius - COLDEST) / STEP_KELVIN - row));
    }
}
