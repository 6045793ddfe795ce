package undercroft.catalogue;

import java.util.OptionalDouble;

/**
 * Ways to kill what would spoil the beer, by active substance. Rates, times and strengths are common practice, no source,
 * except where the basis names one; the label of the product always wins.
 */
public enum Sanitiser implements Listed {
    ACID_ANIONIC(
            "acid-anionic",
            0,
            0,
            true,
            "rate and minutes as the label says, none of ours; drained and not rinsed (common practice, no source)"),
    IODOPHOR(
            "iodophor",
            1.0,
            2,
            true,
            "12.5 to 25 ppm of iodine, which is 0.7 to 1.4 mL/L of a 1.75 % concentrate (US 21 CFR 178.1010, from memory)"),
    PERACETIC_ACID(
            "peracetic-acid",
            1.8,
            5,
            true,
            "100 ppm from a 5 % stock of 1.1 g/mL; 80 to 200 ppm are used without rinsing (from memory)"),
    CHLORINE_BLEACH(
            "chlorine-bleach",
            4.0,
            10,
            false,
            "200 ppm of chlorine from a 5 % bleach (strength from memory, minutes common practice)"),
    HEAT(
            "heat",
            0,
            10,
            true,
            "ten minutes at 80 °C or more (common practice, no source); containers are tested at a jump of 42 °C"
                    + " (ISO 7459, from memory)");

    private final String id;
    private final double usualMillilitresPerLitre;
    private final int contactMinutes;
    private final boolean noRinse;
    private final String basis;

    Sanitiser(String id, double usualMillilitresPerLitre, int contactMinutes, boolean noRinse, String basis) {
        this.id = id;
        this.usualMillilitresPerLitre = usualMillilitresPerLitre;
        this.contactMinutes = contactMinutes;
        this.noRinse = noRinse;
        this.basis = basis;
    }

    @Override
    public String id() {
        return id;
    }
    /** Product in a litre of water, mL, where the label is not known; empty for heat, and where only the label tells. */
    public OptionalDouble usualMillilitresPerLitre() {
        return usualMillilitresPerLitre > 0 ? OptionalDouble.of(usualMillilitresPerLitre) : OptionalDouble.empty();
    }

    /** How long everything has to stay wet, or hot; 0 where only the label tells. */
    public int contactMinutes() {
        return contactMinutes;
    }

    /** True when drained gear may be used unrinsed, at the usual strength. */
    public boolean isNoRinse() {
        return noRinse;
    }

    /** Where the figures come from, for a person. */
    public String basis() {
        return basis;
    }
}
