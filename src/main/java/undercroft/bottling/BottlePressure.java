package undercroft.bottling;

import java.util.List;
import undercroft.calc.gas.ClosedBottle;
import undercroft.calc.gas.FinishedPressure;
import undercroft.calc.gas.HeatLimit;
import undercroft.calc.gas.PossibleContents;
import undercroft.calc.gas.PressureLimits;
import undercroft.catalogue.BottleType;
import undercroft.quantity.Interval;

/**
 * The pressure that a kind of bottle comes under when all sugar has fermented. Limits are about the strongest of the bottles
 * of that kind.
 *
 * @param bottles how many of the kind there are
 * @param limits what the bottle is trusted with
 * @param warmths at {@link #CELSIUS}, in that order
 * @param heatLimit warmest storage at which the strongest bottle's 95 % pressure stays within the limit
 * @param highestTargetVolumes highest target whose strongest bottle's 95 % pressure at {@link #CHECKED_CELSIUS} stays within
 *     the limit; 0 when not even beer without sugar does
 */
public record BottlePressure(
        BottleType bottle,
        int bottles,
        PressureLimits limits,
        List<AtWarmth> warmths,
        HeatLimit heatLimit,
        double highestTargetVolumes) {
    /** A fridge, a room, a hot room, a car or attic. */
    public static final List<Integer> CELSIUS = List.of(5, 20, 30, 40);

    /** The warmth at which a target has to stay within the limit, °C: a hot day in a room (assumption). */
    public static final double CHECKED_CELSIUS = 30;

    /**
     * The bottle at a temperature.
     *
     * @param gaugeBar low and median of the average bottle, high of the strongest
     */
    public record AtWarmth(double celsius, Interval gaugeBar) {}

    /** What the upper estimate at {@link #CHECKED_CELSIUS} leaves to the limit, bar; below zero when it is over. */
    public double marginBar() {
        return limits.workingPressureBar()
                - warmths.get(CELSIUS.indexOf((int) CHECKED_CELSIUS)).gaugeBar().high();
    }

    static BottlePressure of(BottlingPlan plan, FillRow row, PossibleContents contents, HighestTarget target) {
        BottleType bottle = row.bottle();
        int bottles = row.filled() > 0 ? row.filled() : row.available();
        FinishedPressure finished = FinishedPressure.of(
                ClosedBottle.of(
                        bottle, plan.beer().abvPercent(), ClosedBottle.USUAL_CAPPING_CELSIUS, plan.atmosphereBar()),
                contents);
        double strongest = plan.dosing().strongestOf(bottles);
        PressureLimits limits = PressureLimits.of(bottle);
        List<AtWarmth> warmths = CELSIUS.stream()
                .map(celsius -> new AtWarmth(celsius, gaugeBar(finished, celsius, strongest)))
                .toList();
        return new BottlePressure(
                bottle,
                bottles,
                limits,
                warmths,
                finished.heatLimit(strongest, limits),
                target.volumes(finished, strongest, limits.workingPressureBar()));
    }

    private static Interval gaugeBar(FinishedPressure finished, double celsius, double strongest) {
        Interval average = finished.gaugeBar(celsius, 1);
        return Interval.of(
                average.low(),
                average.median(),
                finished.gaugeBar(celsius, strongest).high());
    }
}
