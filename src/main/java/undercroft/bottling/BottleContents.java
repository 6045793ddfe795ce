package undercroft.bottling;

import undercroft.calc.gas.BeerFactor;
import undercroft.calc.gas.RealExtract;
import undercroft.calc.priming.PrimingDose;
import undercroft.calc.priming.UnfinishedFermentation;
import undercroft.quantity.Carbonation;
import undercroft.quantity.Interval;

/**
 * The carbon dioxide that ends up in the bottles, g/L of beer: residual, priming and what was not fermented out, end to end.
 * The high end counts the sugar as rich and fermented to the last gram, and with a dextrin-eating yeast the dextrins too.
 *
 * @param gramsPerLitre low and median as expected; the high end is the one for safety
 * @param beerFactor solubility in this beer over that in water
 */
record BottleContents(Interval gramsPerLitre, Interval beerFactor) {

    static BottleContents of(BottlingPlan plan, PrimingDose dose, UnfinishedFermentation unfinished) {
        Interval primed = dose.totalVolumes().times(Carbonation.GRAMS_PER_LITRE_OF_ONE_VOLUME);
        Interval extra = unfinished.extraGramsPerLitre();
        double dextrins = plan.yeast().fermentsDextrins() ? UnfinishedFermentation.DEXTRIN_GRAMS_PER_LITRE : 0;
        double abv = plan.beer().abvPercent();
        double extract = plan.expectedFinal()
                .map(end -> RealExtract.gramsPerLitre(end, abv))
                .orElse(RealExtract.USUAL_GRAMS_PER_LITRE);
        return new BottleContents(
                Interval.of(
                        primed.low() + extra.low(),
                        primed.median() + extra.median(),
                        primed.high() + extra.high() + dextrins),
                BeerFactor.of(abv, Math.min(200, extract)));
    }
}
