package undercroft.calc.conditioning;

/** What a gauge on a closed bottle shows; the physics of gas in a bottle lives elsewhere. */
@FunctionalInterface
public interface PressureModel {
    /**
     * Gauge pressure at equilibrium, bar.
     *
     * @param celsius temperature of the bottle, °C
     * @param totalGramsPerLitre carbon dioxide in the bottle, g per litre of beer
     * @param beerFactor how well the beer holds the gas against water
     * @param airAmount share of the air capped in that is left, 0 (squeezed out) to 1
     * @param airTrapped share of that air that stays in the headspace instead of dissolving, 0 to 1
     */
    double gaugeBar(double celsius, double totalGramsPerLitre, double beerFactor, double airAmount, double airTrapped);
}
