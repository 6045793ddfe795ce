package undercroft.outlook.lot;

import java.util.List;
import undercroft.calc.conditioning.Refermentation;
import undercroft.calc.extract.DoseSpread;
import undercroft.calc.extract.HiddenExtract;
import undercroft.calc.extract.Leftover;
import undercroft.calc.gas.Atmosphere;
import undercroft.calc.gas.BeerFactor;
import undercroft.calc.gas.RealExtract;
import undercroft.calc.gas.TrappedAir;
import undercroft.calc.priming.PrimingYield;
import undercroft.calc.priming.ResidualCarbonation;
import undercroft.calc.priming.SugarAddition;
import undercroft.cellar.Batch;
import undercroft.cellar.Beer;
import undercroft.cellar.Cellar;
import undercroft.quantity.Gravity;
import undercroft.quantity.Interval;

/** What goes into the bottles of a batch, as the calculations want it. */
record BatchChemistry(
        Refermentation refermentation,
        double atmosphereBar,
        double realExtractGramsPerLitre,
        List<SugarAddition> sugars) {
    private static final double FINISHED_POINTS = 1;

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
                DoseSpread.USUAL,
                Leftover.ofPoints(Math.min(60, beer.unfinishedPoints()), false),
                batch.yeast().fermentsDextrins() ? HiddenExtract.DIASTATIC : HiddenExtract.of(known(beer)),
                TrappedAir.of(batch.fillingMethod()),
                BeerFactor.of(beer.abvPercent(), extract(beer)));
        return new BatchChemistry(refermentation, atmosphere, extract(beer), sugars);
    }

    private static HiddenExtract.Known known(Beer beer) {
        boolean read = beer.gravityAtBottling().isPresent()
                && beer.expectedFinalGravity().isPresent();
        return read && beer.unfinishedPoints() <= FINISHED_POINTS
                ? HiddenExtract.Known.AT_END
                : HiddenExtract.Known.UNREAD;
    }

    private static double extract(Beer beer) {
        if (beer.expectedFinalGravity().isEmpty()) {
            return RealExtract.USUAL_GRAMS_PER_LITRE;
        }
        return RealExtract.gramsPerLitre(
                Gravity.ofSpecific(beer.expectedFinalGravity().getAsDouble()), beer.abvPercent());
    }
}
