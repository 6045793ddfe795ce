package undercroft.outlook;

import java.util.List;
import undercroft.calc.conditioning.Refermentation;
import undercroft.calc.gas.Atmosphere;
import undercroft.calc.gas.BeerFactor;
import undercroft.calc.priming.PrimingYield;
import undercroft.calc.priming.ResidualCarbonation;
import undercroft.calc.priming.SugarAddition;
import undercroft.calc.priming.UnfinishedFermentation;
import undercroft.cellar.Batch;
import undercroft.cellar.Beer;
import undercroft.cellar.Cellar;
import undercroft.quantity.Gravity;
import undercroft.quantity.Interval;

/** What goes into the bottles of a batch, as the calculations want it. */
record BatchChemistry(Refermentation refermentation, double atmosphereBar, List<SugarAddition> sugars) {
    /** CO2 from the dextrins that a diastatic yeast reaches in the end: 10 g/L of them (assumption, 5 to 20). */
    private static final double DEXTRIN_GRAMS_PER_LITRE = 4.7;

    private static final double USUAL_EXTRACT = 40;

    static BatchChemistry of(Cellar cellar, Batch batch) {
        Beer beer = batch.beer();
        double atmosphere = Atmosphere.barAt(cellar.settings().altitudeMetres());
        List<SugarAddition> sugars = batch.priming().doses().stream()
                .map(dose -> new SugarAddition(cellar.sugar(dose.sugarId()), dose.grams()))
                .toList();
        Interval primed = sugars.isEmpty()
                ? Interval.exactly(0)
                : PrimingYield.of(sugars, batch.priming().beerLitres()).expectedGramsPerLitre();
        Refermentation refermentation = new Refermentation(
                batch.yeast().strain(),
                batch.yeast().state(),
                beer.abvPercent(),
                ResidualCarbonation.gramsPerLitre(beer.warmestCelsius(), atmosphere),
                primed,
                UnfinishedFermentation.gramsPerLitre(beer.unfinishedPoints()).median(),
                batch.yeast().fermentsDextrins() ? DEXTRIN_GRAMS_PER_LITRE : 0,
                BeerFactor.of(beer.abvPercent(), extract(beer)));
        return new BatchChemistry(refermentation, atmosphere, sugars);
    }

    /** Real extract, g/L, from gravity and strength (attenuation relation 0.1808 OE + 0.8192 AE); 40 when unknown. */
    private static double extract(Beer beer) {
        if (beer.expectedFinalGravity().isEmpty()) {
            return USUAL_EXTRACT;
        }
        double apparent =
                Gravity.ofSpecific(beer.expectedFinalGravity().getAsDouble()).plato();
        double original = apparent + beer.abvPercent() * 1.93;
        return Math.max(0, 10 * (0.1808 * original + 0.8192 * apparent));
    }
}
