package undercroft.bottling;

import java.util.List;
import undercroft.calc.gas.BeerFactor;
import undercroft.calc.gas.BottleEstimates;
import undercroft.calc.gas.ClosedBottle;
import undercroft.calc.gas.HeatLimit;
import undercroft.calc.gas.PressureLimits;
import undercroft.catalogue.BottleType;
import undercroft.quantity.Interval;

/**
 * The pressure that a kind of bottle comes under when all sugar has fermented.
 *
 * @param limits what the bottle is trusted with
 * @param warmths at {@link #CELSIUS}, in that order
 * @param heatLimit warmest storage at which the upper estimate stays within the limit
 * @param highestTargetVolumes highest target whose upper estimate at {@link #CHECKED_CELSIUS} stays within the limit; 0 when
 *     not even beer without sugar does
 */
public record BottlePressure(
        BottleType bottle,
        PressureLimits limits,
        List<AtWarmth> warmths,
        HeatLimit heatLimit,
        double highestTargetVolumes) {
    /** A fridge, a room, a hot room, a car or attic. */
    public static final List<Integer> CELSIUS = List.of(5, 20, 30, 40);

    /** The warmth at which a target is held to the limit, °C: a hot day in a room (assumption). */
    public static final double CHECKED_CELSIUS = 30;

    /** Beer is bottled at about this, °C (assumption; 10 K of it move the pressure by 0.05 bar). */
    private static final double CAPPED_CELSIUS = 20;

    /**
     * The bottle at a temperature.
     *
     * @param gaugeBar low, best and upper estimate
     */
    public record AtWarmth(double celsius, Interval gaugeBar) {}

    /** What the upper estimate at {@link #CHECKED_CELSIUS} leaves to the limit, bar; below zero when it is over. */
    public double marginBar() {
        return limits.workingPressureBar()
                - warmths.get(CELSIUS.indexOf((int) CHECKED_CELSIUS)).gaugeBar().high();
    }

    static BottlePressure of(
            BottlingPlan plan, BottleType bottle, BottleContents contents, double highestTargetVolumes) {
        ClosedBottle closed = closed(plan, bottle);
        PressureLimits limits = PressureLimits.of(bottle);
        List<AtWarmth> warmths = CELSIUS.stream()
                .map(celsius -> new AtWarmth(celsius, gaugeBar(closed, celsius, contents)))
                .toList();
        HeatLimit heat = HeatLimit.of(
                closed,
                possible(contents.gramsPerLitre().high()),
                contents.beerFactor().median() - BeerFactor.SPREAD,
                1,
                1,
                limits.workingPressureBar());
        return new BottlePressure(bottle, limits, warmths, heat, highestTargetVolumes);
    }

    static ClosedBottle closed(BottlingPlan plan, BottleType bottle) {
        return ClosedBottle.of(
                bottle.brimfulMillilitres(),
                bottle.fillMillilitres(),
                plan.beer().abvPercent(),
                CAPPED_CELSIUS,
                plan.atmosphereBar());
    }

    /** Best estimate at the expected gas, with the low estimate at the low end and the upper estimate at the high end. */
    private static Interval gaugeBar(ClosedBottle closed, double celsius, BottleContents contents) {
        Interval grams = contents.gramsPerLitre();
        double low =
                estimates(closed, celsius, grams.low(), contents).gaugeBar().low();
        double best =
                estimates(closed, celsius, grams.median(), contents).gaugeBar().median();
        double high = upperBar(closed, celsius, contents);
        return Interval.of(Math.min(low, best), best, Math.max(best, high));
    }

    static double upperBar(ClosedBottle closed, double celsius, BottleContents contents) {
        return closed.at(
                        celsius,
                        possible(contents.gramsPerLitre().high()),
                        contents.beerFactor().median() - BeerFactor.SPREAD,
                        1,
                        1)
                .gaugeBar();
    }

    private static BottleEstimates estimates(
            ClosedBottle closed, double celsius, double grams, BottleContents contents) {
        return BottleEstimates.of(closed, celsius, possible(grams), contents.beerFactor(), 1);
    }

    /** The model ends at twelve volumes, where every bottle is far beyond its limit. */
    private static double possible(double gramsPerLitre) {
        return Math.min(gramsPerLitre, ClosedBottle.MOST_GRAMS_PER_LITRE);
    }
}
