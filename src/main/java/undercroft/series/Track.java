package undercroft.series;

import java.util.Arrays;
import java.util.Objects;
import undercroft.quantity.Interval;

/**
 * A value on a regular grid of instants, with its standard deviation at each: what a lot's bottles feel, past (spread
 * small where it was measured) and ahead (spread as wide as the place's habits). Immutable; a stretch of a track shares
 * its values.
 */
public final class Track {
    private final long firstEpochSecond;
    private final int stepSeconds;
    private final double[] values;
    private final double[] spreads;
    private final int first;
    private final int size;

    private Track(long firstEpochSecond, int stepSeconds, double[] values, double[] spreads, int first, int size) {
        this.firstEpochSecond = firstEpochSecond;
        this.stepSeconds = stepSeconds;
        this.values = values;
        this.spreads = spreads;
        this.first = first;
        this.size = size;
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
        return new Track(firstEpochSecond, stepSeconds, values.clone(), spreads.clone(), 0, values.length);
    }

    /** One value for the whole time, known without spread. */
    public static Track constant(long firstEpochSecond, int stepSeconds, int size, double value) {
        double[] values = new double[size];
        Arrays.fill(values, value);
        return of(firstEpochSecond, stepSeconds, values, new double[size]);
    }

    /** The grid points from one index until before another, at least one, shared with this track. */
    public Track between(int fromInclusive, int untilExclusive) {
        Objects.checkFromToIndex(fromInclusive, untilExclusive, size);
        if (fromInclusive == untilExclusive) {
            throw new IllegalArgumentException("a track has at least one value");
        }
        return new Track(
                timeAt(fromInclusive),
                stepSeconds,
                values,
                spreads,
                first + fromInclusive,
                untilExclusive - fromInclusive);
    }

    public int size() {
        return size;
    }

    public int stepSeconds() {
        return stepSeconds;
    }

    public long timeAt(int index) {
        return firstEpochSecond + (long) index * stepSeconds;
    }

    public double valueAt(int index) {
        return values[first + Objects.checkIndex(index, size)];
    }

    public double spreadAt(int index) {
        return spreads[first + Objects.checkIndex(index, size)];
    }

    /** Whether both have the same grid points, values and spreads in a stretch of time, the point before it included. */
    public boolean isAlike(Track other, long fromEpochSecond, long untilEpochSecond) {
        int from = indexAt(fromEpochSecond);
        int otherFrom = other.indexAt(fromEpochSecond);
        int count = indexAt(untilEpochSecond) + 1 - from;
        return stepSeconds == other.stepSeconds
                && timeAt(from) == other.timeAt(otherFrom)
                && count == other.indexAt(untilEpochSecond) + 1 - otherFrom
                && isAlike(values, other.values, from, other, otherFrom, count)
                && isAlike(spreads, other.spreads, from, other, otherFrom, count);
    }

    private boolean isAlike(double[] mine, double[] theirs, int from, Track other, int otherFrom, int count) {
        int here = first + from;
        int there = other.first + otherFrom;
        return (mine == theirs && here == there)
                || Arrays.equals(mine, here, here + count, theirs, there, there + count);
    }

    /** The highest 95 % value between two instants, both held within the grid. */
    public double highest(long fromEpochSecond, long untilEpochSecond) {
        double highest = Double.NEGATIVE_INFINITY;
        for (int i = indexAt(fromEpochSecond); i <= indexAt(untilEpochSecond); i++) {
            highest = Math.max(highest, valueAt(i) + Interval.NORMAL_95 * spreadAt(i));
        }
        return highest;
    }

    /** Index of the grid point at or before the instant, held within the grid. */
    public int indexAt(long epochSecond) {
        long index = Math.floorDiv(epochSecond - firstEpochSecond, (long) stepSeconds);
        return (int) Math.max(0, Math.min(size - 1, index));
    }
}
