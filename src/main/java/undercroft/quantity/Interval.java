package undercroft.quantity;

import java.util.function.DoubleUnaryOperator;

/**
 * What is known of a number: its 5 %, 50 % and 95 % values, in a unit that the owner's name or key tells. Not a pair of
 * hard bounds: one value in ten lies outside.
 */
public record Interval(double low, double median, double high) {
    /** Standard deviations from the middle of a normal distribution to its 95 % point. */
    public static final double NORMAL_95 = 1.6448536269514722;
    /** Standard deviations from the middle of a normal distribution to its 75 % point. */
    public static final double NORMAL_75 = 0.6744897501960817;

    /** Refuses NaN and values out of order; infinities are allowed at the ends ("never"). */
    public Interval {
        if (Double.isNaN(low) || Double.isNaN(median) || Double.isNaN(high) || low > median || median > high) {
            throw new IllegalArgumentException("not an interval: " + low + ", " + median + ", " + high);
        }
    }

    public static Interval of(double low, double median, double high) {
        return new Interval(low, median, high);
    }

    /** A number known without spread. */
    public static Interval exactly(double value) {
        return new Interval(value, value, value);
    }

    /** Applies a rising function to all three values. */
    public Interval mapRising(DoubleUnaryOperator rising) {
        return new Interval(rising.applyAsDouble(low), rising.applyAsDouble(median), rising.applyAsDouble(high));
    }

    /** All three values times a factor of zero or more. */
    public Interval times(double factor) {
        return mapRising(x -> x * factor);
    }

    /** All three values moved by an offset. */
    public Interval plus(double offset) {
        return mapRising(x -> x + offset);
    }

    /**
     * The value at a number of standard deviations from the median: two half log-normals that meet in the median, so that
     * both ends hold; two half normals, cut at 0, when the low end is 0 or less and has no logarithm.
     *
     * @param deviations of the standard normal distribution, such as 1.645 for the 95 % value
     */
    public double valueAt(double deviations) {
        double end = deviations < 0 ? low : high;
        double share = Math.abs(deviations) / NORMAL_95;
        if (low > 0) {
            return median * Math.exp(share * Math.log(end / median));
        }
        return Math.max(0, median + share * (end - median));
    }

    /** The distance from low to high. */
    public double width() {
        return high - low;
    }
}
