package undercroft.catalogue;

/** What stands between a bottle and the light of its place. Factors: common practice, no source. */
public enum Cover implements Listed {
    NONE("none", 1),
    OPEN_CRATE("open-crate", 0.5),
    CLOSED_BOX("closed-box", 0);

    private final String id;
    private final double share;

    Cover(String id, double share) {
        this.id = id;
        this.share = share;
    }

    @Override
    public String id() {
        return id;
    }
    /** Share of the place's light that reaches the bottles, 0 to 1. */
    public double share() {
        return share;
    }
}
