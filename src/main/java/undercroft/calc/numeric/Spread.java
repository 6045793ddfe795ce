package undercroft.calc.numeric;

import undercroft.quantity.Interval;

/** Turns a standard normal deviate into a value whose 5, 50 and 95 % points are those of an interval. */
public final class Spread {
    private Spread() {}

    /**
     * Two half log-normals that meet in the median, so that both ends hold; two half normals, cut at 0, when an end is
     * 0 or less and has no logarithm.
     */
    public static double at(Interval interval, double z) {
        return interval.valueAt(z);
    }

    /** A normal value with the interval's median and, on each side, its distance to that end. */
    public static double normalAt(Interval interval, double z) {
        double end = z < 0 ? interval.low() : interval.high();
        return interval.median() + Math.abs(z) / Interval.NORMAL_95 * (end - interval.median());
    }
}
