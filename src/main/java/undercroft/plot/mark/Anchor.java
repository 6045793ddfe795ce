package undercroft.plot.mark;

/** Which part of a text sits at its x. */
public enum Anchor {
    START(0),
    MIDDLE(0.5),
    END(1);

    private final double share;

    Anchor(double share) {
        this.share = share;
    }

    /** Left edge of a text of the given width anchored at {@code x}. */
    public double leftOf(double x, double width) {
        return x - share * width;
    }
}
