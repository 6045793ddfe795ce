package undercroft.calc.conditioning;

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
 * @param primingGramsPerLitre from the priming sugar, with the spread of weighing, mixing and yield, 0 to 40 g/L
 * @param extraGramsPerLitre from fermentation that was not finished, taken up like the priming sugar, 0 to 60 g/L
 * @param dextrinGramsPerLitre from dextrins, which only a diastatic or wild yeast reaches, slowly, 0 to 60 g/L; usually 0
 * @param beerFactor how well the beer holds the gas against water, 0.7 to 1.1
 */
public record Refermentation(
        YeastStrain strain,
        YeastState state,
        double abvPercent,
        Interval residualGramsPerLitre,
        Interval primingGramsPerLitre,
        double extraGramsPerLitre,
        double dextrinGramsPerLitre,
        Interval beerFactor) {
    /** Refuses what is missing or outside the ranges above with {@link InvalidInput}. */
    public Refermentation {
        if (strain == null || state == null) {
            throw new InvalidInput("yeast", "cellar.fault.no-yeast");
        }
        Check.within("abvPercent", abvPercent, 0, 25, "% by volume");
        within("residualGramsPerLitre", residualGramsPerLitre, 0, 15, "g/L");
        within("primingGramsPerLitre", primingGramsPerLitre, 0, 40, "g/L");
        Check.within("extraGramsPerLitre", extraGramsPerLitre, 0, 60, "g/L");
        Check.within("dextrinGramsPerLitre", dextrinGramsPerLitre, 0, 60, "g/L");
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
}
