package undercroft.calc.conditioning;

import org.hipparchus.distribution.continuous.NormalDistribution;
import undercroft.quantity.Interval;

/**
 * How likely a glass bottle of a lot is to have burst under a pressure history told as one pressure held for 60 s
 * ({@link undercroft.calc.gas.PressureMemory}). Sound bottles differ by 16 % among themselves and by 10 % from batch to batch
 * (eight old bottles of one make: 12.9 %, Polytechnisches Journal 61:405; the rest derived from cellar losses of 1829, ibid.
 * 37); a small share is chipped and bears half, not nothing: a flaw that bursts at any pressure would make bursts worthless
 * as evidence. Figures are assumptions.
 *
 * @param minuteBar pressure the class is taken to stand for 60 s, above 0
 * @param doseVariation standard deviation of the sugar in a bottle over its mean
 */
public record GlassStrength(double minuteBar, double doseVariation) {
    /** The grade lies below the middle of what is made: a class of 12 bar has a median of 14. */
    private static final double GRADE_OVER_MEDIAN = 0.86;

    private static final double BETWEEN_BATCHES = 0.10;
    private static final double BETWEEN_BOTTLES = 0.16;
    private static final double CHIPPED_SHARE_OF_STRENGTH = 0.5;
    private static final double BETWEEN_CHIPPED = 0.25;

    /** A bottle's own dose moves its pressure by 0.7 of the dose's share, as part of the gas was there before. */
    private static final double PRESSURE_PER_DOSE = 0.7;

    private static final Interval CHIPPED_SHARE = Interval.of(0.01, 0.02, 0.03);
    private static final NormalDistribution NORMAL = new NormalDistribution();

    /** Median strength of the sound bottles at a batch's deviate, bar for 60 s. */
    double soundMedianBar(double deviate) {
        return minuteBar / GRADE_OVER_MEDIAN * Math.exp(BETWEEN_BATCHES * deviate);
    }

    /** The share of bottles expected to have burst, 0 to 1. */
    double shareBurst(double heldForAMinuteBar, double strengthDeviate, double chipsDeviate) {
        if (!(heldForAMinuteBar > 0)) {
            return 0;
        }
        double chipped = CHIPPED_SHARE.valueAt(chipsDeviate);
        double between = Math.hypot(BETWEEN_BOTTLES, PRESSURE_PER_DOSE * doseVariation);
        double sound = probability(Math.log(heldForAMinuteBar / soundMedianBar(strengthDeviate)) / between);
        return chipped * shareOfChippedBurst(heldForAMinuteBar, strengthDeviate) + (1 - chipped) * sound;
    }

    /** The share of the chipped bottles expected to have burst, 0 to 1. */
    double shareOfChippedBurst(double heldForAMinuteBar, double strengthDeviate) {
        if (!(heldForAMinuteBar > 0)) {
            return 0;
        }
        double median = CHIPPED_SHARE_OF_STRENGTH * soundMedianBar(strengthDeviate);
        return probability(Math.log(heldForAMinuteBar / median) / BETWEEN_CHIPPED);
    }

    private static double probability(double deviate) {
        return NORMAL.cumulativeProbability(deviate);
    }
}
