package undercroft.calc.gas;

/**
 * Carbon dioxide dissolved in water and, times the beer factor, in beer: Weiss 1974 (Mar. Chem. 2:203) with second virial
 * fugacity and Poynting term. Fitted from −1 to 45 °C and continued to −5 and 60 °C; against IAPWS G7-04 and Carroll et al.
 * 1991 it lies 5 and 2 % higher at 0 °C (6 and 4 % at −5 °C) and within 2 % from 15 to 60 °C, and within 1.1 % of the
 * geochemistry database phreeqc.dat throughout. The virial term is good to about 10 bar.
 */
public final class CarbonDioxideSolubility {
    /** g/mol (IUPAC atomic weights). */
    public static final double MOLAR_MASS = 44.0095;

    /** What a mole dissolved adds to the volume of the beer, cm³ (Weiss 1974). */
    public static final double DISSOLVED_CUBIC_CENTIMETRES_PER_MOLE = 32.3;

    /** Gas constant, L bar/(mol K) (CODATA 2018, exact). */
    static final double R = 0.08314462618;

    static final double BAR_PER_ATM = 1.01325;
    private static final double MOST_BAR = 100;

    private CarbonDioxideSolubility() {}

    /**
     * Solubility K0 in pure water, mol per litre and atm of CO2 <em>fugacity</em> (Weiss 1974, eq. 12, fresh water).
     *
     * @param celsius −5 to 60 °C
     * @throws IllegalArgumentException outside that range
     */
    public static double k0(double celsius) {
        double hundreds = (Require.celsius(celsius) + 273.15) / 100;
        return Math.exp(-58.0931 + 90.5069 / hundreds + 22.2940 * Math.log(hundreds));
    }

    /**
     * Second virial coefficient of CO2, cm³/mol, negative (Weiss 1974, eq. 6; fitted 265 to 320 K).
     *
     * @param celsius −5 to 60 °C
     * @throws IllegalArgumentException outside that range
     */
    public static double secondVirial(double celsius) {
        double t = Require.celsius(celsius) + 273.15;
        return -1636.75 + t * (12.0408 + t * (-3.27957e-2 + t * 3.16528e-5));
    }

    /**
     * Fugacity over partial pressure for a gas that is mostly CO2, exp(B p / RT) (Weiss 1974, eq. 9, pure gas).
     *
     * @param celsius −5 to 60 °C
     * @param partialPressureBar 0 to 100 bar, trustworthy to about 10
     * @throws IllegalArgumentException outside these ranges
     */
    public static double fugacityCoefficient(double celsius, double partialPressureBar) {
        Require.within("partialPressureBar", partialPressureBar, 0, MOST_BAR);
        return Math.exp(secondVirial(celsius) * 1e-3 * partialPressureBar / rt(celsius));
    }

    /**
     * What the pressure on the liquid does to the solubility, exp(−v̄ (P − 1 atm) / RT) with v̄ = 32.3 cm³/mol (Weiss
     * 1974, eq. 5).
     *
     * @param celsius −5 to 60 °C
     * @param totalBar pressure on the liquid, 0 to 1,000 bar
     * @throws IllegalArgumentException outside these ranges
     */
    public static double poynting(double celsius, double totalBar) {
        Require.within("totalBar", totalBar, 0, 1_000);
        return Math.exp(-DISSOLVED_CUBIC_CENTIMETRES_PER_MOLE * 1e-3 * (totalBar - BAR_PER_ATM) / rt(celsius));
    }

    /**
     * Grams of CO2 in a litre of beer at equilibrium under pure CO2 of a pressure.
     *
     * @param celsius −5 to 60 °C
     * @param partialPressureBar of the CO2, 0 to 100 bar; taken as the whole pressure on the liquid
     * @param beerFactor solubility in the beer over that in water, 0.5 to 1.1; see {@link BeerFactor}
     * @throws IllegalArgumentException outside these ranges
     */
    public static double gramsPerLitre(double celsius, double partialPressureBar, double beerFactor) {
        Require.within("beerFactor", beerFactor, 0.5, 1.1);
        return MOLAR_MASS
                * beerFactor
                * k0(celsius)
                / BAR_PER_ATM
                * partialPressureBar
                * fugacityCoefficient(celsius, partialPressureBar)
                * poynting(celsius, partialPressureBar);
    }

    /**
     * The pressure of CO2 that holds so much of it in solution, bar: the inverse of {@link #gramsPerLitre}, to 1e-12.
     *
     * @param celsius −5 to 60 °C
     * @param gramsPerLitre dissolved, 0 to 25 g/L
     * @param beerFactor 0.5 to 1.1
     * @throws IllegalArgumentException outside these ranges, or when more than 100 bar would be needed
     */
    public static double partialPressureBar(double celsius, double gramsPerLitre, double beerFactor) {
        Require.within("gramsPerLitre", gramsPerLitre, 0, 25);
        Require.within("beerFactor", beerFactor, 0.5, 1.1);
        double perBar = MOLAR_MASS * beerFactor * k0(celsius) / BAR_PER_ATM;
        double slope = (secondVirial(celsius) - DISSOLVED_CUBIC_CENTIMETRES_PER_MOLE) * 1e-3 / rt(celsius);
        double shift = Math.exp(DISSOLVED_CUBIC_CENTIMETRES_PER_MOLE * 1e-3 * BAR_PER_ATM / rt(celsius));
        double bar = gramsPerLitre / perBar;
        for (int i = 0; i < 50; i++) {
            double held = perBar * shift * bar * Math.exp(slope * bar);
            double step = (gramsPerLitre - held) / (perBar * shift * Math.exp(slope * bar) * (1 + slope * bar));
            bar += step;
            if (Math.abs(step) <= 1e-14 * bar) {
                break;
            }
        }
        return Require.within("partial pressure", bar, 0, MOST_BAR);
    }

    private static double rt(double celsius) {
        return R * (celsius + 273.15);
    }
}
