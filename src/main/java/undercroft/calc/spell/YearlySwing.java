package undercroft.calc.spell;

/**
 * A place's year as one wave, S(t) = mean + amplitude · cos(2π (t − warmest) / 365.2425 d).
 *
 * @param meanCelsius mean of the year, −40 to 60 °C
 * @param amplitudeKelvin half the way from coldest to warmest, 0 to 40 K
 * @param warmestDay day of the year, 1 to 366; an unheated dwelling's is some weeks after midsummer
 */
public record YearlySwing(double meanCelsius, double amplitudeKelvin, double warmestDay) {
    private static final double YEAR_SECONDS = 365.2425 * 86_400;

    public YearlySwing {
        if (!(meanCelsius >= -40 && meanCelsius <= 60)
                || !(amplitudeKelvin >= 0 && amplitudeKelvin <= 40)
                || !(warmestDay >= 1 && warmestDay < 367)) {
            throw new IllegalArgumentException("no place has a year like that");
        }
    }

    /** The wave's height at an instant, °C; the day of the year is good to a day and a half. */
    public double celsiusAt(long epochSecond) {
        return meanCelsius + amplitudeKelvin * Math.cos(phase(epochSecond) - 2 * Math.PI * (warmestDay - 1) / 365.2425);
    }

    /**
     * The wave nearest to daily means by least squares.
     *
     * @param epochSeconds instants of the means; at least three, spread over most of a year to make sense
     * @param celsius as many means
     */
    static YearlySwing fitted(long[] epochSeconds, double[] celsius) {
        double[][] normal = new double[3][4];
        for (int i = 0; i < celsius.length; i++) {
            double phase = phase(epochSeconds[i]);
            double[] row = {1, Math.cos(phase), Math.sin(phase), celsius[i]};
            for (int j = 0; j < 3; j++) {
                for (int k = 0; k < 4; k++) {
                    normal[j][k] += row[j] * row[k];
                }
            }
        }
        double[] solution = solved(normal);
        double amplitude = Math.min(40, Math.hypot(solution[1], solution[2]));
        double warmest = Math.atan2(solution[2], solution[1]) / (2 * Math.PI) * 365.2425;
        double mean = Math.max(-40, Math.min(60, solution[0]));
        return new YearlySwing(mean, amplitude, 1 + (warmest + 365.2425) % 365.2425);
    }

    private static double phase(long epochSecond) {
        return 2 * Math.PI * (epochSecond / YEAR_SECONDS);
    }

    /** Gauss and Jordan's elimination; the normal matrix is positive definite, so no row needs to move. */
    private static double[] solved(double[][] rows) {
        for (int pivot = 0; pivot < 3; pivot++) {
            double scale = rows[pivot][pivot];
            for (int k = pivot; k < 4; k++) {
                rows[pivot][k] /= scale;
            }
            for (int j = 0; j < 3; j++) {
                double factor = rows[j][pivot];
                if (j != pivot) {
                    for (int k = pivot; k < 4; k++) {
                        rows[j][k] -= factor * rows[pivot][k];
                    }
                }
            }
        }
        return new double[] {rows[0][3], rows[1][3], rows[2][3]};
    }
}
