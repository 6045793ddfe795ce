package undercroft.calc.gas;

import undercroft.quantity.Interval;

/**
 * How much less CO2 beer dissolves than water, as a factor on the solubility.
 *
 * <p>Derived for this tool from scattered evidence: a lager at 6 °C measured at 2.4 g/L·bar (0.90) and champagne at 10 °C
 * at 2.1 (0.91; both PMC8047704, table 1), the EU/OIV wine formula (0.89 at 5 % ABV, 0.84 at 12.5 %). The line through it is an assumption, and so is the spread of 0.05.
 */
public final class BeerFactor {
    /** Half the 90 % interval, and the step from the best to the safety value. */
    public static final double SPREAD = 0.05;

    private static final double LEAST = 0.85;
    private static final double MOST = 1.00;

    private BeerFactor() {}

    /**
     * Best value with its 5 % and 95 % bounds: 0.95 − 0.006 (ABV − 5) − 0.0008 (real extract − 40) ± 0.05, all three kept
     * within 0.85 to 1.00.
     *
     * @param abvPercent alcohol, 0 to 25 % by volume
     * @param realExtractGramsPerLitre extract left in the finished beer, 0 to 200 g/L; 40 is usual
     * @throws IllegalArgumentException outside these ranges
     */
    public static Interval of(double abvPercent, double realExtractGramsPerLitre) {
        double best = best(abvPercent, realExtractGramsPerLitre);
        return Interval.of(clamp(best - SPREAD), best, clamp(best + SPREAD));
    }

    /** The value for safety checks, 0.05 under the best one and so 0.80 to 0.95; arguments as {@link #of}. */
    public static double safety(double abvPercent, double realExtractGramsPerLitre) {
        return best(abvPercent, realExtractGramsPerLitre) - SPREAD;
    }

    private static double best(double abvPercent, double realExtractGramsPerLitre) {
        Require.within("abvPercent", abvPercent, 0, 25);
        Require.within("realExtractGramsPerLitre", realExtractGramsPerLitre, 0, 200);
        return clamp(0.95 - 0.006 * (abvPercent - 5) - 0.0008 * (realExtractGramsPerLitre - 40));
    }

    private static double clamp(double factor) {
        return Math.min(MOST, Math.max(LEAST, factor));
    }
}
