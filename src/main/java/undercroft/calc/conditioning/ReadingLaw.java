package undercroft.calc.conditioning;

import org.hipparchus.special.Erf;

/**
 * How probable a reading is where a member expects a value: densities of gauge pressure and gravity, chances of words. Figures
 * without a source are assumptions.
 *
 * <p>A gauge and a hydrometer are read to a normal core with exponential tails; a share of slips may explain a reading that is
 * too low (a leak, a stuck needle, gas that lifts a hydrometer) but never one that is too high, so that a higher reading does
 * not lower the forecast. Words are ordered logits with a share of slips.
 */
final class ReadingLaw {
    /** Above this a gauge only says "very much": the likelihood is that of this pressure, bar. */
    static final double MOST_BAR = 10;

    /** A fall of more points than the most hidden extract gives only says as much. */
    static final double MOST_FALL = 14;

    static final double LOGIT_BAR = 0.15;
    static final double LOGIT_VOLUMES = 0.25;

    /** The reading on bottling day and the one now, gravity points. */
    static final double POINTS_SPREAD = Math.hypot(1.0, 0.7);

    /** One reading in fifty is a slip. */
    private static final double SLIP = 0.02;

    /** From so many standard deviations on the tails are exponential. */
    private static final double CORE = 2.5;

    private static final double LOG_CORE_AREA =
            Math.log(Math.sqrt(2 * Math.PI) * Erf.erf(CORE / Math.sqrt(2)) + 2 * Math.exp(-CORE * CORE / 2) / CORE);

    private static final double SLIP_POINTS = 10;

    /** Words to choose from, for a squeezed and for an opened bottle. */
    private static final int WORDS = 5;

    private ReadingLaw() {}

    /** Standard deviation of a gauge reading about what the gauge should show, bar. */
    static double gaugeSpread(double expectedBar) {
        return Math.hypot(0.08, 0.04 * (Math.max(0, expectedBar) + 1));
    }

    /** Log density of a gauge reading, 1/bar. */
    static double logGauge(double readBar, double expectedBar) {
        double read = Math.min(MOST_BAR, readBar);
        double spread = gaugeSpread(expectedBar);
        double log = logCore((read - expectedBar) / spread) - Math.log(spread);
        double slip = read < expectedBar ? SLIP / (Math.max(0, expectedBar) + 1) : 0;
        return Math.log((1 - SLIP) * Math.exp(log) + slip);
    }

    /** Log density of a change of gravity, 1/point; falls are negative. */
    static double logGravity(double readPoints, double expectedPoints) {
        double read = Math.max(-MOST_FALL, readPoints);
        double log = logCore((read - expectedPoints) / POINTS_SPREAD) - Math.log(POINTS_SPREAD);
        double slip = read > expectedPoints ? SLIP / SLIP_POINTS : 0;
        return Math.log((1 - SLIP) * Math.exp(log) + slip);
    }

    /** Log chance of the word between two bounds. */
    static double logWord(double value, double scale, double from, double until) {
        double chance = logistic((until - value) / scale) - logistic((from - value) / scale);
        return Math.log((1 - SLIP) * Math.max(0, chance) + SLIP / WORDS);
    }

    private static double logCore(double deviations) {
        double size = Math.abs(deviations);
        return (size <= CORE ? -size * size / 2 : CORE * (CORE / 2 - size)) - LOG_CORE_AREA;
    }

    private static double logistic(double x) {
        return 1 / (1 + Math.exp(-x));
    }
}
