package undercroft.catalogue;

/**
 * How an opened bottle pours and tastes for fizz, weakest first, with the volumes between which each word is the likeliest
 * (assumed).
 */
public enum PerceivedCarbonation implements Listed {
    FLAT("flat", Double.NEGATIVE_INFINITY, 1.2),
    FAINT("faint", 1.2, 1.7),
    SOFT("soft", 1.7, 2.2),
    FULL("full", 2.2, 2.8),
    VERY_LIVELY("very-lively", 2.8, Double.POSITIVE_INFINITY);

    private final String id;
    private final double fromVolumes;
    private final double untilVolumes;

    PerceivedCarbonation(String id, double fromVolumes, double untilVolumes) {
        this.id = id;
        this.fromVolumes = fromVolumes;
        this.untilVolumes = untilVolumes;
    }

    @Override
    public String id() {
        return id;
    }
    /** Carbon dioxide, volumes. */
    public double fromVolumes() {
        return fromVolumes;
    }

    /** Carbon dioxide, volumes. */
    public double untilVolumes() {
        return untilVolumes;
    }
}
