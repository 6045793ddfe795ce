package undercroft.calc.numeric;

/**
 * The Wright omega function, the w > 0 with w + ln w = y: what Michaelis-Menten uptake leaves after a given time
 * (Schnell and Mendoza 1997, J. Theor. Biol. 187:207, there as Lambert's W of e^y). Starting values and the fourth-order
 * step follow Lawrence, Corless and Jeffrey 2012, ACM TOMS 38:20 (algorithm 917).
 */
public final class WrightOmega {
    private static final double FROM = -14;
    private static final double UNTIL = 64;
    private static final int PER_UNIT = 16;
    private static final double[] VALUES = new double[(int) ((UNTIL - FROM) * PER_UNIT) + 2];
    private static final double[] SLOPES = new double[VALUES.length];

    static {
        for (int i = 0; i < VALUES.length; i++) {
            double w = at(FROM + (double) i / PER_UNIT);
            VALUES[i] = w;
            SLOPES[i] = w / (1 + w) / PER_UNIT;
        }
    }

    private WrightOmega() {}

    /** The same from a table with cubic pieces, right to 1e-8: what a forecast needs at every instant. */
    public static double quick(double y) {
        if (y < FROM) {
            return Math.exp(y);
        }
        if (y >= UNTIL) {
            return at(y);
        }
        double scaled = (y - FROM) * PER_UNIT;
        int i = (int) scaled;
        double t = scaled - i;
        double rise = VALUES[i + 1] - VALUES[i];
        double a = SLOPES[i] - rise;
        double b = rise - SLOPES[i + 1];
        return VALUES[i] + t * rise + t * (1 - t) * (a * (1 - t) + b * t);
    }

    /** Any finite y; the result is positive (0 when e^y underflows), right to about 1e-14 of itself. */
    public static double at(double y) {
        if (y < -36) {
            return Math.exp(y);
        }
        double w = firstGuess(y);
        for (int i = 0; i < 2; i++) {
            double r = y - w - Math.log(w);
            double s = 1 + w;
            double t = s * (s + 2.0 / 3.0 * r);
            w *= 1 + r / s * (t - r / 2) / (t - r);
        }
        return w;
    }

    private static double firstGuess(double y) {
        if (y < -2) {
            double e = Math.exp(y);
            return e * (1 - e * (1 - 1.5 * e));
        }
        if (y < 1 + Math.PI) {
            double d = y - 1;
            return 1 + d * (1.0 / 2 + d * (1.0 / 16 - d * (1.0 / 192 + d / 3072)));
        }
        double log = Math.log(y);
        return y - log + log / y;
    }
}
