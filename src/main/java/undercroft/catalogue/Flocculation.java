package undercroft.catalogue;

import undercroft.quantity.Interval;

/**
 * How the yeast falls out, with the hours a carried bottle wants upright in the cold. "The night before" is common
 * practice; the order follows Stokes' law for flocs of 20 to 100 µm, single cells, and powdery yeast.
 */
public enum Flocculation implements Listed {
    FLOCCULENT("flocculent", Interval.of(8, 12, 24)),
    ORDINARY("ordinary", Interval.of(24, 36, 48)),
    POWDERY("powdery", Interval.of(72, 96, 120));

    private final String id;
    private final Interval clearingHours;

    Flocculation(String id, Interval clearingHours) {
        this.id = id;
        this.clearingHours = clearingHours;
    }

    @Override
    public String id() {
        return id;
    }

    public Interval clearingHours() {
        return clearingHours;
    }
}
