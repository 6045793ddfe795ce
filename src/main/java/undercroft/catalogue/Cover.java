package undercroft.catalogue;

/** What stands between a bottle and the light of its place. Factors: common practice, no source. */
public enum Cover implements Listed {
    NONE("none", "standing free", 1),
    OPEN_CRATE("open-crate", "in an open crate", 0.5),
    CLOSED_BOX("closed-box", "in a closed box", 0);

    private final String id;
    private final String label;
    private final double share;

    Cover(String id, String label, double share) {
        this.id = id;
        this.label = label;
        this.share = share;
    }

    @Override
    public String id() {
        return id;
    }

    @Override
    public String label() {
        return label;
    }

    /** Share of the place's light that reaches the bottles, 0 to 1. */
    public double share() {
        return share;
    }
}
