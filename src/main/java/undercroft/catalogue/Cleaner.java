package undercroft.catalogue;

import java.util.OptionalDouble;

/**
 * What takes dirt off before anything is sanitised, by active substance. All figures: common practice, no source; the label
 * of the product always wins.
 */
public enum Cleaner implements Listed {
    PERCARBONATE("percarbonate", 5, 30, "3 to 10 g/L for half an hour (common practice, no source)"),
    WASHING_SODA("washing-soda", 10, 30, "10 g/L for half an hour (common practice, no source)"),
    CAUSTIC("caustic", 10, 15, "a one per cent solution for a quarter of an hour (common practice, no source)"),
    HOT_WATER("hot-water", 0, 0, "common practice, no source");

    private final String id;
    private final double usualGramsPerLitre;
    private final int soakMinutes;
    private final String basis;

    Cleaner(String id, double usualGramsPerLitre, int soakMinutes, String basis) {
        this.id = id;
        this.usualGramsPerLitre = usualGramsPerLitre;
        this.soakMinutes = soakMinutes;
        this.basis = basis;
    }

    @Override
    public String id() {
        return id;
    }
    /** Product in a litre of water, g, where the label is not known; empty for plain water. */
    public OptionalDouble usualGramsPerLitre() {
        return usualGramsPerLitre > 0 ? OptionalDouble.of(usualGramsPerLitre) : OptionalDouble.empty();
    }

    /** How long to soak; 0 when brushing is all there is to it. */
    public int soakMinutes() {
        return soakMinutes;
    }

    /** Where the figures come from, for a person. */
    public String basis() {
        return basis;
    }
}
