package undercroft.calc.conditioning;

/**
 * How a bottle's carbonation tastes when it is opened, least first, with the volumes between which each word is the
 * likeliest (assumed).
 */
public enum Liveliness {
    FLAT(Double.NEGATIVE_INFINITY, 1.2),
    FAINT(1.2, 1.7),
    SOFT(1.7, 2.2),
    NORMAL(2.2, 2.8),
    LIVELY(2.8, Double.POSITIVE_INFINITY);

    private final double fromVolumes;
    private final double untilVolumes;

    Liveliness(double fromVolumes, double untilVolumes) {
        this.fromVolumes = fromVolumes;
        this.untilVolumes = untilVolumes;
    }

    public double fromVolumes() {
        return fromVolumes;
    }

    public double untilVolumes() {
        return untilVolumes;
    }
}
