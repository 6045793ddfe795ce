package undercroft.calc.conditioning;

/**
 * How fast working yeast dies at a temperature: slow ageing with 78 kJ/mol (fitted to the losses in stored slurry of
 * McCaig and Bendiak 1985, abstract) and heat death with 300 kJ/mol, the usual order for thermal death, 0.3 a day at
 * the strain's highest temperature (assumed: half an hour at 48 °C, after which a primed lager stood still for twelve days
 * (Knab 1872, Polytechnisches Journal 204:340), then costs two thirds of a lager yeast).
 */
final class YeastDeath {
    private static final double GAS_CONSTANT = 8.314462618e-3;
    private static final double HEAT_DEATH_PER_DAY_AT_40 = 0.3;
    private static final double COLDEST = -30;
    private static final double HOTTEST = 70;
    private static final int PER_KELVIN = 50;
    private static final double[] AGEING = new double[(int) ((HOTTEST - COLDEST) * PER_KELVIN) + 2];
    private static final double[] HEAT = new double[AGEING.length];

    static {
        for (int i = 0; i < AGEING.length; i++) {
            double celsius = COLDEST + (double) i / PER_KELVIN;
            AGEING[i] = arrhenius(celsius, 78, 21);
            HEAT[i] = HEAT_DEATH_PER_DAY_AT_40 * arrhenius(celsius, 300, 40);
        }
    }

    private YeastDeath() {}

    /**
     * Loss of working cells, 1/day, from a table held at −30 and 70 °C.
     *
     * @param deathPerDayAt21 the slow part at 21 °C, 1/day
     * @param heatFactor of the strain, {@link #heatFactor}
     */
    static double perDay(double deathPerDayAt21, double heatFactor, double celsius) {
        double scaled = (Math.max(COLDEST, Math.min(HOTTEST, celsius)) - COLDEST) * PER_KELVIN;
        int i = (int) scaled;
        double t = scaled - i;
        double ageing = AGEING[i] + t * (AGEING[i + 1] - AGEING[i]);
        return deathPerDayAt21 * ageing + heatFactor * (HEAT[i] + t * (HEAT[i + 1] - HEAT[i]));
    }

    /** How much faster than a strain that bears 40 °C one with another highest temperature dies of heat. */
    static double heatFactor(double maximumCelsius) {
        return 1 / arrhenius(maximumCelsius, 300, 40);
    }

    private static double arrhenius(double celsius, double kilojoulesPerMole, double referenceCelsius) {
        return Math.exp(kilojoulesPerMole / GAS_CONSTANT * (1 / (referenceCelsius + 273.15) - 1 / (celsius + 273.15)));
    }
}
