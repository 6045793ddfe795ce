package undercroft.calc.spell;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import undercroft.calc.spell.BottleHistory.Filling;
import undercroft.calc.spell.BottleHistory.Patch;
import undercroft.series.Span;
import undercroft.series.TimeSeries;

/**
 * A place's air between two instants without holes: corners joined by straight lines, each with its spread. Up to six
 * hours are bridged, up to 48 filled from the same hour of the days beside, longer ones held at the median of the
 * fortnights beside with the spread those had.
 */
final class FilledAir {
    /** Standard deviation of a household thermometer and of where in the room it hangs, K. Assumed. */
    static final double MEASURED_KELVIN = 0.5;

    private static final int HOUR = 3600;
    private static final int DAY = 24 * HOUR;
    private static final long BRIDGED = 6 * HOUR;
    private static final long ESTIMATED = 48 * HOUR;
    private static final long BESIDE = 14L * DAY;
    private static final double LEAST_ESTIMATED_KELVIN = 1;
    private static final double LEAST_UNKNOWN_KELVIN = 1.5;
    // With no reading at all: a dwelling's unheated corner. Assumed.
    private static final double GUESS_CELSIUS = 18;
    private static final double GUESS_KELVIN = 4;

    private final TimeSeries air;
    private final List<Patch> patches = new ArrayList<>();
    private long[] times = new long[256];
    private double[] values = new double[256];
    private double[] spreads = new double[256];
    private int size;

    private FilledAir(TimeSeries air) {
        this.air = air;
    }

    /** Corners from {@code from} to {@code until}, both included. */
    static FilledAir of(TimeSeries air, long from, long until) {
        FilledAir filled = new FilledAir(air);
        int first = Math.max(0, air.indexAtOrBefore(from));
        int last = air.indexAtOrBefore(until);
        if (air.isEmpty()) {
            filled.patches.add(new Patch(new Span(from, until), Filling.UNKNOWN));
            filled.corner(from, GUESS_CELSIUS, GUESS_KELVIN);
        } else if (last < 0) {
            filled.fill(from, air.firstTime(), -1, 0);
            filled.corner(air.firstTime(), air.valueAt(0), MEASURED_KELVIN);
        } else {
            if (air.timeAt(first) > from) {
                filled.fill(from, air.timeAt(first), -1, first);
            }
            for (int i = first; i <= last; i++) {
                filled.corner(air.timeAt(i), air.valueAt(i), MEASURED_KELVIN);
                if (i + 1 < air.size() && air.timeAt(i + 1) - air.timeAt(i) > BRIDGED) {
                    filled.fill(air.timeAt(i), air.timeAt(i + 1), i, i + 1);
                }
            }
            if (last + 1 < air.size()) {
                filled.corner(air.timeAt(last + 1), air.valueAt(last + 1), MEASURED_KELVIN);
            } else if (air.lastTime() < until) {
                filled.fill(air.lastTime(), until, last, -1);
            }
        }
        filled.cover(from, until);
        return filled;
    }

    int size() {
        return size;
    }

    long timeAt(int index) {
        return times[index];
    }

    double valueAt(int index) {
        return values[index];
    }

    double spreadAt(int index) {
        return spreads[index];
    }

    List<Patch> patches() {
        return patches;
    }

    private void fill(long from, long until, int before, int after) {
        long length = until - from;
        if (length <= BRIDGED) {
            return;
        }
        if (length <= ESTIMATED) {
            patches.add(new Patch(new Span(from, until), Filling.ESTIMATED));
            for (long t = from + HOUR; t < until; t += HOUR) {
                estimate(t, from, until, before, after);
            }
            return;
        }
        patches.add(new Patch(new Span(from, until), Filling.UNKNOWN));
        double[] beside = beside(from, until);
        double middle = quantile(beside, 0.5);
        double width = (quantile(beside, 0.95) - quantile(beside, 0.05)) / 3.29;
        // A month without readings may hide weather that neither end saw.
        double hidden = Math.min(3, length / (30.0 * DAY));
        double spread = Math.hypot(Math.max(LEAST_UNKNOWN_KELVIN, width), hidden);
        corner(from + HOUR, middle, spread);
        corner(until - HOUR, middle, spread);
    }

    private void estimate(long time, long from, long until, int before, int after) {
        double earlier = before < 0 ? Double.NaN : measured(time - wholeDays(time - from));
        double later = after < 0 ? Double.NaN : measured(time + wholeDays(until - time));
        if (!Double.isNaN(earlier) && !Double.isNaN(later)) {
            double share = (double) (time - from) / (until - from);
            double spread = Math.max(LEAST_ESTIMATED_KELVIN, Math.abs(later - earlier) / 2);
            corner(time, earlier + share * (later - earlier), spread);
        } else if (!Double.isNaN(earlier)) {
            corner(time, earlier, LEAST_ESTIMATED_KELVIN);
        } else if (!Double.isNaN(later)) {
            corner(time, later, LEAST_ESTIMATED_KELVIN);
        } else if (before < 0 || after < 0) {
            corner(time, air.valueAt(Math.max(before, after)), LEAST_ESTIMATED_KELVIN);
        } else {
            double share = (double) (time - from) / (until - from);
            double line = air.valueAt(before) + share * (air.valueAt(after) - air.valueAt(before));
            corner(time, line, LEAST_ESTIMATED_KELVIN);
        }
    }

    private static long wholeDays(long seconds) {
        return (seconds + DAY - 1) / DAY * DAY;
    }

    /** The air at an instant between readings no further apart than may be bridged; NaN elsewhere. */
    private double measured(long time) {
        int i = air.indexAtOrBefore(time);
        if (i < 0 || (i + 1 == air.size() && air.timeAt(i) < time)) {
            return Double.NaN;
        }
        boolean near = air.timeAt(i) == time || air.timeAt(i + 1) - air.timeAt(i) <= BRIDGED;
        return near ? air.interpolated(time) : Double.NaN;
    }

    private double[] beside(long from, long until) {
        TimeSeries earlier = air.between(from - BESIDE, from + 1);
        TimeSeries later = air.between(until, until + BESIDE);
        double[] all = new double[earlier.size() + later.size()];
        for (int i = 0; i < all.length; i++) {
            all[i] = i < earlier.size() ? earlier.valueAt(i) : later.valueAt(i - earlier.size());
        }
        if (all.length == 0) {
            all = new double[air.size()];
            for (int i = 0; i < all.length; i++) {
                all[i] = air.valueAt(i);
            }
        }
        Arrays.sort(all);
        return all;
    }

    private static double quantile(double[] sorted, double share) {
        double place = share * (sorted.length - 1);
        int i = (int) place;
        return i + 1 == sorted.length ? sorted[i] : sorted[i] + (place - i) * (sorted[i + 1] - sorted[i]);
    }

    /** Holds the outermost corners out to the ends. */
    private void cover(long from, long until) {
        if (times[size - 1] < until) {
            corner(until, values[size - 1], spreads[size - 1]);
        }
        if (times[0] > from) {
            corner(Long.MAX_VALUE, 0, 0);
            System.arraycopy(times, 0, times, 1, size - 1);
            System.arraycopy(values, 0, values, 1, size - 1);
            System.arraycopy(spreads, 0, spreads, 1, size - 1);
            times[0] = from;
        }
    }

    private void corner(long time, double value, double spread) {
        if (size == times.length) {
            int longer = size * 2;
            times = Arrays.copyOf(times, longer);
            values = Arrays.copyOf(values, longer);
            spreads = Arrays.copyOf(spreads, longer);
        }
        times[size] = time;
        values[size] = value;
        spreads[size] = spread;
        size++;
    }
}
