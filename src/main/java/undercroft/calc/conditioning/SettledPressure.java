package undercroft.calc.conditioning;

import undercroft.quantity.Interval;

/**
 * The quantiles of pressure over temperature at an instant from which the sugar is gone: rows 1.25 K apart, straight between,
 * each filled when it is first asked for.
 */
final class SettledPressure {
    private static final int ROWS = 53;
    private static final double COLDEST = -5;
    private static final double STEP_KELVIN = 1.25;
    private static final int MEDIAN = 2;
    private static final double[] DEVIATIONS = {
        -Interval.NORMAL_95, -Interval.NORMAL_75, 0, Interval.NORMAL_75, Interval.NORMAL_95
    };

    private final double[][] rows = new double[ROWS][];
    private final Quantiles quantiles;

    /** What fills a row. */
    @FunctionalInterface
    interface Quantiles {
        /** 5, 25, 50, 75 and 95 % pressure at a temperature, in a new array. */
        double[] at(double celsius);
    }

    SettledPressure(Quantiles quantiles) {
        this.quantiles = quantiles;
    }

    private double[] filled(int row) {
        if (rows[row] == null) {
            rows[row] = quantiles.at(COLDEST + row * STEP_KELVIN);
        }
        return rows[row];
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
        double[] colder = filled(row);
        double[] warmer = filled(row + 1);
        for (int k = 0; k < out.length; k++) {
            out[k] = colder[k] + share * (warmer[k] - colder[k]);
        }
        if (spreadKelvin > 0) {
            double median = out[MEDIAN];
            double barPerSpread = (warmer[MEDIAN] - colder[MEDIAN]) / STEP_KELVIN * spreadKelvin;
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
