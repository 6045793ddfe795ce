package undercroft.calc.gas;

/**
 * Nitrogen and oxygen in water, from the single-point forms in Sander's compilation of Henry constants (Atmos. Chem. Phys.
 * 15:4399, 2015; values as remembered): good to some 5 % from 0 to 40 °C, continued to −5 and 60 °C.
 */
public final class DissolvedAir {
    /** Share of nitrogen, with argon, in air; the rest is oxygen. */
    public static final double NITROGEN_SHARE = 0.79;

    private static final double ROOM_KELVIN = 298.15;

    private DissolvedAir() {}

    /** Nitrogen, mol/(L bar): 6.4e-4 at 25 °C, temperature constant 1300 K; −5 to 60 °C, else IllegalArgumentException. */
    public static double nitrogenMolesPerLitreBar(double celsius) {
        return 6.4e-4 * Math.exp(1300 * colder(celsius));
    }

    /** Oxygen, mol/(L bar): 1.3e-3 at 25 °C, temperature constant 1500 K; −5 to 60 °C, else IllegalArgumentException. */
    public static double oxygenMolesPerLitreBar(double celsius) {
        return 1.3e-3 * Math.exp(1500 * colder(celsius));
    }

    private static double colder(double celsius) {
        return 1 / (Require.celsius(celsius) + 273.15) - 1 / ROOM_KELVIN;
    }
}
