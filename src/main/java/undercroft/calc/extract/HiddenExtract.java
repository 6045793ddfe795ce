package undercroft.calc.extract;

import org.hipparchus.distribution.continuous.NormalDistribution;
import undercroft.quantity.Check;
import undercroft.quantity.Interval;

/**
 * Fermentable matter nobody wrote down: unfinished beer, or dextrins that a wild or diastatic yeast reaches. Mostly there is
 * none; where there is some, a yeast lets it go over weeks to months. Amounts are grams of hexose in a litre. All figures
 * are assumptions.
 *
 * @param probability that there is any, 0 to 1
 * @param medianGramsPerLitre where there is some, half the batches hold less, above 0
 * @param logDeviation standard deviation of its logarithm
 * @param mostGramsPerLitre never more
 * @param perDayAt21 share let go in a day at 21 °C
 */
public record HiddenExtract(
        double probability,
        double medianGramsPerLitre,
        double logDeviation,
        double mostGramsPerLitre,
        Interval perDayAt21) {
    /** Carbon dioxide from a gram of hexose: 2 × 44.01 / 180.16, less 3 % for cells and by-products (assumed). */
    public static final double CARBON_DIOXIDE_PER_GRAM = 0.4889 * 0.97;

    private static final double MEDIAN = 3;
    private static final double LOG_DEVIATION = 0.99;

    /** 14 gravity points; 99 % of the uncut distribution lie below. */
    private static final double MOST = 30;

    private static final Interval PER_DAY = Interval.of(0.011, 0.033, 0.10);

    /** Nothing is hidden. */
    public static final HiddenExtract NONE = undeclared(0);

    /** Dextrins a declared diastatic yeast reaches: 5 to 20 g/L, in the first version's pace. */
    public static final HiddenExtract DIASTATIC =
            new HiddenExtract(1, 10, Math.log(2) / Interval.NORMAL_95, 30, Interval.of(0.005, 0.02, 0.06));

    private static final NormalDistribution NORMAL = new NormalDistribution();

    /** How well the end of fermentation is known. */
    public enum Known {
        /** Two equal gravities, days apart, at the expected end. */
        STEADY(0.03),
        /** One gravity, at the expected end. */
        AT_END(0.05),
        /** No gravity was read, or nobody knows where it should end. */
        UNREAD(0.08);

        private final double probability;

        Known(double probability) {
            this.probability = probability;
        }
    }

    public HiddenExtract {
        Check.within("probability", probability, 0, 1, "");
        if (!(medianGramsPerLitre > 0 && logDeviation > 0 && mostGramsPerLitre > medianGramsPerLitre)) {
            throw new IllegalArgumentException("no hidden extract: " + medianGramsPerLitre + ", " + logDeviation);
        }
    }

    /** For a beer nobody called diastatic, as its end is known. */
    public static HiddenExtract of(Known known) {
        return undeclared(known.probability);
    }

    /** For a beer nobody called diastatic, with a probability of its own. */
    public static HiddenExtract undeclared(double probability) {
        return new HiddenExtract(probability, MEDIAN, LOG_DEVIATION, MOST, PER_DAY);
    }

    /**
     * The extract where there is some, g/L of hexose: the quantile, at a standard normal deviate, of the log-normal cut off
     * at its most.
     */
    public double gramsPerLitreAt(double deviate) {
        double cut = NORMAL.cumulativeProbability(Math.log(mostGramsPerLitre / medianGramsPerLitre) / logDeviation);
        double share = cut * NORMAL.cumulativeProbability(Math.max(-8, Math.min(8, deviate)));
        return medianGramsPerLitre * Math.exp(logDeviation * NORMAL.inverseCumulativeProbability(share));
    }

    /** The carbon dioxide it gives, g/L. */
    public double carbonDioxideAt(double deviate) {
        return CARBON_DIOXIDE_PER_GRAM * gramsPerLitreAt(deviate);
    }
}
