package undercroft.calc.conditioning;

/** The quantiles of pressure over temperature once nothing ferments any more: rows 1.25 K apart, straight between. */
final class SettledPressure {
    static final int ROWS = 53;
    private static final double COLDEST = -5;
    private static final double STEP_KELVIN = 1.25;

    private final double[][] rows;

    /** Takes over the rows, coldest first. */
    SettledPressure(double[][] rows) {
        this.rows = rows;
    }

    static double celsiusOf(int row) {
        return COLDEST + row * STEP_KELVIN;
    }

    /** Writes the quantiles at a temperature, held to −5 to 60 °C. */
    void at(double celsius, double[] out) {
        double place = Math.max(0, Math.min(ROWS - 1.000001, (celsius - COLDEST) / STEP_KELVIN));
        int row = (int) place;
        double share = place - row;
        for (int k = 0; k < out.length; k++) {
            out[k] = rows[row][k] + share * (rows[row + 1][k] - rows[row][k]);
        }
    }
}
