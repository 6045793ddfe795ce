package undercroft.series;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Objects;
import java.util.function.DoubleUnaryOperator;

/**
 * Values at strictly rising instants. Immutable; holds 16 bytes a sample. Values are finite; what is not known is not
 * in the series, so a gap is a long step between neighbours. A stretch of a series shares its samples, so that a thousand
 * batches can hold the years of one log.
 */
public final class TimeSeries {
    private static final TimeSeries EMPTY = new TimeSeries(new Samples(new long[0], new double[0]), 0, 0);

    private final Samples samples;
    private final int first;
    private final int size;

    /** The arrays that a series and all its stretches share. */
    private static final class Samples {
        final long[] epochSeconds;
        final double[] values;
        /** Made when a picture first asks; made twice it would be the same, so that no lock is needed. */
        volatile Blocks blocks;

        Samples(long[] epochSeconds, double[] values) {
            this.epochSeconds = epochSeconds;
            this.values = values;
        }
    }

    private TimeSeries(Samples samples, int first, int size) {
        this.samples = samples;
        this.first = first;
        this.size = size;
    }

    private static TimeSeries whole(long[] epochSeconds, double[] values) {
        return new TimeSeries(new Samples(epochSeconds, values), 0, values.length);
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
        return whole(epochSeconds.clone(), values.clone());
    }

    public int size() {
        return size;
    }

    public boolean isEmpty() {
        return size == 0;
    }

    public long timeAt(int index) {
        return samples.epochSeconds[first + inside(index)];
    }

    public double valueAt(int index) {
        return samples.values[first + inside(index)];
    }

    /** What lies beside a stretch is not its own. */
    private int inside(int index) {
        return Objects.checkIndex(index, size);
    }

    public long firstTime() {
        return timeAt(0);
    }

    public long lastTime() {
        return timeAt(size - 1);
    }

    public double lastValue() {
        return valueAt(size - 1);
    }

    /** The array of all samples shared, for code of this package that reads it and never writes. */
    long[] times() {
        return samples.epochSeconds;
    }

    /** The array of all samples shared, for code of this package that reads it and never writes. */
    double[] values() {
        return samples.values;
    }

    /** Where in {@link #times} and {@link #values} this series begins. */
    int offset() {
        return first;
    }

    /** Of all samples shared, counted as in {@link #times}. */
    Blocks blocks() {
        Blocks known = samples.blocks;
        if (known == null) {
            known = Blocks.of(samples.epochSeconds, samples.values);
            samples.blocks = known;
        }
        return known;
    }

    /** Index of the lowest sample from one index to another, both included. */
    public int lowestBetween(int fromIndex, int lastIndex) {
        double[] values = samples.values;
        Blocks known = blocks();
        int last = first + inside(lastIndex);
        int found = first + inside(fromIndex);
        for (int i = found; i <= last; i++) {
            int block = known.beginningAt(i, last);
            int candidate = block < 0 ? i : known.lowestIn(block);
            found = values[candidate] < values[found] ? candidate : found;
            i = block < 0 ? i : i + Blocks.SIZE - 1;
        }
        return found - first;
    }

    /** Index of the highest sample from one index to another, both included. */
    public int highestBetween(int fromIndex, int lastIndex) {
        double[] values = samples.values;
        Blocks known = blocks();
        int last = first + inside(lastIndex);
        int found = first + inside(fromIndex);
        for (int i = found; i <= last; i++) {
            int block = known.beginningAt(i, last);
            int candidate = block < 0 ? i : known.highestIn(block);
            found = values[candidate] > values[found] ? candidate : found;
            i = block < 0 ? i : i + Blocks.SIZE - 1;
        }
        return found - first;
    }

    /** Index of the last sample at or before the instant, or −1. */
    public int indexAtOrBefore(long epochSecond) {
        int found = Arrays.binarySearch(samples.epochSeconds, first, first + size, epochSecond);
        return (found >= 0 ? found : -found - 2) - first;
    }

    /** The samples with from ≤ time &lt; until, shared with this series. */
    public TimeSeries between(long fromInclusive, long untilExclusive) {
        int from = indexAtOrBefore(fromInclusive - 1) + 1;
        int until = indexAtOrBefore(untilExclusive - 1) + 1;
        if (from >= until) {
            return EMPTY;
        }
        return until - from == size ? this : new TimeSeries(samples, first + from, until - from);
    }

    /** The same series in another unit, such as °C to °F; the function gives finite values for finite ones. */
    public TimeSeries map(DoubleUnaryOperator function) {
        long[] times = new long[size];
        double[] values = new double[size];
        for (int i = 0; i < size; i++) {
            times[i] = samples.epochSeconds[first + i];
            values[i] = function.applyAsDouble(samples.values[first + i]);
            if (!Double.isFinite(values[i])) {
                throw new IllegalArgumentException("value " + i + " is not a number");
            }
        }
        return whole(times, values);
    }

    /** Straight-line value at an instant inside the series; NaN outside it. */
    public double interpolated(long epochSecond) {
        int i = indexAtOrBefore(epochSecond);
        if (i < 0 || (i == size - 1 && epochSecond > timeAt(i))) {
            return Double.NaN;
        }
        if (timeAt(i) == epochSecond) {
            return valueAt(i);
        }
        double share = (double) (epochSecond - timeAt(i)) / (timeAt(i + 1) - timeAt(i));
        return valueAt(i) + share * (valueAt(i + 1) - valueAt(i));
    }

    /** Stretches between neighbours further apart than {@code longestStepSeconds}. */
    public List<Span> gaps(long longestStepSeconds) {
        List<Span> gaps = new ArrayList<>();
        for (int i = 1; i < size; i++) {
            if (timeAt(i) - timeAt(i - 1) > longestStepSeconds) {
                gaps.add(new Span(timeAt(i - 1), timeAt(i)));
            }
        }
        return gaps;
    }

    /** All samples of both; where both have one instant, the value of {@code newer} stays. */
    public TimeSeries mergedWith(TimeSeries newer) {
        if (newer.isEmpty()) {
            return this;
        }
        if (isEmpty()) {
            return newer;
        }
        Builder merged = new Builder(size + newer.size);
        int i = 0;
        int j = 0;
        while (i < size || j < newer.size) {
            if (j >= newer.size || (i < size && timeAt(i) < newer.timeAt(j))) {
                merged.add(timeAt(i), valueAt(i));
                i++;
            } else {
                if (i < size && timeAt(i) == newer.timeAt(j)) {
                    i++;
                }
                merged.add(newer.timeAt(j), newer.valueAt(j));
                j++;
            }
        }
        return merged.build();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof TimeSeries that && size == that.size && hasSamplesOf(that);
    }

    private boolean hasSamplesOf(TimeSeries that) {
        if (samples == that.samples && first == that.first) {
            return true;
        }
        int end = first + size;
        int thatEnd = that.first + size;
        long[] times = that.samples.epochSeconds;
        return Arrays.equals(samples.epochSeconds, first, end, times, that.first, thatEnd)
                && Arrays.equals(samples.values, first, end, that.samples.values, that.first, thatEnd);
    }

    @Override
    public int hashCode() {
        int hash = size;
        for (int i = first; i < first + size; i++) {
            hash = 31 * hash + Long.hashCode(samples.epochSeconds[i]);
            hash = 31 * hash + Double.hashCode(samples.values[i]);
        }
        return hash;
    }

    @Override
    public String toString() {
        return isEmpty()
                ? "TimeSeries[empty]"
                : "TimeSeries[" + size() + " from " + firstTime() + " to " + lastTime() + "]";
    }

    /** Grows a series in time order without a list of boxes. */
    public static final class Builder {
        private long[] epochSeconds;
        private double[] values;
        private int size;

        public Builder() {
            this(1024);
        }

        /** With room for so many samples before it has to grow. */
        public Builder(int expected) {
            epochSeconds = new long[Math.max(16, expected)];
            values = new double[epochSeconds.length];
        }

        public int size() {
            return size;
        }

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
            if (size == 0) {
                return EMPTY;
            }
            return whole(Arrays.copyOf(epochSeconds, size), Arrays.copyOf(values, size));
        }
    }
}
