package undercroft.calc.light;

import java.util.function.DoubleUnaryOperator;
import undercroft.quantity.Check;

/** Spectra that have a formula: phases of daylight and the glowing filament. */
final class Daylight {
    private static final SpectralTable COMPONENTS = SpectralTable.read("daylight_components_10nm.csv");
    private static final Spectrum S0 = COMPONENTS.column("S0");
    private static final Spectrum S1 = COMPONENTS.column("S1");
    private static final Spectrum S2 = COMPONENTS.column("S2");

    private Daylight() {}

    /**
     * Relative spectral power of daylight, 100 at 560 nm, for 300 to 780 nm.
     *
     * @param kelvin correlated colour temperature, 4,000 to 25,000 K. Source: CIE 015, D illuminants: x(T) in two branches,
     *     y = −3 x² + 2.870 x − 0.275, S = S0 + M1 S1 + M2 S2
     */
    static DoubleUnaryOperator ofColourTemperature(double kelvin) {
        double t = Check.within("kelvin", kelvin, 4_000, 25_000, "K");
        double x = t <= 7_000
                ? 0.244063 + 0.09911e3 / t + 2.9678e6 / (t * t) - 4.6070e9 / (t * t * t)
                : 0.237040 + 0.24748e3 / t + 1.9018e6 / (t * t) - 2.0064e9 / (t * t * t);
        double y = -3 * x * x + 2.870 * x - 0.275;
        double m = 0.0241 + 0.2562 * x - 0.7341 * y;
        double m1 = (-1.3515 - 1.7703 * x + 5.9114 * y) / m;
        double m2 = (0.0300 - 31.4424 * x + 30.0717 * y) / m;
        return nm -> S0.at(nm) + m1 * S1.at(nm) + m2 * S2.at(nm);
    }

    /**
     * Relative spectral power of CIE illuminant A, 100 at 560 nm: Planck's law at 2,848 K with c2 = 1.435e7 nm K, the numbers
     * of its definition in CIE 015 (2,856 K with today's constant).
     */
    static double incandescent(double nanometres) {
        double c2 = 1.435e7;
        double kelvin = 2_848;
        return 100
                * Math.pow(560 / nanometres, 5)
                * Math.expm1(c2 / (kelvin * 560))
                / Math.expm1(c2 / (kelvin * nanometres));
    }
}
