package undercroft.series;

import java.util.Arrays;

/**
 * Thins a series to what its picture can show: of each pixel column the first, least, greatest and last sample, so that
 * the drawn line covers the same pixels as the whole series. Of a dense series whole blocks are taken at once, so that
 * millions of samples cost little more than thousands; nothing is allocated for a sample. One sample before the range and one after it are kept too, so that the line runs off the edges.
 */
public final class MinMaxDownsampler {
    private static final int POINTS_A_COLUMN = 4;

    private final long[] times;
    private final double[] values;
    private final Blocks blocks;
    private final long from;
    private final long span;
    private final int columns;
    private final long longestStepSeconds;

    private long[] keptTimes;
    private double[] keptValues;
    private boolean[] keptBreaks;
    private int kept;
    private int gapsAtKept;

    private final int[] picks = new int[POINTS_A_COLUMN];
    private final int[] gapsAtPick = new int[POINTS_A_COLUMN];

    private long columnEnd = Long.MIN_VALUE;
    private boolean open;
    private boolean seen;
    private long before;
    private int gaps;

    private MinMaxDownsampler(
            long[] times, double[] values, Blocks blocks, long from, long until, int columns, long longestStepSeconds) {
        if (until <= from || columns <= 0) {
            throw new IllegalArgumentException("a picture needs a stretch of time and at least one column");
        }
        this.times = times;
        this.values = values;
        this.blocks = blocks;
        this.from = from;
        this.span = until - from;
        this.columns = columns;
        this.longestStepSeconds = longestStepSeconds;
    }

    /** Thins the samples of {@code series} seen from {@code from} until {@code until} on {@code columns} pixels. */
    public static ThinnedSeries thin(TimeSeries series, long from, long until, int columns, long longestStepSeconds) {
        MinMaxDownsampler thinning = new MinMaxDownsampler(
                series.times(), series.values(), series.blocks(), from, until, columns, longestStepSeconds);
        int first = Math.max(0, series.indexAtOrBefore(from - 1));
        int last = Math.min(series.size() - 1, series.indexAtOrBefore(until - 1) + 1);
        return thinning.run(series.offset() + first, series.offset() + last);
    }

    /**
     * The lowest and the highest sample of each bin of wall-clock time, in order of time: a log too dense to be drawn anew at
     * every move, with every peak kept as it was read.
     *
     * @param binSeconds length of a bin, above 0
     */
    public static TimeSeries extremes(TimeSeries series, long binSeconds) {
        if (binSeconds <= 0) {
            throw new IllegalArgumentException("a bin has a length");
        }
        TimeSeries.Builder kept = new TimeSeries.Builder();
        int i = 0;
        while (i < series.size()) {
            long end = (Math.floorDiv(series.timeAt(i), binSeconds) + 1) * binSeconds;
            int lowest = i;
            int highest = i;
            for (i++; i < series.size() && series.timeAt(i) < end; i++) {
                lowest = series.valueAt(i) < series.valueAt(lowest) ? i : lowest;
                highest = series.valueAt(i) > series.valueAt(highest) ? i : highest;
            }
            int first = Math.min(lowest, highest);
            int second = Math.max(lowest, highest);
            kept.add(series.timeAt(first), series.valueAt(first));
            if (second > first) {
                kept.add(series.timeAt(second), series.valueAt(second));
            }
        }
        return kept.build();
    }

    /** Thins the median of a band; values that are NaN break the line. */
    public static ThinnedSeries thin(Band band, long from, long until, int columns) {
        MinMaxDownsampler thinning =
                new MinMaxDownsampler(band.times(), band.medians(), null, from, until, columns, Long.MAX_VALUE);
        int first = Math.max(0, band.indexAtOrBefore(from - 1));
        int last = Math.min(band.size() - 1, band.indexAtOrBefore(until - 1) + 1);
        return thinning.run(first, last);
    }

    private ThinnedSeries run(int first, int last) {
        int room = (int) Math.min((long) last - first + 1, (long) POINTS_A_COLUMN * columns + 2);
        keptTimes = new long[Math.max(0, room)];
        keptValues = new double[keptTimes.length];
        keptBreaks = new boolean[keptTimes.length];
        for (int i = first; i <= last; i++) {
            int block = blocks == null ? -1 : blocks.beginningAt(i, last);
            if (block >= 0 && liesInColumn(i, block)) {
                takeBlock(block);
                i += Blocks.SIZE - 1;
            } else if (Double.isNaN(values[i])) {
                gaps++;
            } else {
                take(i);
            }
        }
        if (open) {
            keepColumn();
        }
        return new ThinnedSeries(keptTimes, keptValues, keptBreaks, kept);
    }

    private void take(int index) {
        long time = times[index];
        if (seen && time - before > longestStepSeconds) {
            gaps++;
        }
        seen = true;
        before = time;
        if (time < columnEnd) {
            consider(index);
            pick(3, index);
            return;
        }
        if (open) {
            keepColumn();
        }
        open = true;
        columnEnd = endOfColumn(time);
        Arrays.fill(picks, index);
        Arrays.fill(gapsAtPick, gaps);
    }

    /** Whether a block goes on with the column that is open, without a gap before it or in it. */
    private boolean liesInColumn(int index, int block) {
        return open
                && times[index + Blocks.SIZE - 1] < columnEnd
                && times[index] - before <= longestStepSeconds
                && blocks.longestStepIn(block) <= longestStepSeconds;
    }

    private void takeBlock(int block) {
        consider(blocks.lowestIn(block));
        consider(blocks.highestIn(block));
        int end = (block + 1) * Blocks.SIZE - 1;
        pick(3, end);
        before = times[end];
    }

    private void consider(int index) {
        if (values[index] < values[picks[1]]) {
            pick(1, index);
        } else if (values[index] > values[picks[2]]) {
            pick(2, index);
        }
    }

    /** First second that no longer lies in the column of {@code time}; before and after the range are one column each. */
    private long endOfColumn(long time) {
        if (time < from) {
            return from;
        }
        if (time - from >= span) {
            return Long.MAX_VALUE;
        }
        long column = (time - from) * columns / span;
        return from + -Math.floorDiv(-(column + 1) * span, (long) columns);
    }

    private void pick(int place, int index) {
        pick(place, index, gaps);
    }

    private void pick(int place, int index, int gapsBefore) {
        picks[place] = index;
        gapsAtPick[place] = gapsBefore;
    }

    private void keepColumn() {
        if (picks[1] > picks[2]) {
            int index = picks[1];
            int gapsBefore = gapsAtPick[1];
            pick(1, picks[2], gapsAtPick[2]);
            pick(2, index, gapsBefore);
        }
        for (int place = 0; place < POINTS_A_COLUMN; place++) {
            if (place > 0 && picks[place] == picks[place - 1]) {
                continue;
            }
            keptTimes[kept] = times[picks[place]];
            keptValues[kept] = values[picks[place]];
            keptBreaks[kept] = kept > 0 && gapsAtPick[place] != gapsAtKept;
            gapsAtKept = gapsAtPick[place];
            kept++;
        }
    }
}
