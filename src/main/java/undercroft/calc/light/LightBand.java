package undercroft.calc.light;

import undercroft.catalogue.Listed;

/** What a dose means for the taste. The limits follow the uncertainty factor of 4 (assumption). */
public enum LightBand implements Listed {
    NONE("none", 0),
    POSSIBLE("possible", 0.25),
    LIKELY("likely", 1),
    NEAR_CERTAIN("near-certain", 4);

    private final String id;
    private final double fromDose;

    LightBand(String id, double fromDose) {
        this.id = id;
        this.fromDose = fromDose;
    }

    @Override
    public String id() {
        return id;
    }
    /** Lowest dose of the band, D, inclusive. */
    public double fromDose() {
        return fromDose;
    }

    /** The band of a dose of 0 or more, D; infinity is near-certain. */
    public static LightBand of(double dose) {
        if (!(dose >= 0)) {
            throw new IllegalArgumentException("dose " + dose);
        }
        LightBand found = NONE;
        for (LightBand band : values()) {
            found = dose >= band.fromDose ? band : found;
        }
        return found;
    }
}
