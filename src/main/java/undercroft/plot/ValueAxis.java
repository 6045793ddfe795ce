package undercroft.plot;

/**
 * The upright axis of a plot.
 *
 * @param low fixed foot of the axis, or NaN to take it from the data in view
 * @param high fixed top of the axis, or NaN to take it from the data in view
 * @param unit written behind values that are read out
 * @param decimals of values that are read out
 * @param smallestSpan least range of an automatic axis, so that a steady value does not look restless
 * @param labelled whether values stand beside the axis
 */
public record ValueAxis(double low, double high, String unit, int decimals, double smallestSpan, boolean labelled) {
    public ValueAxis {
        if (low >= high || !(smallestSpan > 0) || decimals < 0 || decimals > 9) {
            throw new IllegalArgumentException("an axis runs upward and has from 0 to 9 decimals");
        }
    }

    public static ValueAxis auto(String unit, int decimals) {
        return new ValueAxis(Double.NaN, Double.NaN, unit, decimals, 4 * Math.pow(10, -decimals), true);
    }

    public static ValueAxis fixed(double low, double high, String unit, int decimals) {
        return new ValueAxis(low, high, unit, decimals, high - low, true);
    }

    /** The axis with a fixed foot, such as zero. */
    public ValueAxis from(double newLow) {
        return new ValueAxis(newLow, high, unit, decimals, smallestSpan, labelled);
    }

    public ValueAxis withSmallestSpan(double newSpan) {
        return new ValueAxis(low, high, unit, decimals, newSpan, labelled);
    }

    /** The axis without values beside it, for a strip. */
    public ValueAxis unlabelled() {
        return new ValueAxis(low, high, unit, decimals, smallestSpan, false);
    }
}
