package undercroft.catalogue;

/** How much working yeast went into the bottle: factors on uptake rate and lag (assumed, in line with practice). */
public enum YeastState implements Listed {
    FRESH_ADDED("fresh-added", 1.6, 0.6),
    ORDINARY("ordinary", 1, 1),
    LONG_COLD("long-cold", 0.5, 2),
    FILTERED("filtered", 0.2, 3);

    private final String id;
    private final double rateFactor;
    private final double lagFactor;

    YeastState(String id, double rateFactor, double lagFactor) {
        this.id = id;
        this.rateFactor = rateFactor;
        this.lagFactor = lagFactor;
    }

    @Override
    public String id() {
        return id;
    }

    public double rateFactor() {
        return rateFactor;
    }

    public double lagFactor() {
        return lagFactor;
    }
}
