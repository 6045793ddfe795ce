package undercroft.calc.priming;

import undercroft.calc.gas.CarbonDioxideSolubility;
import undercroft.calc.gas.WaterVapour;
import undercroft.quantity.Check;
import undercroft.quantity.Interval;

/**
 * Carbon dioxide left from fermentation in beer that stood under an airlock. It is set by the <em>warmest</em> temperature
 * since fermentation slowed: gas that has left does not come back when the beer is cooled.
 */
public final class ResidualCarbonation {
    private static final double LOW_FACTOR = 0.90;
    private static final double BEST_FACTOR = 0.97;
    private static final double HIGH_FACTOR = 1.08;

    private ResidualCarbonation() {}

    /**
     * Residual carbon dioxide, g/L of beer: water in equilibrium with CO2 at the air pressure less the water vapour, times
     * 0.90, 0.97 and 1.08: lower solubility in beer, and some supersaturation.
     *
     * @param warmestCelsius highest temperature of the beer since fermentation slowed, −1 to 45 °C
     * @param atmosphereBar air pressure at the place, 0.5 to 1.1 bar; 1.01325 at sea level
     * @return g/L; falls with temperature, rises with air pressure
     * @throws undercroft.quantity.InvalidInput outside these ranges, where no correlation used here was fitted
     *     <p>Source: Weiss 1974, Mar. Chem. 2:203; the beer factors are derived for this tool from resting lager
     *     measured gravimetrically at 0.285 to 0.332 % by weight (Langer and Schultze 1879, Polytechnisches Journal 235),
     *     1.08 to 1.11 of what 0.95 gives, and from handbook figures for beer and wine between 0.84 and 0.96.
     */
    public static Interval gramsPerLitre(double warmestCelsius, double atmosphereBar) {
        Check.within("warmestCelsius", warmestCelsius, -1, 45, "°C");
        Check.within("atmosphereBar", atmosphereBar, 0.5, 1.1, "bar");
        double partialPressureBar = atmosphereBar - WaterVapour.overBeerBar(warmestCelsius);
        return Interval.of(LOW_FACTOR, BEST_FACTOR, HIGH_FACTOR)
                .mapRising(factor -> CarbonDioxideSolubility.gramsPerLitre(warmestCelsius, partialPressureBar, factor));
    }
}
