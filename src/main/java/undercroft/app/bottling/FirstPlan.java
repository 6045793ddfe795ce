package undercroft.app.bottling;

import java.util.List;
import undercroft.catalogue.Cleaner;
import undercroft.catalogue.Sanitiser;
import undercroft.cellar.Batch;
import undercroft.cellar.BottleStock;
import undercroft.cellar.FillingPlan;
import undercroft.cellar.Lot;

/** The plan for a batch that was planned without one, from what it tells. */
final class FirstPlan {
    private static final double USUAL_LOSS_LITRES = 1;

    private FirstPlan() {}

    static FillingPlan of(Batch batch) {
        double litres = batch.priming().beerLitres();
        double target = batch.priming()
                .targetVolumes()
                .orElse(batch.beer().kind().targetVolumes().median());
        String sugar = batch.priming().doses().isEmpty()
                ? "sucrose"
                : batch.priming().doses().get(0).sugarId();
        return new FillingPlan(
                new FillingPlan.Shares(Math.min(2_000, litres + USUAL_LOSS_LITRES), USUAL_LOSS_LITRES, 0),
                batch.lots().stream().map(FirstPlan::stock).toList(),
                FillingPlan.Wish.of(Math.min(7, target), sugar),
                FillingPlan.Wash.of(Sanitiser.ACID_ANIONIC, Cleaner.PERCARBONATE),
                List.of(),
                List.of());
    }

    private static BottleStock stock(Lot lot) {
        return new BottleStock(lot.bottleTypeId(), lot.colour(), lot.scuffed(), lot.count());
    }
}
