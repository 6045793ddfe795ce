package undercroft.calc.numeric;

/**
 * ln(1 + e^x) from a table with cubic pieces, good to 1e-8 and several times faster than the two library calls. The lag
 * needs it once for every member and step.
 */
public final class Softplus {
    private static final double FROM = -6;
    private static final double UNTIL = 24;
    private static final int PER_UNIT = 16;
    private static final double[] VALUES = new double[(int) ((UNTIL - FROM) * PER_UNIT) + 2];
    private static final double[] SLOPES = new double[VALUES.length];

    static {
        for (int i = 0; i < VALUES.length; i++) {
            double x = FROM + (double) i / PER_UNIT;
            VALUES[i] = Math.log1p(Math.exp(x));
            SLOPES[i] = 1 / (1 + Math.exp(-x)) / PER_UNIT;
        }
    }

    private Softplus() {}

    /** For x of −6 or more; below it −6 is taken. */
    public static double at(double x) {
        if (x >= UNTIL) {
            return x;
        }
        double scaled = (Math.max(FROM, x) - FROM) * PER_UNIT;
        int i = (int) scaled;
        double t = scaled - i;
        double rise = VALUES[i + 1] - VALUES[i];
        double a = SLOPES[i] - rise;
        double b = rise - SLOPES[i + 1];
        return VALUES[i] + t * rise + t * (1 - t) * (a * (1 - t) + b * t);
    }
}
