package undercroft.bottling;

import org.hipparchus.analysis.solvers.BrentSolver;
import undercroft.calc.gas.FinishedPressure;
import undercroft.calc.priming.PrimingDose;
import undercroft.calc.priming.UnfinishedFermentation;
import undercroft.quantity.Carbonation;

/**
 * The highest carbonation to aim at in a bottle: the 95 % pressure of the strongest of its kind just meets the working
 * pressure on a hot day.
 */
record HighestTarget(BottlingPlan plan, UnfinishedFermentation unfinished) {
    private static final double MOST_VOLUMES = 7;
    private static final double ACCURACY_VOLUMES = 1e-4;

    /**
     * Volumes of CO2, 0 to 7; 0 when not even the beer without sugar stays within the limit.
     *
     * @param bottle holding anything
     * @param strongest sugar of the strongest bottle over the average
     */
    double volumes(FinishedPressure bottle, double strongest, double workingPressureBar) {
        if (excess(bottle, strongest, 0, workingPressureBar) > 0) {
            return 0;
        }
        if (excess(bottle, strongest, MOST_VOLUMES, workingPressureBar) <= 0) {
            return MOST_VOLUMES;
        }
        return new BrentSolver(ACCURACY_VOLUMES)
                .solve(100, target -> excess(bottle, strongest, target, workingPressureBar), 0, MOST_VOLUMES);
    }

    private double excess(FinishedPressure bottle, double strongest, double targetVolumes, double workingPressureBar) {
        PrimingDose dose = PrimingDose.forTarget(
                plan.sugar(),
                plan.filling().shares().bottleLitres(),
                plan.beer().warmestCelsius(),
                Carbonation.ofVolumes(targetVolumes),
                plan.atmosphereBar());
        return bottle.holding(BottleContents.of(plan, dose, unfinished))
                        .gaugeBar(BottlePressure.CHECKED_CELSIUS, strongest)
                        .high()
                - workingPressureBar;
    }
}
