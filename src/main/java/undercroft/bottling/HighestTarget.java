package undercroft.bottling;

import org.hipparchus.analysis.solvers.BrentSolver;
import undercroft.calc.gas.ClosedBottle;
import undercroft.calc.gas.PressureLimits;
import undercroft.calc.priming.PrimingDose;
import undercroft.calc.priming.UnfinishedFermentation;
import undercroft.catalogue.BottleType;
import undercroft.quantity.Carbonation;

/** The highest carbonation to aim at in a bottle: its safety estimate on a hot day just meets what the bottle may bear. */
final class HighestTarget {
    private static final double MOST_VOLUMES = 7;
    private static final double ACCURACY_VOLUMES = 1e-4;

    private HighestTarget() {}

    /** Volumes of CO2, 0 to 7; 0 when not even the beer without sugar is safe. */
    static double volumes(BottlingPlan plan, BottleType bottle, UnfinishedFermentation unfinished) {
        ClosedBottle closed = BottlePressure.closed(plan, bottle);
        double workingPressureBar = PressureLimits.of(bottle).workingPressureBar();
        if (excess(plan, closed, unfinished, 0, workingPressureBar) > 0) {
            return 0;
        }
        if (excess(plan, closed, unfinished, MOST_VOLUMES, workingPressureBar) <= 0) {
            return MOST_VOLUMES;
        }
        return new BrentSolver(ACCURACY_VOLUMES)
                .solve(100, target -> excess(plan, closed, unfinished, target, workingPressureBar), 0, MOST_VOLUMES);
    }

    private static double excess(
            BottlingPlan plan,
            ClosedBottle closed,
            UnfinishedFermentation unfinished,
            double targetVolumes,
            double workingPressureBar) {
        PrimingDose dose = PrimingDose.forTarget(
                plan.sugar(),
                plan.filling().shares().bottleLitres(),
                plan.beer().warmestCelsius(),
                Carbonation.ofVolumes(targetVolumes),
                plan.atmosphereBar());
        BottleContents contents = BottleContents.of(plan, dose, unfinished);
        return BottlePressure.upperBar(closed, BottlePressure.CHECKED_CELSIUS, contents) - workingPressureBar;
    }
}
