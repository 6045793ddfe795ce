package undercroft.series;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleUnaryOperator;

/**
 * Values at strictly rising instants. Immutable; holds 16 bytes a sample. Values are finite; what is not known is not
 * in the series, so a gap is a long step between neighbours.
 */
public final class TimeSeries {
    private static final TimeSeries EMPTY = new TimeSeries(new long[0], new double[0]);

    private final long[] epochSeconds;
    private final double[] values;
    /** Made when a picture first asks; made twice it would be the same, so that no lock is needed. */
    private volatile Blocks blocks;

    private TimeSeries(long[] epochSeconds, double[] values) {
        this.epochSeconds = epochSeconds;
        this.values = values;
    }

    public static TimeSeries empty() {
        return EMPTY;
    }

    /** Copies and checks: equal lengths, strictly rising instants, finite values. */
    public static TimeSeries of(long[] epochSeconds, double[] values) {
        if (epochSeconds.length != values.length) {
            throw new IllegalArgumentException("as many instants as values are needed");
        }
        for (int i = 0; i < values.length; i++) {
            if (!Double.isFinite(values[i])) {
                throw new IllegalArgumentException("value " + i + " is not a number");
            }
            if (i > 0 && epochSeconds[i] <= epochSeconds[i - 1]) {
                throw new IllegalArgumentException("instant " + i + " does not come after the one before");
            }
        }
        return new TimeSeries(epochSeconds.clone(), values.clone());
    }

    public int size() {
        return values.length;
    }

    public boolean isEmpty() {
        return values.length == 0;
    }

    public long timeAt(int index) {
        return epochSeconds[index];
    }

    public double valueAt(int index) {
        return values[index];
    }

    public long firstTime() {
        return epochSeconds[0];
    }

    public long lastTime() {
        return epochSeconds[epochSeconds.length - 1];
    }

    public double lastValue() {
        return values[values.length - 1];
    }

    /** The array itself, for code of this package that reads it and never writes. */
    long[] times() {
        return epochSeconds;
    }

    /** The array itself, for code of this package that reads it and never writes. */
    double[] values() {
        return values;
    }

    Blocks blocks() {
        Blocks known = blocks;
        if (known == null) {
            known = Blocks.of(epochSeconds, values);
            blocks = known;
        }
        return known;
    }

    /** Index of the lowest sample from one index to another, both included. */
    public int lowestBetween(int first, int last) {
        Blocks known = blocks();
        int found = first;
        for (int i = first; i <= last; i++) {
            int block = known.beginningAt(i, last);
            int candidate = block < 0 ? i : known.lowestIn(block);
            found = values[candidate] < values[found] ? candidate : found;
            i = block < 0 ? i : i + Blocks.SIZE - 1;
        }
        return found;
    }

    /** Index of the highest sample from one index to another, both included. */
    public int highestBetween(int first, int last) {
        Blocks known = blocks();
        int found = first;
        for (int i = first; i <= last; i++) {
            int block = known.beginningAt(i, last);
            int candidate = block < 0 ? i : known.highestIn(block);
            found = values[candidate] > values[found] ? candidate : found;
            i = block < 0 ? i : i + Blocks.SIZE - 1;
        }
        return found;
    }

    /** Index of the last sample at or before the instant, or −1. */
    public int indexAtOrBefore(long epochSecond) {
        int found = Arrays.binarySearch(epochSeconds, epochSecond);
        return found >= 0 ? found : -found - 2;
    }

    /** The samples with from ≤ time &lt; until. */
    public TimeSeries between(long fromInclusive, long untilExclusive) {
        int from = indexAtOrBefore(fromInclusive - 1) + 1;
        int until = indexAtOrBefore(untilExclusive - 1) + 1;
        if (from >= until) {
            return EMPTY;
        }
        return new TimeSeries(Arrays.copyOfRange(epochSeconds, from, until), Arrays.copyOfRange(values, from, until));
    }

    /** The same series in another unit, such as °C to °F; the function gives finite values for finite ones. */
    public TimeSeries map(DoubleUnaryOperator function) {
        return of(epochSeconds, Arrays.stream(values).map(function).toArray());
    }

    /** Straight-line value at an instant inside the series; NaN outside it. */
    public double interpolated(long epochSecond) {
        int i = indexAtOrBefore(epochSecond);
        if (i < 0 || (i == values.length - 1 && epochSecond > epochSeconds[i])) {
            return Double.NaN;
        }
        if (epochSeconds[i] == epochSecond) {
            return values[i];
        }
        double share = (double) (epochSecond - epochSeconds[i]) / (epochSeconds[i + 1] - epochSeconds[i]);
        return values[i] + share * (values[i + 1] - values[i]);
    }

    /** Stretches between neighbours further apart than {@code longestStepSeconds}. */
    public List<Span> gaps(long longestStepSeconds) {
        List<Span> gaps = new ArrayList<>();
        for (int i = 1; i < values.length; i++) {
            if (epochSeconds[i] - epochSeconds[i - 1] > longestStepSeconds) {
                gaps.add(new Span(epochSeconds[i - 1], epochSeconds[i]));
            }
        }
        return gaps;
    }

    /** All samples of both; where both have one instant, the value of {@code newer} stays. */
    public TimeSeries mergedWith(TimeSeries newer) {
        Builder merged = new Builder();
        int i = 0;
        int j = 0;
        while (i < size() || j < newer.size()) {
            if (j >= newer.size() || (i < size() && epochSeconds[i] < newer.epochSeconds[j])) {
                merged.add(epochSeconds[i], values[i]);
                i++;
            } else {
                if (i < size() && epochSeconds[i] == newer.epochSeconds[j]) {
                    i++;
                }
                merged.add(newer.epochSeconds[j], newer.values[j]);
                j++;
            }
        }
        return merged.build();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof TimeSeries that
                && Arrays.equals(epochSeconds, that.epochSeconds)
                && Arrays.equals(values, that.values);
    }

    @Override
    public int hashCode() {
        return 31 * Arrays.hashCode(epochSeconds) + Arrays.hashCode(values);
    }

    @Override
    public String toString() {
        return isEmpty()
                ? "TimeSeries[empty]"
                : "TimeSeries[" + size() + " from " + firstTime() + " to " + lastTime() + "]";
    }

    /** Grows a series in time order without a list of boxes. */
    public static final class Builder {
        private long[] epochSeconds = new long[1024];
        private double[] values = new double[1024];
        private int size;

        /** Adds one sample, which must come after the last one. */
        public Builder add(long epochSecond, double value) {
            if (!Double.isFinite(value)) {
                throw new IllegalArgumentException("value " + size + " is not a number");
            }
            if (size > 0 && epochSecond <= epochSeconds[size - 1]) {
                throw new IllegalArgumentException("instant " + size + " does not come after the one before");
            }
            if (size == values.length) {
                int longer = size + (size >> 1);
                epochSeconds = Arrays.copyOf(epochSeconds, longer);
                values = Arrays.copyOf(values, longer);
            }
            epochSeconds[size] = epochSecond;
            values[size] = value;
            size++;
            return this;
        }

        public TimeSeries build() {
            return size == 0 ? EMPTY : new TimeSeries(Arrays.copyOf(epochSeconds, size), Arrays.copyOf(values, size));
        }
    }
}
