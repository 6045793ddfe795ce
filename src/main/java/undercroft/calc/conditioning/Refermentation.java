package undercroft.calc.conditioning;

import undercroft.calc.extract.DoseSpread;
import undercroft.calc.extract.HiddenExtract;
import undercroft.calc.extract.Leftover;
import undercroft.calc.gas.TrappedAir;
import undercroft.catalogue.YeastState;
import undercroft.catalogue.YeastStrain;
import undercroft.quantity.Check;
import undercroft.quantity.Interval;
import undercroft.quantity.InvalidInput;

/**
 * What is known on bottling day about a batch that is to carbonate in its bottles. Every amount of sugar is told as the
 * carbon dioxide it can give, in grams per litre of beer.
 *
 * @param strain kind of yeast that does the work
 * @param state how much of it went into the bottle
 * @param abvPercent strength of the beer, 0 to 25 % by volume
 * @param residualGramsPerLitre dissolved already when capped, 0 to 15 g/L
 * @param primingGramsPerLitre from the priming sugar as written down, with the spread of its yield, 0 to 40 g/L
 * @param dose how far the sugar may be off what was written down
 * @param leftover from fermentation that was not finished, taken up like the priming sugar
 * @param hidden what nobody wrote down and only some batches hold, released slowly
 * @param air how much air was capped in and stays in the headspace
 * @param beerFactor how well the beer holds the gas against water, 0.7 to 1.1
 */
public record Refermentation(
        YeastStrain strain,
        YeastState state,
        double abvPercent,
        Interval residualGramsPerLitre,
        Interval primingGramsPerLitre,
        DoseSpread dose,
        Leftover leftover,
        HiddenExtract hidden,
        TrappedAir air,
        Interval beerFactor) {
    /** Refuses what is missing or outside the ranges above with {@link InvalidInput}. */
    public Refermentation {
        if (strain == null || state == null) {
            throw new InvalidInput("yeast", "cellar.fault.no-yeast");
        }
        Check.within("abvPercent", abvPercent, 0, 25, "% by volume");
        within("residualGramsPerLitre", residualGramsPerLitre, 0, 15, "g/L");
        within("primingGramsPerLitre", primingGramsPerLitre, 0, 40, "g/L");
        within("beerFactor", beerFactor, 0.7, 1.1, "");
    }

    private static void within(String where, Interval interval, double min, double max, String unit) {
        if (interval == null) {
            throw new InvalidInput(where, "cellar.fault.missing");
        }
        Check.within(where, interval.low(), min, max, unit);
        Check.within(where, interval.high(), min, max, unit);
    }

    /**
     * Uptake at this strength against uptake at 5 % by volume: falls in a straight line to 0 at the strain's limit.
     * Between 0 and about 1.6. Assumed, in line with how slowly strong beer carbonates.
     */
    double strengthFactor() {
        double limit = strain.alcoholLimitPercent();
        return Math.max(0, (1 - abvPercent / limit) / (1 - 5 / limit));
    }

    /** Carbon dioxide of the priming sugar at a standard normal deviate, g/L. */
    double primingGramsPerLitreAt(double deviate) {
        return dose.gramsPerLitreAt(primingGramsPerLitre, deviate);
    }

    /** The same batch with another chance, or kind, of hidden extract. */
    public Refermentation withHidden(HiddenExtract other) {
        return new Refermentation(
                strain,
                state,
                abvPercent,
                residualGramsPerLitre,
                primingGramsPerLitre,
                dose,
                leftover,
                other,
                air,
                beerFactor);
    }
}
