package undercroft.calc.gas;

import undercroft.quantity.Gravity;

/** The extract that is left in a finished beer, which holds some gas out of it. */
public final class RealExtract {
    /** Taken where no final gravity is known, g/L. */
    public static final double USUAL_GRAMS_PER_LITRE = 40;

    private static final double PLATO_PER_ABV_PERCENT = 1.93;

    private RealExtract() {}

    /**
     * Real extract, g/L: 10 (0.1808 OE + 0.8192 AE) with AE the final gravity in °P and OE = AE + 1.93 × ABV (attenuation
     * relation after Balling; the last factor rounded for ordinary strengths).
     *
     * @param finalGravity as the hydrometer reads it in the finished beer
     * @param abvPercent alcohol, 0 to 25 % by volume
     * @return 0 or more
     * @throws IllegalArgumentException outside that range
     */
    public static double gramsPerLitre(Gravity finalGravity, double abvPercent) {
        Require.within("abvPercent", abvPercent, 0, 25);
        double apparent = finalGravity.plato();
        double original = apparent + abvPercent * PLATO_PER_ABV_PERCENT;
        return Math.max(0, 10 * (0.1808 * original + 0.8192 * apparent));
    }
}
