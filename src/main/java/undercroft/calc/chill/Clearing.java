package undercroft.calc.chill;

import undercroft.catalogue.Flocculation;
import undercroft.quantity.Interval;

/** How long a carried bottle wants to stand in the cold until its yeast lies on the floor again. */
public final class Clearing {
    private static final double GRAVITY = 9.80665;

    private Clearing() {}

    /** Hours upright once the bottle is cold: common practice ("the night before"), in the order Stokes' law gives. */
    public static Interval hours(Flocculation flocculation) {
        return flocculation.clearingHours();
    }

    /**
     * How fast a small ball sinks: v = g d² Δρ / (18 μ), Stokes 1851.
     *
     * @param micrometres diameter, 0 or more; a yeast cell 5 to 7, a floc 20 to 100
     * @param surplusKilogramsPerCubicMetre density above that of the beer; about 80 for a yeast cell
     * @param millipascalSeconds viscosity, above 0; beer 1.6 at 20 °C (from memory), 2.4 at 6 °C
     * @return mm/h; negative for what rises
     */
    public static double fallMillimetresPerHour(
            double micrometres, double surplusKilogramsPerCubicMetre, double millipascalSeconds) {
        double metres = micrometres * 1e-6;
        double metresPerSecond =
                GRAVITY * metres * metres * surplusKilogramsPerCubicMetre / (18 * millipascalSeconds / 1000);
        return metresPerSecond * 3600 * 1000;
    }
}
