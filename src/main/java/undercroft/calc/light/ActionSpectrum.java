package undercroft.calc.light;

/**
 * How strongly light of a wavelength, reaching the beer, makes it lightstruck: [ε(λ) + u(λ)] × F(λ) × λ/450, the highest
 * table value being 1. Energy basis, so it multiplies W m⁻² nm⁻¹.
 *
 * <p>ε is the absorption of riboflavin, the sensitiser in visible light (De Keukeleire et al. 2008, Cerevisia; Goldsmith et
 * al. 2005, JASBC 63:177); u the direct ultraviolet route (assumed, below 1 % of any dose behind glass); F what the colour of
 * the beer itself leaves on average over the bottle.
 */
final class ActionSpectrum {
    static final double REFERENCE_EBC = 8;

    private static final int FROM = 300;
    private static final int TO = 560;
    /** Mean chord π d/4 of a bottle of 60 mm inside. */
    private static final double CHORD_CENTIMETRES = 4.7;

    private static final Spectrum RIBOFLAVIN =
            SpectralTable.read("riboflavin_10nm.csv").column("relative");
    private static final double PEAK = peak();

    private ActionSpectrum() {}

    /** Relative action in a beer of 8 EBC, 0 to 1; zero outside 300 to 560 nm. */
    static double at(double nanometres) {
        return at(nanometres, REFERENCE_EBC);
    }

    /** Relative action in a beer of another colour, on the same scale. */
    static double at(double nanometres, double ebc) {
        return nanometres < FROM || nanometres > TO ? 0 : raw(nanometres, ebc) / PEAK;
    }

    private static double raw(double nm, double ebc) {
        double directUltraviolet = 0.30 * Math.exp(-(nm - 300) / 15);
        return (RIBOFLAVIN.at(nm) + directUltraviolet) * innerFilter(nm, ebc) * nm / 450;
    }

    /**
     * Mean share of light over the depth of the beer, (1 − 10^−aL) / (2.303 a L). Absorption of the average beer: A. J.
     * deLange 2008, JASBC (from memory); EBC = 25 × absorbance in 1 cm at 430 nm.
     */
    static double innerFilter(double nm, double ebc) {
        double perCentimetre =
                ebc / 25 * (0.02465 * Math.exp(-(nm - 430) / 17.591) + 0.97535 * Math.exp(-(nm - 430) / 82.122));
        double depth = Math.log(10) * perCentimetre * CHORD_CENTIMETRES;
        return depth < 1e-9 ? 1 : -Math.expm1(-depth) / depth;
    }

    private static double peak() {
        double highest = 0;
        for (int nm = FROM; nm <= TO; nm += 10) {
            highest = Math.max(highest, raw(nm, REFERENCE_EBC));
        }
        return highest;
    }
}
