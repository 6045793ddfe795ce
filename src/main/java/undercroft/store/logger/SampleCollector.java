package undercroft.store.logger;

import java.time.zone.ZoneOffsetTransition;
import java.util.Arrays;
import undercroft.series.TimeSeries;
import undercroft.store.logger.text.RepeatedHour;
import undercroft.store.logger.text.StableOrder;

/**
 * Gathers samples in the order of the lines, settles which of a repeated hour's lines came first, then sorts and drops
 * duplicates. Arrays only, 20 bytes a sample while reading.
 */
final class SampleCollector {
    private final Findings findings;
    private long[] times;
    private double[] values;
    private int[] lines;
    private int size;
    private long newest = Long.MIN_VALUE;
    private boolean rising = true;
    private long forward;
    private long backward;
    private ZoneOffsetTransition repeated;
    private int repeatedFrom;

    SampleCollector(Findings findings, int expected) {
        this.findings = findings;
        times = new long[expected];
        values = new double[expected];
        lines = new int[expected];
    }

    void add(long utc, double celsius, int line) {
        if (repeated != null) {
            settleRepeatedHour();
        }
        append(utc, celsius, line);
        order(size - 1);
    }

    /** A sample whose local time comes twice; waits for its neighbours before it is settled. */
    void addRepeated(long local, double celsius, int line, ZoneOffsetTransition change) {
        if (repeated != null && !repeated.equals(change)) {
            settleRepeatedHour();
        }
        if (repeated == null) {
            repeated = change;
            repeatedFrom = size;
        }
        append(local, celsius, line);
        findings.add(Reason.REPEATED_HOUR, line);
    }

    private void append(long time, double celsius, int line) {
        if (size == times.length) {
            int longer = size + (size >> 1) + 16;
            times = Arrays.copyOf(times, longer);
            values = Arrays.copyOf(values, longer);
            lines = Arrays.copyOf(lines, longer);
        }
        times[size] = time;
        values[size] = celsius;
        lines[size] = line;
        size++;
    }

    private void order(int index) {
        long time = times[index];
        if (time < newest) {
            findings.add(Reason.OUT_OF_ORDER, lines[index]);
            rising = false;
        } else {
            newest = time;
        }
        if (index > 0) {
            forward += time > times[index - 1] ? 1 : 0;
            backward += time < times[index - 1] ? 1 : 0;
        }
    }

    private void settleRepeatedHour() {
        int before = repeated.getOffsetBefore().getTotalSeconds();
        int after = repeated.getOffsetAfter().getTotalSeconds();
        boolean newestFirst = backwardShare();
        int secondFrom = RepeatedHour.secondPassFrom(times, repeatedFrom, size, before - after, newestFirst);
        for (int i = repeatedFrom; i < size; i++) {
            boolean firstPass = secondFrom < 0 || (i < secondFrom) != newestFirst;
            times[i] -= firstPass ? before : after;
        }
        repeated = null;
        for (int i = repeatedFrom; i < size; i++) {
            order(i);
        }
    }

    private boolean backwardShare() {
        long ahead = forward;
        long back = backward;
        for (int i = repeatedFrom + 1; i < size; i++) {
            ahead += times[i] > times[i - 1] ? 1 : 0;
            back += times[i] < times[i - 1] ? 1 : 0;
        }
        return back > ahead;
    }

    /** What has come in since the last call; a repeated hour still open stays open and is handed out again. */
    TimeSeries handOver() {
        int openFrom = repeated == null ? size : repeatedFrom;
        ZoneOffsetTransition open = repeated;
        long[] openTimes = Arrays.copyOfRange(times, openFrom, size);
        double[] openValues = Arrays.copyOfRange(values, openFrom, size);
        int[] openLines = Arrays.copyOfRange(lines, openFrom, size);
        TimeSeries series = finish();
        size = 0;
        for (int i = 0; i < openTimes.length; i++) {
            append(openTimes[i], openValues[i], openLines[i]);
        }
        repeated = open;
        repeatedFrom = 0;
        rising = true;
        newest = Long.MIN_VALUE;
        return series;
    }

    /** Everything sorted; of several samples at one time the first line's stays. */
    TimeSeries finish() {
        if (repeated != null) {
            settleRepeatedHour();
        }
        if (!rising) {
            sort();
        }
        int kept = 0;
        for (int i = 0; i < size; i++) {
            if (kept > 0 && times[i] == times[kept - 1]) {
                boolean same = values[i] == values[kept - 1];
                findings.add(same ? Reason.DUPLICATE : Reason.TWO_VALUES, lines[i]);
            } else {
                times[kept] = times[i];
                values[kept] = values[i];
                kept++;
            }
        }
        size = kept;
        return TimeSeries.of(Arrays.copyOf(times, kept), Arrays.copyOf(values, kept));
    }

    private void sort() {
        int[] order = StableOrder.of(times, size);
        long[] sortedTimes = new long[size];
        double[] sortedValues = new double[size];
        int[] sortedLines = new int[size];
        for (int i = 0; i < size; i++) {
            sortedTimes[i] = times[order[i]];
            sortedValues[i] = values[order[i]];
            sortedLines[i] = lines[order[i]];
        }
        times = sortedTimes;
        values = sortedValues;
        lines = sortedLines;
        rising = true;
    }
}
