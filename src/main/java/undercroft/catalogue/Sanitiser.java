package undercroft.catalogue;

import java.util.OptionalDouble;

/**
 * Ways to kill what would spoil the beer, by active substance. Rates, times and strengths are common practice, no source,
 * except where the basis names one; the label of the product always wins.
 */
public enum Sanitiser implements Listed {
    ACID_ANIONIC(
            "acid-anionic",
            "acid sanitiser (phosphoric acid with an anionic surfactant)",
            1.56,
            2,
            true,
            "Works only while the solution is sour, below about pH 3; hard water uses it up. Drain well, its foam does no"
                    + " harm. Not with chlorine.",
            "one US fluid ounce to five US gallons; 1 to 2 minutes wet (common practice, no source)"),
    IODOPHOR(
            "iodophor",
            "iodophor (iodine on a carrier)",
            1.0,
            2,
            true,
            "Keep the solution cool and drain well. When its amber colour has gone it is spent. It stains plastic.",
            "12.5 to 25 ppm of iodine, which is 0.7 to 1.4 mL/L of a 1.75 % concentrate (US 21 CFR 178.1010, from memory)"),
    PERACETIC_ACID(
            "peracetic-acid",
            "peracetic acid",
            1.8,
            5,
            true,
            "The vapour stings: open a window. No-rinse only up to the label's strength. Not for aluminium or copper.",
            "100 ppm from a 5 % stock of 1.1 g/mL; 80 to 200 ppm are used without rinsing (from memory)"),
    CHLORINE_BLEACH(
            "chlorine-bleach",
            "chlorine bleach, unscented",
            4.0,
            10,
            false,
            "Never with acid: that sets free chlorine gas. Rinse with boiled water until no smell is left, a trace taints"
                    + " the beer. Not for stainless steel.",
            "200 ppm of chlorine from a 5 % bleach (strength from memory, minutes common practice)"),
    HEAT(
            "heat",
            "heat (water of 80 °C or more)",
            0,
            10,
            true,
            "Hot glass cracks: warm it slowly, let it cool slowly, never more than 40 °C at once. Plastic bottles shrink.",
            "ten minutes at 80 °C or more (common practice, no source); containers are tested at a jump of 42 °C"
                    + " (ISO 7459, from memory)");

    /** Said with every amount of a product. */
    public static final String LABEL_WINS = "The product's label always wins over the figure given here.";

    /** Holds whatever the kind. */
    public static final String ALWAYS =
            "Gloves, and cover for the eyes. Never mix two products, above all never acid and"
                    + " chlorine: that gives chlorine gas. Open a window. Sanitise only what is clean.";

    private final String id;
    private final String label;
    private final double usualMillilitresPerLitre;
    private final int contactMinutes;
    private final boolean noRinse;
    private final String caution;
    private final String basis;

    Sanitiser(
            String id,
            String label,
            double usualMillilitresPerLitre,
            int contactMinutes,
            boolean noRinse,
            String caution,
            String basis) {
        this.id = id;
        this.label = label;
        this.usualMillilitresPerLitre = usualMillilitresPerLitre;
        this.contactMinutes = contactMinutes;
        this.noRinse = noRinse;
        this.caution = caution;
        this.basis = basis;
    }

    @Override
    public String id() {
        return id;
    }

    @Override
    public String label() {
        return label;
    }

    /** Product in a litre of water, mL, where the label is not known; empty for heat. */
    public OptionalDouble usualMillilitresPerLitre() {
        return usualMillilitresPerLitre > 0 ? OptionalDouble.of(usualMillilitresPerLitre) : OptionalDouble.empty();
    }

    /** How long everything has to stay wet, or hot. */
    public int contactMinutes() {
        return contactMinutes;
    }

    /** True when drained gear may be used unrinsed, at the usual strength. */
    public boolean isNoRinse() {
        return noRinse;
    }

    public String caution() {
        return caution;
    }

    /** Where the figures come from, for a person. */
    public String basis() {
        return basis;
    }
}
