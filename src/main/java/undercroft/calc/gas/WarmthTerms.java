package undercroft.calc.gas;

/**
 * What the balance of gas in one bottle needs to know of a temperature, as rows of {@value #COUNT} numbers. Exact for a
 * single calculation; a table every quarter of a degree, read by the parabola through three rows, for the fast path (the
 * gauge pressure differs by less than 1e-5 bar).
 */
final class WarmthTerms {
    /** 1/RT, mol/(L bar). */
    static final int PER_RT = 0;

    /** Henry solubility of CO2 in water on fugacity, mol/(L bar). */
    static final int HENRY = 1;

    /** Second virial coefficient over RT, 1/bar. */
    static final int VIRIAL = 2;

    /** Vapour over the beer, bar. */
    static final int VAPOUR = 3;

    /** Henry solubilities of nitrogen and oxygen, mol/(L bar). */
    static final int NITROGEN = 4;

    static final int OXYGEN = 5;

    /** Compressibility of the beer, 1/bar. */
    static final int SQUEEZE = 6;

    /** Volume of the beer at this temperature over its volume when capped, at 1 atm. */
    static final int EXPANSION = 7;

    static final int COUNT = 8;

    private static final int PER_KELVIN = 4;
    private static final int ROWS = (int) ((Require.WARMEST_CELSIUS - Require.COLDEST_CELSIUS) * PER_KELVIN) + 1;

    private final double alcoholByWeightPercent;
    private final double cappedKilogramsPerCubicMetre;
    private final double[] table = new double[ROWS * COUNT];

    WarmthTerms(double alcoholByWeightPercent, double cappedAtCelsius) {
        this.alcoholByWeightPercent = alcoholByWeightPercent;
        this.cappedKilogramsPerCubicMetre = BeerDensity.kilogramsPerCubicMetre(cappedAtCelsius, alcoholByWeightPercent);
        for (int row = 0; row < ROWS; row++) {
            System.arraycopy(at(Require.COLDEST_CELSIUS + row / (double) PER_KELVIN), 0, table, row * COUNT, COUNT);
        }
    }

    /** The row of a temperature, not interpolated. */
    double[] at(double celsius) {
        double kelvin = celsius + 273.15;
        double[] row = new double[COUNT];
        row[PER_RT] = 1 / (CarbonDioxideSolubility.R * kelvin);
        row[HENRY] = CarbonDioxideSolubility.k0(celsius) / CarbonDioxideSolubility.BAR_PER_ATM;
        row[VIRIAL] = CarbonDioxideSolubility.secondVirial(celsius) * 1e-3 * row[PER_RT];
        row[VAPOUR] = WaterVapour.overBeerBar(celsius);
        row[NITROGEN] = DissolvedAir.nitrogenMolesPerLitreBar(celsius);
        row[OXYGEN] = DissolvedAir.oxygenMolesPerLitreBar(celsius);
        row[SQUEEZE] = WaterDensity.compressibilityPerBar(celsius);
        row[EXPANSION] =
                cappedKilogramsPerCubicMetre / BeerDensity.kilogramsPerCubicMetre(celsius, alcoholByWeightPercent);
        return row;
    }

    /** Where the middle one of the three rows around a temperature starts in {@link #table}. */
    static int middleRow(double celsius) {
        int nearest = (int) ((celsius - Require.COLDEST_CELSIUS) * PER_KELVIN + 0.5);
        return Math.min(ROWS - 2, Math.max(1, nearest)) * COUNT;
    }

    /** How far a temperature lies from its middle row, in rows. */
    static double fromMiddle(double celsius, int middleRow) {
        int row = middleRow / COUNT;
        return (celsius - Require.COLDEST_CELSIUS) * PER_KELVIN - row;
    }

    /** Writes the interpolated row of a temperature. */
    void read(double celsius, double[] row) {
        int middle = middleRow(celsius);
        double s = fromMiddle(celsius, middle);
        for (int i = 0; i < COUNT; i++) {
            row[i] = 0.5 * s * (s - 1) * table[middle - COUNT + i]
                    + (1 - s * s) * table[middle + i]
                    + 0.5 * s * (s + 1) * table[middle + COUNT + i];
        }
    }

    double[] table() {
        return table;
    }
}
