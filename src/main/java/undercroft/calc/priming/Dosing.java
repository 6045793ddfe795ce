package undercroft.calc.priming;

import undercroft.calc.gas.StrongestBottle;
import undercroft.catalogue.Listed;
import undercroft.quantity.Check;
import undercroft.quantity.Interval;

/**
 * How the sugar gets into the bottles, with the spread between bottles that comes with it (coefficient of variation; common
 * practice, no source: 3 to 8 %).
 */
public enum Dosing implements Listed {
    SYRUP("syrup", 0.05),
    SPOON("spoon", 0.08);

    private final String id;
    private final double coefficientOfVariation;

    Dosing(String id, double coefficientOfVariation) {
        this.id = id;
        this.coefficientOfVariation = coefficientOfVariation;
    }

    @Override
    public String id() {
        return id;
    }
    /** Standard deviation of the sugar in a bottle over its mean. */
    public double coefficientOfVariation() {
        return coefficientOfVariation;
    }

    /**
     * Grams of sugar that end up in one bottle: the mean, and the 5 % and 95 % bottle of a normal spread.
     *
     * @param gramsPerLitre sugar wanted in the beer, 0 to 200 g/L
     * @param fillLitres beer in the bottle, 0.05 to 10 L
     */
    public Interval gramsPerBottle(double gramsPerLitre, double fillLitres) {
        Check.within("gramsPerLitre", gramsPerLitre, 0, 200, "g/L");
        Check.within("fillLitres", fillLitres, 0.05, 10, "L");
        double half = Interval.NORMAL_95 * coefficientOfVariation;
        return Interval.of(1 - half, 1, 1 + half).times(gramsPerLitre * fillLitres);
    }

    /**
     * Sugar of the strongest of several bottles over the mean, {@link StrongestBottle#typicalFactor}.
     *
     * @param bottles 1 to 1,000,000; one bottle gives 1
     */
    public double strongestOf(int bottles) {
        Check.within("bottles", bottles, 1, 1_000_000);
        return StrongestBottle.of(bottles, coefficientOfVariation).typicalFactor();
    }
}
