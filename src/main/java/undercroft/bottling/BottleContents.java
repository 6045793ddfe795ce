package undercroft.bottling;

import java.util.List;
import undercroft.calc.gas.BeerFactor;
import undercroft.calc.gas.PossibleContents;
import undercroft.calc.gas.RealExtract;
import undercroft.calc.gas.TrappedAir;
import undercroft.calc.priming.PrimingDose;
import undercroft.calc.priming.PrimingYield;
import undercroft.calc.priming.ResidualCarbonation;
import undercroft.calc.priming.SugarAddition;
import undercroft.calc.priming.UnfinishedFermentation;
import undercroft.quantity.Interval;

/**
 * What ends up in the bottles of a plan: residual carbon dioxide, priming and what was not fermented out. With a
 * dextrin-eating yeast the dextrins too. How the bottles will be filled is not told yet.
 */
final class BottleContents {
    private BottleContents() {}

    static PossibleContents of(BottlingPlan plan, PrimingDose dose, UnfinishedFermentation unfinished) {
        Interval primed = dose.notNeeded()
                ? Interval.exactly(0)
                : PrimingYield.of(
                                List.of(new SugarAddition(
                                        dose.sugar(), dose.grams().median())),
                                dose.beerLitres())
                        .expectedGramsPerLitre();
        Interval extra = unfinished.extraGramsPerLitre();
        double dextrins = plan.yeast().fermentsDextrins() ? UnfinishedFermentation.DEXTRIN_GRAMS_PER_LITRE : 0;
        return PossibleContents.of(
                ResidualCarbonation.gramsPerLitre(plan.beer().warmestCelsius(), plan.atmosphereBar()),
                primed,
                extra.plus(dextrins),
                beerFactor(plan),
                TrappedAir.NOT_TOLD);
    }

    private static Interval beerFactor(BottlingPlan plan) {
        double abv = plan.beer().abvPercent();
        double extract = plan.expectedFinal()
                .map(end -> RealExtract.gramsPerLitre(end, abv))
                .orElse(RealExtract.USUAL_GRAMS_PER_LITRE);
        return BeerFactor.of(abv, Math.min(200, extract));
    }
}
