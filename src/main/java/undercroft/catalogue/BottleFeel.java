package undercroft.catalogue;

/**
 * How a plastic test bottle, capped with its air squeezed out, answers a thumb, weakest first, with the gauge pressures
 * between which each word is the likeliest (assumed).
 */
public enum BottleFeel implements Listed {
    LIMP("limp", "limp", Double.NEGATIVE_INFINITY, 0.15),
    YIELDING("yielding", "yields", 0.15, 0.5),
    FIRM("firm", "firm", 0.5, 1.0),
    HARD("hard", "hard", 1.0, 1.8),
    SOLID("solid", "no give at all", 1.8, Double.POSITIVE_INFINITY);

    private final String id;
    private final String label;
    private final double fromBar;
    private final double untilBar;

    BottleFeel(String id, String label, double fromBar, double untilBar) {
        this.id = id;
        this.label = label;
        this.fromBar = fromBar;
        this.untilBar = untilBar;
    }

    @Override
    public String id() {
        return id;
    }

    @Override
    public String label() {
        return label;
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
