package undercroft.series;

import java.util.Arrays;
import java.util.function.DoubleUnaryOperator;

/**
 * A quantity with its spread in time: its 5, 25, 50, 75 and 95 % values at strictly rising instants. Values may be NaN
 * where nothing is known, which a picture shows as a gap.
 */
public final class Band {
    private final long[] epochSeconds;
    private final double[] low;
    private final double[] lowerQuartile;
    private final double[] median;
    private final double[] upperQuartile;
    private final double[] high;

    private Band(long[] epochSeconds, double[][] levels) {
        this.epochSeconds = epochSeconds;
        this.low = levels[0];
        this.lowerQuartile = levels[1];
        this.median = levels[2];
        this.upperQuartile = levels[3];
        this.high = levels[4];
    }

    /** Takes over the arrays: five levels (5, 25, 50, 75, 95 %), each as long as the instants. */
    public static Band of(long[] epochSeconds, double[]... levels) {
        if (levels.length != 5) {
            throw new IllegalArgumentException("a band has five levels");
        }
        for (double[] level : levels) {
            if (level.length != epochSeconds.length) {
                throw new IllegalArgumentException("every level is as long as the instants");
            }
        }
        return new Band(epochSeconds, levels);
    }

    public int size() {
        return epochSeconds.length;
    }

    public long timeAt(int index) {
        return epochSeconds[index];
    }

    public double lowAt(int index) {
        return low[index];
    }

    public double lowerQuartileAt(int index) {
        return lowerQuartile[index];
    }

    public double medianAt(int index) {
        return median[index];
    }

    public double upperQuartileAt(int index) {
        return upperQuartile[index];
    }

    public double highAt(int index) {
        return high[index];
    }

    /** The same band in another unit: a rising function of every level, such as bar to psi. What is not known stays so. */
    public Band mapRising(DoubleUnaryOperator rising) {
        double[][] levels = {low, lowerQuartile, median, upperQuartile, high};
        double[][] mapped = new double[levels.length][];
        for (int level = 0; level < levels.length; level++) {
            mapped[level] = Arrays.stream(levels[level])
                    .map(value -> Double.isNaN(value) ? value : rising.applyAsDouble(value))
                    .toArray();
        }
        return new Band(epochSeconds, mapped);
    }

    /** The range of two bands of the same instants, about the higher of their medians. NaN where either is. */
    public Band orHigher(Band other) {
        if (!Arrays.equals(epochSeconds, other.epochSeconds)) {
            throw new IllegalArgumentException("bands of the same instants can be held together");
        }
        double[][] one = {low, lowerQuartile, median, upperQuartile, high};
        double[][] two = {other.low, other.lowerQuartile, other.median, other.upperQuartile, other.high};
        double[][] both = new double[one.length][low.length];
        for (int level = 0; level < one.length; level++) {
            for (int i = 0; i < low.length; i++) {
                both[level][i] =
                        level < 2 ? Math.min(one[level][i], two[level][i]) : Math.max(one[level][i], two[level][i]);
            }
        }
        return new Band(epochSeconds, both);
    }

    /** The median alone, where it is known. */
    public TimeSeries medianSeries() {
        TimeSeries.Builder known = new TimeSeries.Builder();
        for (int i = 0; i < median.length; i++) {
            if (Double.isFinite(median[i])) {
                known.add(epochSeconds[i], median[i]);
            }
        }
        return known.build();
    }

    /** The array itself, for code of this package that reads it and never writes. */
    long[] times() {
        return epochSeconds;
    }

    /** The array itself, for code of this package that reads it and never writes. */
    double[] medians() {
        return median;
    }

    /** Index of the last instant at or before the given one, or −1. */
    public int indexAtOrBefore(long epochSecond) {
        int found = Arrays.binarySearch(epochSeconds, epochSecond);
        return found >= 0 ? found : -found - 2;
    }
}
