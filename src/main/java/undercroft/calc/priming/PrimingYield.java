package undercroft.calc.priming;

import static undercroft.calc.priming.Stoichiometry.COMPLETENESS;
import static undercroft.calc.priming.Stoichiometry.FULL_COMPLETENESS;
import static undercroft.calc.priming.Stoichiometry.LOW_COMPLETENESS;

import java.util.List;
import undercroft.quantity.Carbonation;
import undercroft.quantity.Check;
import undercroft.quantity.Interval;

/**
 * What sugar that was put in gives: carbon dioxide added to the beer, g/L.
 *
 * @param potentialGramsPerLitre everything fermentable turned into ethanol and CO2 (× 1.00); its spread is that of the
 *     products' composition. For pressure checks take the high end
 * @param expectedGramsPerLitre what is to be expected: composition low, mid, high times completeness 0.90, 0.95, 1.00
 */
public record PrimingYield(Interval potentialGramsPerLitre, Interval expectedGramsPerLitre) {

    /**
     * Carbon dioxide from one or several sugars together.
     *
     * <p>The ends add up end to end (all low, all high), which is wider than independent spreads would be; composition and
     * completeness are not known to be independent, and the wide side is the careful one.
     *
     * @param additions what goes in; none gives zero
     * @param beerLitres beer it is mixed into, 0.05 to 100,000 L; the volume of the syrup is below the other errors
     * @throws undercroft.quantity.InvalidInput for a volume outside the range
     */
    public static PrimingYield of(List<SugarAddition> additions, double beerLitres) {
        Check.within("beerLitres", beerLitres, 0.05, 100_000, "L");
        double low = 0;
        double mid = 0;
        double high = 0;
        for (SugarAddition addition : additions) {
            Interval each = addition.sugar().yield().times(addition.grams() / beerLitres);
            low += each.low();
            mid += each.median();
            high += each.high();
        }
        return new PrimingYield(
                Interval.of(low, mid, high),
                Interval.of(low * LOW_COMPLETENESS, mid * COMPLETENESS, high * FULL_COMPLETENESS));
    }

    /** The expected carbon dioxide in volumes. */
    public Interval expectedVolumes() {
        return expectedGramsPerLitre.times(1 / Carbonation.GRAMS_PER_LITRE_OF_ONE_VOLUME);
    }

    /** Expected total with what the beer held before, g/L each; the ends add up end to end. */
    public Interval totalGramsPerLitre(Interval residualGramsPerLitre) {
        return Interval.of(
                residualGramsPerLitre.low() + expectedGramsPerLitre.low(),
                residualGramsPerLitre.median() + expectedGramsPerLitre.median(),
                residualGramsPerLitre.high() + expectedGramsPerLitre.high());
    }
}
