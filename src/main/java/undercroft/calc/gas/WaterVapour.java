package undercroft.calc.gas;

/** The pressure of water vapour over water and over beer. */
public final class WaterVapour {
    /** Beer lowers it by what it has dissolved: mole fraction of water about 0.985 (Raoult; computed for 5 % ABV). */
    public static final double SHARE_OVER_BEER = 0.985;

    private static final double CRITICAL_KELVIN = 647.096;
    private static final double CRITICAL_BAR = 220.64;

    private WaterVapour() {}

    /**
     * Saturation pressure over pure liquid water, bar: the auxiliary equation of IAPWS-95 (Wagner and Pruß 2002,
     * J. Phys. Chem. Ref. Data 31:387, eq. 2.5). Fitted from the triple point up; below 0 °C it is continued over
     * supercooled water, at most 0.1 % off at −5 °C.
     *
     * @param celsius −5 to 60 °C
     * @throws IllegalArgumentException outside that range
     */
    public static double saturationBar(double celsius) {
        double kelvin = Require.celsius(celsius) + 273.15;
        double tau = 1 - kelvin / CRITICAL_KELVIN;
        double root = Math.sqrt(tau);
        double tau3 = tau * tau * tau;
        double sum = -7.85951783 * tau
                + 1.84408259 * tau * root
                - 11.7866497 * tau3
                + 22.6807411 * tau3 * root
                - 15.9618719 * tau3 * tau
                + 1.80122502 * tau3 * tau3 * tau * root;
        return CRITICAL_BAR * Math.exp(CRITICAL_KELVIN / kelvin * sum);
    }

    /** Vapour pressure over beer, bar; range and faults as {@link #saturationBar}. Ethanol adds under 0.01 bar, left out. */
    public static double overBeerBar(double celsius) {
        return SHARE_OVER_BEER * saturationBar(celsius);
    }
}
