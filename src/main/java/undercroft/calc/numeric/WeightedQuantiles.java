package undercroft.calc.numeric;

import java.util.Arrays;
import undercroft.quantity.Interval;

/**
 * Quantiles of weighted values: the smallest value that holds at least the wanted share of the weight at or below it.
 * Values may be +∞ ("never"). Works in one pass over buckets and sorts only the bucket a quantile falls into; keeps its
 * working arrays, so one instance serves many columns but not two threads.
 */
public final class WeightedQuantiles {
    private static final double[] FIVE_FIFTY_NINETY_FIVE = {0.05, 0.5, 0.95};
    /** A share that is met but for the rounding of its sum is met: the sum depends on the order it is taken in. */
    private static final double BUT_FOR_ROUNDING = 1 - 1e-12;

    private final double[] weights;
    private final double total;
    private final double[] bucketWeight;
    private final int[] bucketOf;
    private final long[] order;
    private final double[] three = new double[3];

    public WeightedQuantiles(double[] weights) {
        this.weights = weights;
        this.total = Arrays.stream(weights).sum();
        this.bucketWeight = new double[Math.max(16, weights.length)];
        this.bucketOf = new int[weights.length];
        this.order = new long[weights.length];
    }

    public Interval interval(double[] values) {
        of(values, FIVE_FIFTY_NINETY_FIVE, three);
        return Interval.of(three[0], three[1], three[2]);
    }

    /**
     * Writes the quantiles of one column.
     *
     * @param values as many as weights; +∞ allowed
     * @param levels rising, 0 to 1
     * @param out as many as levels
     */
    public void of(double[] values, double[] levels, double[] out) {
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (double value : values) {
            if (value < low) {
                low = value;
            }
            if (value > high && value != Double.POSITIVE_INFINITY) {
                high = value;
            }
        }
        if (!(low < high)) {
            finiteAreAllAlike(values, low, levels, out);
            return;
        }
        int last = bucketWeight.length - 1;
        Arrays.fill(bucketWeight, 0);
        double scale = (last - 1) / (high - low);
        for (int i = 0; i < values.length; i++) {
            int bucket = values[i] == Double.POSITIVE_INFINITY ? last : (int) ((values[i] - low) * scale);
            bucketOf[i] = bucket;
            bucketWeight[bucket] += weights[i];
        }
        int bucket = 0;
        double below = 0;
        for (int k = 0; k < levels.length; k++) {
            double wanted = levels[k] * total * BUT_FOR_ROUNDING;
            while (bucket < last && below + bucketWeight[bucket] < wanted) {
                below += bucketWeight[bucket];
                bucket++;
            }
            out[k] = bucket == last ? Double.POSITIVE_INFINITY : inBucket(values, bucket, wanted - below);
        }
    }

    private void finiteAreAllAlike(double[] values, double value, double[] levels, double[] out) {
        double finite = 0;
        for (int i = 0; i < values.length; i++) {
            if (values[i] != Double.POSITIVE_INFINITY) {
                finite += weights[i];
            }
        }
        for (int k = 0; k < levels.length; k++) {
            out[k] = finite > 0 && levels[k] * total * BUT_FOR_ROUNDING <= finite ? value : Double.POSITIVE_INFINITY;
        }
    }

    private double inBucket(double[] values, int bucket, double wanted) {
        int count = 0;
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < values.length; i++) {
            if (bucketOf[i] == bucket) {
                order[count++] = i;
                highest = Math.max(highest, values[i]);
            }
        }
        sortByValue(values, count);
        double sum = 0;
        for (int i = 0; i < count; i++) {
            int at = (int) order[i];
            sum += weights[at];
            if (sum >= wanted) {
                return values[at];
            }
        }
        return highest;
    }

    /** Buckets hold a handful of values, for which inserting is quickest; full ones are sorted by packed keys. */
    private void sortByValue(double[] values, int count) {
        if (count > 64) {
            sortPacked(values, count);
            return;
        }
        for (int i = 1; i < count; i++) {
            long moving = order[i];
            int j = i - 1;
            while (j >= 0 && values[(int) order[j]] > values[(int) moving]) {
                order[j + 1] = order[j];
                j--;
            }
            order[j + 1] = moving;
        }
    }

    private void sortPacked(double[] values, int count) {
        // The place within the bucket in the upper half, the member's index in the lower.
        double low = Double.POSITIVE_INFINITY;
        double high = Double.NEGATIVE_INFINITY;
        for (int i = 0; i < count; i++) {
            low = Math.min(low, values[(int) order[i]]);
            high = Math.max(high, values[(int) order[i]]);
        }
        double scale = high > low ? 0x7fff_fff0L / (high - low) : 0;
        for (int i = 0; i < count; i++) {
            long place = (long) ((values[(int) order[i]] - low) * scale);
            order[i] |= place << 32;
        }
        Arrays.sort(order, 0, count);
        for (int i = 0; i < count; i++) {
            order[i] &= 0xffff_ffffL;
        }
    }
}
