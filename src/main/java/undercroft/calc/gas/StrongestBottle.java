package undercroft.calc.gas;

import org.hipparchus.special.Erf;
import undercroft.quantity.Interval;

/**
 * How much more sugar than the average the best served of n bottles got, as factors on the CO2 that priming adds: priming is
 * never mixed evenly. Bottles are taken as normally distributed about the average.
 *
 * @param expectedFactor the mean over many batches, 1 for a single bottle
 * @param factor 5, 50 and 95 % of the strongest bottle's factor
 */
public record StrongestBottle(double expectedFactor, Interval factor) {
    private static final double REACH = 9;
    private static final int SLICES = 360;

    /**
     * The strongest of some bottles: 1 + variation × the extreme of n standard normal values, whose quantile q is
     * Φ⁻¹(q^(1/n)) and whose mean is ∫₀ (1 − Φⁿ) − ∫⁰ Φⁿ (order statistics; David and Nagaraja 2003, ch. 2-3).
     *
     * @param bottles how many are left, 1 or more
     * @param variation standard deviation of a bottle's dose over the average, 0 to 0.3
     * @throws IllegalArgumentException outside these ranges
     */
    public static StrongestBottle of(int bottles, double variation) {
        if (bottles < 1) {
            throw new IllegalArgumentException("bottles is " + bottles + ", not 1 or more");
        }
        Require.within("variation", variation, 0, 0.3);
        return new StrongestBottle(
                1 + variation * expectedExtreme(bottles),
                Interval.of(
                        1 + variation * extreme(bottles, 0.05),
                        1 + variation * extreme(bottles, 0.5),
                        1 + variation * extreme(bottles, 0.95)));
    }

    /**
     * The factor of the strongest bottle of a typical batch, the one all limits are told for: their 95 % lies in what else
     * is not known of the batch.
     */
    public double typicalFactor() {
        return factor.median();
    }

    private static double extreme(int bottles, double quantile) {
        double above = -Math.expm1(Math.log(quantile) / bottles);
        return Math.sqrt(2) * Erf.erfcInv(2 * above);
    }

    private static double expectedExtreme(int bottles) {
        double step = REACH / SLICES;
        double sum = 0;
        for (int i = 0; i <= SLICES; i++) {
            double weight = i == 0 || i == SLICES ? 1 : i % 2 == 1 ? 4 : 2;
            double x = i * step;
            double tail = Erf.erfc(x / Math.sqrt(2)) / 2;
            sum += weight * (-Math.expm1(bottles * Math.log1p(-tail)) - Math.pow(tail, bottles));
        }
        return sum * step / 3;
    }
}
