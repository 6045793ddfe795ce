package undercroft.series;

import java.util.Arrays;
import undercroft.quantity.Interval;

/**
 * A value on a regular grid of instants, with its standard deviation at each: what a lot's bottles feel, past (spread
 * small where it was measured) and ahead (spread as wide as the place's habits). Immutable.
 */
public final class Track {
    private final long firstEpochSecond;
    private final int stepSeconds;
    private final double[] values;
    private final double[] spreads;

    private Track(long firstEpochSecond, int stepSeconds, double[] values, double[] spreads) {
        this.firstEpochSecond = firstEpochSecond;
        this.stepSeconds = stepSeconds;
        this.values = values;
        this.spreads = spreads;
    }

    /** Copies and checks: a positive step, one spread of zero or more for each value, all finite. */
    public static Track of(long firstEpochSecond, int stepSeconds, double[] values, double[] spreads) {
        if (stepSeconds <= 0 || values.length == 0 || values.length != spreads.length) {
            throw new IllegalArgumentException("a track needs a positive step and a spread for each of its values");
        }
        for (int i = 0; i < values.length; i++) {
            if (!Double.isFinite(values[i]) || !(spreads[i] >= 0) || Double.isInfinite(spreads[i])) {
                throw new IllegalArgumentException("value " + i + " or its spread is not a number");
            }
        }
        return new Track(firstEpochSecond, stepSeconds, values.clone(), spreads.clone());
    }

    /** One value for the whole time, known without spread. */
    public static Track constant(long firstEpochSecond, int stepSeconds, int size, double value) {
        double[] values = new double[size];
        Arrays.fill(values, value);
        return of(firstEpochSecond, stepSeconds, values, new double[size]);
    }

    public int size() {
        return values.length;
    }

    public int stepSeconds() {
        return stepSeconds;
    }

    public long timeAt(int index) {
        return firstEpochSecond + (long) index * stepSeconds;
    }

    public double valueAt(int index) {
        return values[index];
    }

    public double spreadAt(int index) {
        return spreads[index];
    }

    /** The highest 95 % value between two instants, both held within the grid. */
    public double highest(long fromEpochSecond, long untilEpochSecond) {
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = indexAt(fromEpochSecond); i <= indexAt(untilEpochSecond); i++) {
            highest = Math.max(highest, values[i] + Interval.NORMAL_95 * spreads[i]);
        }
        return highest;
    }

    /** Index of the grid point at or before the instant, held within the grid. */
    public int indexAt(long epochSecond) {
        long index = Math.floorDiv(epochSecond - firstEpochSecond, (long) stepSeconds);
        return (int) Math.max(0, Math.min(values.length - 1, index));
    }
}
