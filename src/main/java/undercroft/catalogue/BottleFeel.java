package undercroft.catalogue;

/**
 * How a plastic test bottle, capped with its air squeezed out, answers a thumb, weakest first, with the gauge pressures
 * between which each word is the likeliest (assumed).
 */
public enum BottleFeel implements Listed {
    LIMP("limp", Double.NEGATIVE_INFINITY, 0.15),
    YIELDING("yielding", 0.15, 0.5),
    FIRM("firm", 0.5, 1.0),
    HARD("hard", 1.0, 1.8),
    SOLID("solid", 1.8, Double.POSITIVE_INFINITY);

    private final String id;
    private final double fromBar;
    private final double untilBar;

    BottleFeel(String id, double fromBar, double untilBar) {
        this.id = id;
        this.fromBar = fromBar;
        this.untilBar = untilBar;
    }

    @Override
    public String id() {
        return id;
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
