package undercroft.calc.light;

import undercroft.quantity.Check;

/** How sensitive a beer is to light, against a pale beer of 25 IBU and 8 EBC with ordinary hops. */
public final class BeerSensitivity {
    private static final double REFERENCE_IBU = 25;
    private static final double HIGHEST_IBU = 75;
    /** What is left when every bitter acid is a reduced one (common practice, no source). */
    private static final double REDUCED_SHARE_LEFT = 0.02;

    private static final double DEPTH_PER_EBC = 0.279;

    private BeerSensitivity() {}

    /**
     * Factor on the light dose: (IBU / 25) × [(1 − r) + 0.02 r] × colour. Linear in bitterness because the bitter acids catch
     * only about 4 in 10,000 of the excited riboflavin (derived from Cardoso et al. 2006, JAFC 54:5630).
     *
     * @param ibu bitterness, 0 to 200; above 75 counts as 75, beyond which iso-alpha-acids hardly dissolve. Dry hopping makes
     *     the measured figure too high
     * @param reducedHopShare share of the bitterness from reduced (light-stable) hop acids, 0 to 1. Any ordinary hops or
     *     repitched yeast bring some sensitivity back
     * @param ebc colour of the beer, 0 to 200 EBC; dark beer shades itself
     * @return 0 and up; 0 for an unhopped beer
     * @throws undercroft.quantity.InvalidInput outside these ranges
     */
    public static double factor(double ibu, double reducedHopShare, double ebc) {
        Check.within("ibu", ibu, 0, 200, "IBU");
        Check.within("reducedHopShare", reducedHopShare, 0, 1, "");
        double bitterness = Math.min(ibu, HIGHEST_IBU) / REFERENCE_IBU;
        double acids = 1 - reducedHopShare + REDUCED_SHARE_LEFT * reducedHopShare;
        return bitterness * acids * colourFactor(ebc);
    }

    /**
     * Shading by the beer's own colour: [(1 − e^−x) / x] with x = 0.279 EBC, over its value at 8 EBC. A pure inner filter,
     * derived; no published check exists.
     *
     * @param ebc 0 to 200
     * @return 2.5 for a colourless beer, 1 at 8 EBC, falling
     */
    public static double colourFactor(double ebc) {
        Check.within("ebc", ebc, 0, 200, "EBC");
        return meanShare(ebc) / meanShare(ActionSpectrum.REFERENCE_EBC);
    }

    private static double meanShare(double ebc) {
        double x = DEPTH_PER_EBC * ebc;
        return x < 1e-9 ? 1 : -Math.expm1(-x) / x;
    }
}
