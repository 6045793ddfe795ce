package undercroft.plot.scale;

/** Straight map between values and pixels, low at the bottom, with its inverse. */
public record ValueScale(double low, double high, double top, double bottom) {
    public ValueScale {
        if (!(high > low) || !(bottom > top)) {
            throw new IllegalArgumentException("a value scale needs some range and some room");
        }
    }

    public double yAt(double value) {
        return bottom - (value - low) / (high - low) * (bottom - top);
    }

    public double valueAt(double y) {
        return low + (bottom - y) / (bottom - top) * (high - low);
    }
}
