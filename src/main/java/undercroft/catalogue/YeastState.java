package undercroft.catalogue;

/** How much working yeast went into the bottle: factors on uptake rate and lag (assumed, in line with practice). */
public enum YeastState implements Listed {
    FRESH_ADDED("fresh-added", "fresh yeast added", 1.6, 0.6),
    ORDINARY("ordinary", "straight from fermentation", 1, 1),
    LONG_COLD("long-cold", "long cold-stored or lagered", 0.5, 2),
    FILTERED("filtered", "fined or filtered", 0.2, 3);

    private final String id;
    private final String label;
    private final double rateFactor;
    private final double lagFactor;

    YeastState(String id, String label, double rateFactor, double lagFactor) {
        this.id = id;
        this.label = label;
        this.rateFactor = rateFactor;
        this.lagFactor = lagFactor;
    }

    @Override
    public String id() {
        return id;
    }

    @Override
    public String label() {
        return label;
    }

    public double rateFactor() {
        return rateFactor;
    }

    public double lagFactor() {
        return lagFactor;
    }
}
