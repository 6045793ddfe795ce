package undercroft.catalogue;

/**
 * How an opened bottle pours and tastes for fizz, weakest first, with the volumes between which each word is the likeliest
 * (assumed).
 */
public enum PerceivedCarbonation implements Listed {
    FLAT("flat", "flat", Double.NEGATIVE_INFINITY, 1.2),
    FAINT("faint", "a faint prickle", 1.2, 1.7),
    SOFT("soft", "soft", 1.7, 2.2),
    FULL("full", "as it should be", 2.2, 2.8),
    VERY_LIVELY("very-lively", "very lively", 2.8, Double.POSITIVE_INFINITY);

    private final String id;
    private final String label;
    private final double fromVolumes;
    private final double untilVolumes;

    PerceivedCarbonation(String id, String label, double fromVolumes, double untilVolumes) {
        this.id = id;
        this.label = label;
        this.fromVolumes = fromVolumes;
        this.untilVolumes = untilVolumes;
    }

    @Override
    public String id() {
        return id;
    }

    @Override
    public String label() {
        return label;
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
