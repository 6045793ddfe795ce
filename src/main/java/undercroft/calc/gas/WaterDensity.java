package undercroft.calc.gas;

/** Density and compressibility of air-free water at 1 atm (Kell 1975, J. Chem. Eng. Data 20:97). */
public final class WaterDensity {
    private WaterDensity() {}

    /**
     * Density, kg/m³, within 0.005 of IAPWS-95 (Kell 1975). The divisor's constant is 16.879850e-3; a version with two
     * digits swapped is in circulation and is 0.27 kg/m³ wrong at 20 °C.
     *
     * @param celsius −5 to 60 °C
     * @throws IllegalArgumentException outside that range
     */
    public static double kilogramsPerCubicMetre(double celsius) {
        double t = Require.celsius(celsius);
        double numerator = 999.83952
                + t * (16.945176 + t * (-7.9870401e-3 + t * (-46.170461e-6 + t * (105.56302e-9 + t * -280.54253e-12))));
        return numerator / (1 + 16.879850e-3 * t);
    }

    /**
     * Isothermal compressibility, 1/bar, about 4.6e-5 (Kell 1975).
     *
     * @param celsius −5 to 60 °C
     * @throws IllegalArgumentException outside that range
     */
    public static double compressibilityPerBar(double celsius) {
        double t = Require.celsius(celsius);
        double numerator = 50.88496
                + t * (0.6163813 + t * (1.459187e-3 + t * (20.08438e-6 + t * (-58.47727e-9 + t * 410.4110e-12))));
        return numerator / (1 + 19.67348e-3 * t) * 1e-6;
    }
}
