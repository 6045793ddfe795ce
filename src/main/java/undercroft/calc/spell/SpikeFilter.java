package undercroft.calc.spell;

/**
 * Takes isolated outliers out of a log: one or two readings in a row that jump away from readings which agree with each
 * other, and come back within the hour. Whatever lasts longer, or rises and falls on a slope, is weather and stays. The
 * thresholds are this tool's own (assumed); they err towards keeping heat that was real.
 */
final class SpikeFilter {
    /** Most readings in a row that count as one outlier. */
    private static final int LONGEST_RUN = 2;

    /** Readings compared with on either side. */
    private static final int BESIDE = 2;

    /** From the last reading before an outlier to the first after it: at half its height it then lasted below 30 min. */
    private static final long RETURNS_BEFORE_SECONDS = 3600;

    /** Readings further off than this say nothing about a moment. */
    private static final long REACH_SECONDS = 7200;

    private static final double LEAST_KELVIN = 3;

    /** How much further off than the readings beside differ among themselves. */
    private static final double OF_RANGE = 3;

    private SpikeFilter() {}

    /**
     * The values with every outlier replaced by the straight line between its neighbours.
     *
     * @param times rising, epoch seconds
     * @param values °C, as many
     */
    static double[] repair(long[] times, double[] values) {
        double[] repaired = values.clone();
        int i = 1;
        while (i + 1 < values.length) {
            int run = runAt(times, repaired, i);
            for (int k = 0; k < run; k++) {
                double share = (double) (times[i + k] - times[i - 1]) / (times[i + run] - times[i - 1]);
                repaired[i + k] = values[i + run] * share + repaired[i - 1] * (1 - share);
            }
            i += Math.max(1, run);
        }
        return repaired;
    }

    /** Length of the outlier that begins at an index, 0 for none; what lies before is repaired already. */
    private static int runAt(long[] times, double[] values, int first) {
        for (int run = 1; run <= LONGEST_RUN && first + run < values.length; run++) {
            if (times[first + run] - times[first - 1] >= RETURNS_BEFORE_SECONDS) {
                return 0;
            }
            if (isOutlier(times, values, first, first + run)) {
                return run;
            }
        }
        return 0;
    }

    private static boolean isOutlier(long[] times, double[] values, int first, int after) {
        double lowest = Double.POSITIVE_INFINITY;
        double highest = Double.NEGATIVE_INFINITY;
        int before = first - 1;
        int beyond = after;
        for (int k = 0; k < BESIDE; k++, before--, beyond++) {
            if (before < 0 || times[first] - times[before] > REACH_SECONDS) {
                return false;
            }
            if (beyond >= values.length || times[beyond] - times[after - 1] > REACH_SECONDS) {
                return false;
            }
            lowest = Math.min(lowest, Math.min(values[before], values[beyond]));
            highest = Math.max(highest, Math.max(values[before], values[beyond]));
        }
        double far = Math.max(LEAST_KELVIN, OF_RANGE * (highest - lowest));
        boolean above = true;
        boolean below = true;
        for (int i = first; i < after; i++) {
            above &= values[i] > highest + far;
            below &= values[i] < lowest - far;
        }
        return above || below;
    }
}
