package undercroft.calc.priming;

/** Carbon dioxide that beer keeps under open air; the one place in this package that knows a solubility. */
final class Equilibrium {
    private static final double GAS_CONSTANT = 8.314462618;
    private static final double GRAMS_PER_MOLE = 44.0095;
    private static final double BAR_PER_ATMOSPHERE = 1.01325;
    private static final double ZERO_CELSIUS = 273.15;

    private Equilibrium() {}

    /**
     * Dissolved carbon dioxide, g/L, at a temperature and a partial pressure of CO2. Weiss 1974, Mar. Chem. 2:203, fresh
     * water, with the fugacity from the second virial coefficient of the same paper, times the beer factor.
     *
     * @param celsius −1 to 45
     * @param partialPressureBar of CO2, 0 to 10
     * @param beerFactor solubility in beer over that in water, 0.85 to 1
     */
    static double gramsPerLitre(double celsius, double partialPressureBar, double beerFactor) {
        double kelvin = celsius + ZERO_CELSIUS;
        double molesPerLitreAtmosphere =
                Math.exp(-58.0931 + 90.5069 * (100 / kelvin) + 22.2940 * Math.log(kelvin / 100));
        double virialCubicCentimetres = -1636.75 + kelvin * (12.0408 + kelvin * (-3.27957e-2 + kelvin * 3.16528e-5));
        double fugacity = partialPressureBar
                * Math.exp(virialCubicCentimetres * 0.1 * partialPressureBar / (GAS_CONSTANT * kelvin));
        return molesPerLitreAtmosphere * fugacity / BAR_PER_ATMOSPHERE * GRAMS_PER_MOLE * beerFactor;
    }

    /** Vapour pressure of pure water, bar, −1 to 45 °C. Weiss and Price 1980, Mar. Chem. 8:347, eq. 10 (from memory). */
    static double waterVapourBar(double celsius) {
        double kelvin = celsius + ZERO_CELSIUS;
        return BAR_PER_ATMOSPHERE * Math.exp(24.4543 - 67.4509 * (100 / kelvin) - 4.8489 * Math.log(kelvin / 100));
    }
}
