package undercroft.calc.gas;

/**
 * What time under pressure has done to glass: static fatigue. Damage grows with the 16th power of the load (soda-lime glass;
 * the power behind k_mod = 0.663 t^(−1/16), t in hours, of EN 16612), so a history is worth one constant pressure held for
 * 60 s, p₆₀ = (∫ p¹⁶ dt / 60 s)^(1/16), to be compared with the strength shown in a 60-second test.
 *
 * <p>The state of a history is that one number, 0 for a new bottle, and every step maps it to the next one; nothing is
 * allocated, and as all powers are of ratios up to 1 nothing overflows. Gauge pressures below zero count as zero. Plastic
 * creeps instead, so this says nothing about it.
 */
public final class PressureMemory {
    /** Power of the load in the damage. */
    public static final int EXPONENT = 16;

    private static final double MINUTE = 60;

    private PressureMemory() {}

    /**
     * The minute equivalent after holding a pressure for a while.
     *
     * @param equivalentBar minute equivalent so far, bar, 0 or more
     * @param gaugeBar pressure held, bar gauge, finite
     * @param seconds how long, 0 or more
     * @return bar, never less than before
     * @throws IllegalArgumentException on negative or non-finite input
     */
    public static double after(double equivalentBar, double gaugeBar, double seconds) {
        check(equivalentBar, gaugeBar, seconds);
        double bar = Math.max(0, gaugeBar);
        return join(equivalentBar, bar, seconds / MINUTE);
    }

    /**
     * The minute equivalent after a pressure that went evenly from one value to another, integrated exactly: b¹⁶ (1 + r +
     * … + r¹⁶) / 17 on average, r the smaller over the larger value b.
     *
     * @param equivalentBar minute equivalent so far, bar, 0 or more
     * @param fromBar first pressure, bar gauge, finite
     * @param toBar last pressure, bar gauge, finite
     * @param seconds how long, 0 or more
     * @throws IllegalArgumentException on negative or non-finite input
     */
    public static double afterRamp(double equivalentBar, double fromBar, double toBar, double seconds) {
        check(equivalentBar, fromBar, seconds);
        check(equivalentBar, toBar, seconds);
        double larger = Math.max(fromBar, toBar);
        double smaller = Math.min(fromBar, toBar);
        if (larger <= 0) {
            return equivalentBar;
        }
        double time = seconds / MINUTE;
        if (smaller < 0) {
            time *= larger / (larger - smaller);
            smaller = 0;
        }
        double ratio = smaller / larger;
        double sum = 1;
        for (int i = 0; i < EXPONENT; i++) {
            sum = 1 + ratio * sum;
        }
        return join(equivalentBar, larger, time * sum / (EXPONENT + 1));
    }

    /**
     * The minute equivalent of pressures sampled at even steps, taken as straight between samples.
     *
     * @param gaugeBar samples, bar gauge, finite
     * @param fromInclusive first sample used
     * @param untilExclusive one after the last sample used; fewer than two samples make no history and give 0
     * @param stepSeconds time between samples, above 0
     * @throws IllegalArgumentException on bad samples or step
     * @throws IndexOutOfBoundsException when the range leaves the array
     */
    public static double minuteEquivalentBar(
            double[] gaugeBar, int fromInclusive, int untilExclusive, double stepSeconds) {
        double equivalent = 0;
        for (int i = fromInclusive + 1; i < untilExclusive; i++) {
            equivalent = afterRamp(equivalent, gaugeBar[i - 1], gaugeBar[i], stepSeconds);
        }
        return equivalent;
    }

    /** All samples: see {@link #minuteEquivalentBar(double[], int, int, double)}. */
    public static double minuteEquivalentBar(double[] gaugeBar, double stepSeconds) {
        return minuteEquivalentBar(gaugeBar, 0, gaugeBar.length, stepSeconds);
    }

    /** The share of its minute strength that a history has asked of a bottle; 1 and more means expected to have burst. */
    public static double shareOfStrength(double equivalentBar, PressureLimits limits) {
        check(equivalentBar, 0, 0);
        return equivalentBar / limits.minuteStrengthBar();
    }

    /**
     * Strength under a constant load of some duration over the strength in a 60-second test, (60 s / t)^(1/16): 0.77 for an
     * hour, 0.44 for a year.
     *
     * @param seconds above 0
     * @throws IllegalArgumentException otherwise
     */
    public static double lastingShare(double seconds) {
        if (!(seconds > 0 && seconds < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("seconds is " + seconds + ", not above 0");
        }
        return sixteenthRoot(MINUTE / seconds);
    }

    private static double join(double equivalentBar, double bar, double minutes) {
        double most = Math.max(equivalentBar, bar);
        if (most == 0) {
            return 0;
        }
        return most * sixteenthRoot(sixteenth(equivalentBar / most) + minutes * sixteenth(bar / most));
    }

    private static double sixteenth(double x) {
        double x2 = x * x;
        double x4 = x2 * x2;
        double x8 = x4 * x4;
        return x8 * x8;
    }

    private static double sixteenthRoot(double x) {
        return Math.sqrt(Math.sqrt(Math.sqrt(Math.sqrt(x))));
    }

    private static void check(double equivalentBar, double gaugeBar, double seconds) {
        if (!(equivalentBar >= 0 && equivalentBar < Double.POSITIVE_INFINITY)
                || !(Math.abs(gaugeBar) < Double.POSITIVE_INFINITY)
                || !(seconds >= 0 && seconds < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "no history: " + equivalentBar + " bar, " + gaugeBar + " bar for " + seconds + " s");
        }
    }
}
