package undercroft.calc.gas;

import undercroft.quantity.Interval;

/**
 * A bottle's pressure as it probably is and as it should be planned for.
 *
 * @param best beer factor at its best value, air dissolving to equilibrium
 * @param safety beer factor 0.05 lower, all air kept in the headspace
 * @param gaugeBar bar; low = beer factor at its high end and the oxygen gone, median = best, high = safety (assumed bounds)
 */
public record BottleEstimates(BottleState best, BottleState safety, Interval gaugeBar) {
    /**
     * Both estimates and the span between.
     *
     * @param celsius −5 to 60 °C
     * @param totalGramsPerLitre all CO2 in the bottle per litre of beer filled, 0 to 12 volumes
     * @param beerFactor as from {@link BeerFactor#of}; its median is the best value
     * @param airAmount share of the headspace that was air at capping, 0 to 1
     * @throws IllegalArgumentException outside these ranges
     */
    public static BottleEstimates of(
            ClosedBottle bottle, double celsius, double totalGramsPerLitre, Interval beerFactor, double airAmount) {
        BottleState best = bottle.at(celsius, totalGramsPerLitre, beerFactor.median(), airAmount, 0);
        BottleState safety =
                bottle.at(celsius, totalGramsPerLitre, beerFactor.median() - BeerFactor.SPREAD, airAmount, 1);
        BottleState low = bottle.at(
                celsius, totalGramsPerLitre, beerFactor.high(), Math.min(airAmount, DissolvedAir.NITROGEN_SHARE), 0);
        double median = best.gaugeBar();
        return new BottleEstimates(
                best,
                safety,
                Interval.of(Math.min(low.gaugeBar(), median), median, Math.max(median, safety.gaugeBar())));
    }
}
