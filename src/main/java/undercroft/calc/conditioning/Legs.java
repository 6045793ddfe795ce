package undercroft.calc.conditioning;

import java.util.Arrays;

/**
 * Steps joined to legs of up to three days, or to the next instant asked for, each told as mean and standard deviation of its
 * temperature. Enough for what runs over weeks.
 */
final class Legs {
    private static final double LONGEST_DAYS = 3;

    final double[] days;
    final double[] celsius;

    /** Standard deviation of the temperature within the leg, K. */
    final double[] swing;

    /** Standard deviation of what is known of it, K. */
    final double[] spread;

    /** How many instants lie at or before the leg's end. */
    final int[] instantsPassed;

    final int size;

    /** For each step, the leg that begins where it ends; −1 where none does. */
    final int[] legAfterStep;

    /** For each instant, how far into its leg it lies, 0 to 1. */
    final double[] shareOfLeg;

    private Legs(Steps steps, long[] instants) {
        int most = steps.size;
        double[] length = new double[most];
        double[] mean = new double[most];
        double[] square = new double[most];
        double[] known = new double[most];
        int[] passed = new int[most];
        legAfterStep = new int[steps.size];
        Arrays.fill(legAfterStep, -1);
        shareOfLeg = new double[instants.length];
        Arrays.fill(shareOfLeg, 1);
        int leg = 0;
        double begun = steps.size > 0 ? steps.endEpochSecond[0] - steps.days[0] * Steps.SECONDS_PER_DAY : 0;
        int before = steps.instantsBefore;
        for (int s = 0; s < steps.size; s++) {
            double whole = length[leg] + steps.days[s];
            double away = steps.celsius[s] - mean[leg];
            mean[leg] += away * steps.days[s] / whole;
            square[leg] += steps.days[s] * (away * (steps.celsius[s] - mean[leg]) + steps.swing[s] * steps.swing[s]);
            known[leg] += (steps.spread[s] - known[leg]) * steps.days[s] / whole;
            length[leg] = whole;
            boolean atInstant = steps.instantsPassed[s] > (s == 0 ? steps.instantsBefore : steps.instantsPassed[s - 1]);
            boolean last = s + 1 == steps.size;
            if (last || (atInstant && whole + nextDays(steps, instants, s) > LONGEST_DAYS)) {
                passed[leg] = steps.instantsPassed[s];
                for (int i = before; i < passed[leg]; i++) {
                    shareOfLeg[i] = Math.min(1, (instants[i] - begun) / (whole * Steps.SECONDS_PER_DAY));
                }
                before = passed[leg];
                begun = steps.endEpochSecond[s];
                leg++;
                if (!last) {
                    legAfterStep[s] = leg;
                }
            }
        }
        size = leg;
        days = Arrays.copyOf(length, size);
        celsius = Arrays.copyOf(mean, size);
        spread = Arrays.copyOf(known, size);
        instantsPassed = Arrays.copyOf(passed, size);
        swing = new double[size];
        for (int l = 0; l < size; l++) {
            swing[l] = Math.sqrt(square[l] / days[l]);
        }
    }

    static Legs of(Steps steps, long[] instants) {
        return new Legs(steps, instants);
    }

    /** Days from the end of a step to the next instant; 0 when there is none. */
    private static double nextDays(Steps steps, long[] instants, int step) {
        int next = steps.instantsPassed[step];
        return next < instants.length
                ? (instants[next] - steps.endEpochSecond[step]) / Steps.SECONDS_PER_DAY
                : Double.POSITIVE_INFINITY;
    }
}
