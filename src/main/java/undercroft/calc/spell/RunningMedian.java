package undercroft.calc.spell;

import java.util.Arrays;

/**
 * Medians of a window that moves along a row of numbers. The window is kept in order: a value comes in and one goes out by
 * moving those between, which for the few hundred values of four weeks takes less time than any tree.
 */
final class RunningMedian {
    private final double[] sorted;
    private int held;

    private RunningMedian(int window) {
        this.sorted = new double[window];
    }

    /**
     * The median of the last {@code window} values at each place, itself included; near the beginning that of the first
     * {@code window} values. NaN values count as absent.
     *
     * @param fewest with fewer values than this in the window the result is NaN
     */
    static double[] trailing(double[] values, int window, int fewest) {
        int first = Math.min(window, values.length);
        RunningMedian held = new RunningMedian(first);
        double[] medians = new double[values.length];
        for (int i = 0; i < first; i++) {
            held.take(values[i]);
        }
        Arrays.fill(medians, 0, first, held.median(fewest));
        for (int i = first; i < values.length; i++) {
            held.leave(values[i - window]);
            held.take(values[i]);
            medians[i] = held.median(fewest);
        }
        return medians;
    }

    private void take(double value) {
        if (!Double.isNaN(value)) {
            int found = Arrays.binarySearch(sorted, 0, held, value);
            int place = found >= 0 ? found : -found - 1;
            System.arraycopy(sorted, place, sorted, place + 1, held - place);
            sorted[place] = value;
            held++;
        }
    }

    private void leave(double value) {
        if (!Double.isNaN(value)) {
            int place = Arrays.binarySearch(sorted, 0, held, value);
            held--;
            System.arraycopy(sorted, place + 1, sorted, place, held - place);
        }
    }

    private double median(int fewest) {
        if (held == 0 || held < fewest) {
            return Double.NaN;
        }
        return (sorted[(held - 1) / 2] + sorted[held / 2]) / 2;
    }
}
