package undercroft.calc.conditioning;

/**
 * How a plastic bottle with the air squeezed out answers a thumb, softest first, with the gauge pressures between which
 * each word is the likeliest (assumed).
 */
public enum Feel {
    SLACK(Double.NEGATIVE_INFINITY, 0.15),
    GIVES(0.15, 0.5),
    FIRM(0.5, 1.0),
    HARD(1.0, 1.8),
    ROCK(1.8, Double.POSITIVE_INFINITY);

    private final double fromBar;
    private final double untilBar;

    Feel(double fromBar, double untilBar) {
        this.fromBar = fromBar;
        this.untilBar = untilBar;
    }

    /** Gauge pressure, bar. */
    public double fromBar() {
        return fromBar;
    }

    /** Gauge pressure, bar. */
    public double untilBar() {
        return untilBar;
    }
}
