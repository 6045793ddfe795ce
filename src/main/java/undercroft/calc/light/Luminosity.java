package undercroft.calc.light;

import java.util.function.DoubleUnaryOperator;

/** What the eye makes of a spectrum: illuminance from spectral irradiance. */
public final class Luminosity {
    private static final double LUMENS_PER_WATT = 683;
    private static final int FROM = 360;
    private static final int TO = 780;
    private static final int STEP = 5;
    private static final Spectrum TABLE =
            SpectralTable.read("luminosity_5nm.csv").column("V");

    private Luminosity() {}

    /**
     * Spectral luminous efficiency of the eye by day, 0 to 1, one at 555 nm; linear between 5 nm steps, zero outside 360 to
     * 780 nm. Source: CIE 1924 V(λ).
     */
    public static double efficiency(double nanometres) {
        return TABLE.at(nanometres);
    }

    /**
     * Illuminance, lx: 683 lm/W × Σ E(λ) V(λ) Δλ at 5 nm, the rule of CIE 015.
     *
     * @param wattsPerSquareMetreNanometre spectral irradiance at a wavelength in nm
     */
    public static double lux(DoubleUnaryOperator wattsPerSquareMetreNanometre) {
        double sum = 0;
        for (int nm = FROM; nm <= TO; nm += STEP) {
            sum += wattsPerSquareMetreNanometre.applyAsDouble(nm) * efficiency(nm);
        }
        return LUMENS_PER_WATT * STEP * sum;
    }
}
