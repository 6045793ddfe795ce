package undercroft.calc.spell;

/**
 * Hampel's filter over a window of time, in constant work a sample: the window is a histogram of 1/32 K bins with sums
 * over blocks of bins. The running median walks with the window (Huang, Yang and Tang 1979, IEEE Trans. ASSP 27:13); the
 * median absolute deviation is never computed, since it is below d exactly where more than half the window lies within d
 * of the median.
 */
final class SpikeFilter {
    private static final long REACH_SECONDS = 6 * 3600;
    private static final double LEAST_KELVIN = 3;
    private static final double DEVIATIONS = 4 * 1.4826;
    private static final int FEWEST = 5;

    private static final int BINS_PER_KELVIN = 32;
    private static final int BLOCK_BITS = 6;
    private static final int BINS = (int) ((CleanSeries.WARMEST - CleanSeries.COLDEST) * BINS_PER_KELVIN) + 1;

    private final int[] bins = new int[BINS];
    private final int[] blocks = new int[(BINS >> BLOCK_BITS) + 1];
    private int held;
    private int median;
    // How many samples of the window lie in bins below the median's.
    private int below;

    private SpikeFilter() {}

    /** The values with every spike replaced by its window's median. */
    static double[] repair(long[] times, double[] values) {
        SpikeFilter filter = new SpikeFilter();
        double[] repaired = values.clone();
        int entering = 0;
        int leaving = 0;
        for (int i = 0; i < values.length; i++) {
            while (entering < values.length && times[entering] <= times[i] + REACH_SECONDS) {
                filter.add(bin(values[entering++]), 1);
            }
            while (times[leaving] < times[i] - REACH_SECONDS) {
                filter.add(bin(values[leaving++]), -1);
            }
            filter.settle();
            int deviation = Math.abs(bin(values[i]) - filter.median);
            if (deviation > LEAST_KELVIN * BINS_PER_KELVIN
                    && filter.held >= FEWEST
                    && filter.mostLieWithin(deviation)) {
                repaired[i] = filter.median / (double) BINS_PER_KELVIN + CleanSeries.COLDEST;
            }
        }
        return repaired;
    }

    private static int bin(double celsius) {
        return (int) Math.round((celsius - CleanSeries.COLDEST) * BINS_PER_KELVIN);
    }

    private void add(int bin, int count) {
        bins[bin] += count;
        blocks[bin >> BLOCK_BITS] += count;
        held += count;
        if (bin < median) {
            below += count;
        }
    }

    /** Walks the median to the bin of the middle sample, the lower of two. */
    private void settle() {
        int rank = (held - 1) / 2;
        while (below > rank) {
            median--;
            below -= bins[median];
        }
        while (below + bins[median] <= rank) {
            below += bins[median];
            median++;
        }
    }

    private boolean mostLieWithin(int deviation) {
        // Strictly nearer than deviation / 5.93, in whole bins.
        int near = (int) Math.ceil(deviation / DEVIATIONS) - 1;
        int from = Math.max(0, median - near);
        int until = Math.min(BINS, median + near + 1);
        return 2 * (upTo(until) - upTo(from)) > held;
    }

    private int upTo(int bin) {
        int sum = 0;
        int block = bin >> BLOCK_BITS;
        for (int i = 0; i < block; i++) {
            sum += blocks[i];
        }
        for (int i = block << BLOCK_BITS; i < bin; i++) {
            sum += bins[i];
        }
        return sum;
    }
}
