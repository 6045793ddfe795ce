package undercroft.series;

/**
 * The few samples of a series that a picture of a given width can show, in time order, each with a note whether the
 * line breaks before it. Immutable.
 */
public final class ThinnedSeries {
    private final long[] epochSeconds;
    private final double[] values;
    private final boolean[] breaks;
    private final int size;

    ThinnedSeries(long[] epochSeconds, double[] values, boolean[] breaks, int size) {
        this.epochSeconds = epochSeconds;
        this.values = values;
        this.breaks = breaks;
        this.size = size;
    }

    public int size() {
        return size;
    }

    public long timeAt(int index) {
        return epochSeconds[index];
    }

    public double valueAt(int index) {
        return values[index];
    }

    /** Whether a gap lies between this sample and the one before; the first sample has none before it. */
    public boolean breaksBefore(int index) {
        return breaks[index];
    }
}
