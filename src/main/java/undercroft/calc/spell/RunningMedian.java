package undercroft.calc.spell;

import java.util.Arrays;

/**
 * Medians of a window that moves along a row of numbers, in O(log n) a step: counts over the ranks of all values in a
 * Fenwick tree (Fenwick 1994, Software: Practice and Experience 24:327), which finds the k-th by halving.
 */
final class RunningMedian {
    private final double[] sorted;
    private final int[] tree;
    private final int top;
    private int held;

    private RunningMedian(double[] values) {
        double[] all = Arrays.stream(values)
                .filter(x -> !Double.isNaN(x))
                .sorted()
                .distinct()
                .toArray();
        this.sorted = all;
        this.tree = new int[all.length + 1];
        this.top = Integer.highestOneBit(Math.max(1, all.length));
    }

    /**
     * The median of the last {@code window} values at each place, itself included; near the beginning that of the first
     * {@code window} values. NaN values count as absent.
     *
     * @param fewest with fewer values than this in the window the result is NaN
     */
    static double[] trailing(double[] values, int window, int fewest) {
        RunningMedian counts = new RunningMedian(values);
        double[] medians = new double[values.length];
        int first = Math.min(window, values.length);
        for (int i = 0; i < first; i++) {
            counts.count(values[i], 1);
        }
        Arrays.fill(medians, 0, first, counts.median(fewest));
        for (int i = first; i < values.length; i++) {
            counts.count(values[i], 1);
            counts.count(values[i - window], -1);
            medians[i] = counts.median(fewest);
        }
        return medians;
    }

    private void count(double value, int by) {
        if (Double.isNaN(value)) {
            return;
        }
        held += by;
        for (int i = Arrays.binarySearch(sorted, value) + 1; i < tree.length; i += i & -i) {
            tree[i] += by;
        }
    }

    private double median(int fewest) {
        if (held == 0 || held < fewest) {
            return Double.NaN;
        }
        return (kth((held - 1) / 2) + kth(held / 2)) / 2;
    }

    private double kth(int rank) {
        int place = 0;
        int left = rank;
        for (int jump = top; jump > 0; jump >>= 1) {
            if (place + jump < tree.length && tree[place + jump] <= left) {
                place += jump;
                left -= tree[place];
            }
        }
        return sorted[place];
    }
}
