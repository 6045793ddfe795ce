package undercroft.calc.priming;

import static undercroft.calc.priming.Stoichiometry.COMPLETENESS;
import static undercroft.calc.priming.Stoichiometry.FULL_COMPLETENESS;
import static undercroft.calc.priming.Stoichiometry.LOW_COMPLETENESS;

import java.util.List;
import java.util.Objects;
import undercroft.catalogue.Sugar;
import undercroft.quantity.Carbonation;
import undercroft.quantity.Check;
import undercroft.quantity.Interval;

/**
 * The sugar that takes a beer to its target carbonation.
 *
 * @param grams mass of the product for the whole beer. The median is the amount to weigh; low and high are what a rich
 *     product fermented to the last gram, or a poor one fermented badly, would need
 * @param gramsPerLitre the median over the beer's volume
 * @param residualVolumes carbon dioxide already in the beer, best estimate
 * @param addedVolumes what the median mass is expected to add; zero when no sugar is needed
 * @param totalVolumes what the median mass really gives: composition, completeness and residual each at their low, mid and
 *     high
 * @param syrupWaterMillilitres water to dissolve the median mass in, rounded to 5 mL below 100 mL and to 10 mL above
 * @param notNeeded true when the beer already holds the target or more; then no sugar is to be added
 */
public record PrimingDose(
        Sugar sugar,
        double beerLitres,
        Interval grams,
        double gramsPerLitre,
        double residualVolumes,
        double addedVolumes,
        Interval totalVolumes,
        double syrupWaterMillilitres,
        boolean notNeeded) {
    private static final double SYRUP_MILLILITRES_PER_GRAM = 2.5;
    private static final double PER_GRAM_PER_LITRE = 1 / Carbonation.GRAMS_PER_LITRE_OF_ONE_VOLUME;

    /**
     * Sugar for a target: (target − residual) × volume ÷ (yield × 0.95).
     *
     * @param beerLitres beer to be primed, 0.05 to 100,000 L
     * @param warmestCelsius highest temperature since fermentation slowed, −1 to 45 °C
     * @param target total carbonation wanted, at most 7 volumes; at or below the residual no sugar is needed
     * @param atmosphereBar air pressure, 0.5 to 1.1 bar
     * @throws undercroft.quantity.InvalidInput for a number outside its range. Whether a bottle stands the target is not
     *     asked here
     *     <p>Sources: IUPAC atomic weights and the composition limits named with each sugar; syrup water 250 to 400 mL for
     *     120 g is common practice, no source.
     */
    public static PrimingDose forTarget(
            Sugar sugar, double beerLitres, double warmestCelsius, Carbonation target, double atmosphereBar) {
        Objects.requireNonNull(sugar, "sugar");
        Check.within("beerLitres", beerLitres, 0.05, 100_000, "L");
        Check.within("target", target.volumes(), 0, 7, "vol");
        Interval residual = ResidualCarbonation.gramsPerLitre(warmestCelsius, atmosphereBar);
        double missingGrams = (target.gramsPerLitre() - residual.median()) * beerLitres;
        if (missingGrams <= 0) {
            return new PrimingDose(
                    sugar,
                    beerLitres,
                    Interval.exactly(0),
                    0,
                    residual.median() * PER_GRAM_PER_LITRE,
                    0,
                    residual.times(PER_GRAM_PER_LITRE),
                    0,
                    true);
        }
        Interval grams = Interval.of(
                missingGrams / (sugar.yield().high() * FULL_COMPLETENESS),
                missingGrams / (sugar.yield().median() * COMPLETENESS),
                missingGrams / (sugar.yield().low() * LOW_COMPLETENESS));
        PrimingYield given = PrimingYield.of(List.of(new SugarAddition(sugar, grams.median())), beerLitres);
        return new PrimingDose(
                sugar,
                beerLitres,
                grams,
                grams.median() / beerLitres,
                residual.median() * PER_GRAM_PER_LITRE,
                given.expectedVolumes().median(),
                given.totalGramsPerLitre(residual).times(PER_GRAM_PER_LITRE),
                syrupWater(grams.median()),
                false);
    }

    private static double syrupWater(double grams) {
        double millilitres = grams * SYRUP_MILLILITRES_PER_GRAM;
        double step = millilitres < 100 ? 5 : 10;
        return Math.max(step, Math.rint(millilitres / step) * step);
    }
}
