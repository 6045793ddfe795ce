package undercroft.calc.numeric;

/** Weights kept as logarithms, however small or large they are. */
public final class LogWeights {
    private LogWeights() {}

    /**
     * Log of the sum of the weights.
     *
     * @param logs one or more, not all minus infinity
     */
    public static double logSum(double[] logs) {
        double highest = highest(logs);
        double sum = 0;
        for (double log : logs) {
            sum += Math.exp(log - highest);
        }
        return highest + Math.log(sum);
    }

    /**
     * The weights themselves, scaled to a sum of 1.
     *
     * @param logs one or more, not all minus infinity
     */
    public static double[] normalised(double[] logs) {
        double highest = highest(logs);
        double[] weights = new double[logs.length];
        double sum = 0;
        for (int i = 0; i < weights.length; i++) {
            weights[i] = Math.exp(logs[i] - highest);
            sum += weights[i];
        }
        for (int i = 0; i < weights.length; i++) {
            weights[i] /= sum;
        }
        return weights;
    }

    private static double highest(double[] logs) {
        double highest = Double.NEGATIVE_INFINITY;
        for (double log : logs) {
            highest = Math.max(highest, log);
        }
        return highest;
    }
}
