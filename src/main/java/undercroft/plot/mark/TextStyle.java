package undercroft.plot.mark;

/** The few sorts of writing in a picture. */
public enum TextStyle {
    TICK(11, false),
    LABEL(11, true),
    TITLE(12, true),
    NOTE(12, false);

    private final double sizePixels;
    private final boolean strong;

    TextStyle(double sizePixels, boolean strong) {
        this.sizePixels = sizePixels;
        this.strong = strong;
    }

    public double sizePixels() {
        return sizePixels;
    }

    /** Semi-bold (600) rather than regular (400). */
    public boolean isStrong() {
        return strong;
    }
}
