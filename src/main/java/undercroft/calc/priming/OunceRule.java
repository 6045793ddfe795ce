package undercroft.calc.priming;

import undercroft.quantity.Carbonation;
import undercroft.quantity.Check;

/**
 * The trade's check value: an ounce of corn sugar (glucose monohydrate) to the US gallon (common practice, no source). Shown
 * beside the computed dose so that a slip of ten is seen.
 */
public final class OunceRule {
    /** 28.349523125 g in 3.785411784 L, exact by definition of both units. */
    public static final double GRAMS_PER_LITRE = 28.349523125 / 3.785411784;

    private OunceRule() {}

    /** Corn sugar by the rule, g, for 0 to 100,000 L of beer. */
    public static double grams(double beerLitres) {
        return GRAMS_PER_LITRE * Check.within("beerLitres", beerLitres, 0, 100_000, "L");
    }

    /** Volumes of CO2 the rule adds by stoichiometry. */
    public static double potentialVolumes() {
        return GRAMS_PER_LITRE * Stoichiometry.GLUCOSE_MONOHYDRATE / Carbonation.GRAMS_PER_LITRE_OF_ONE_VOLUME;
    }

    /** Volumes of CO2 the rule is expected to add, at 0.95 of theory. */
    public static double expectedVolumes() {
        return potentialVolumes() * Stoichiometry.COMPLETENESS;
    }
}
