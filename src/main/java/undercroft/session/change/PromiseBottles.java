package undercroft.session.change;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Serving;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.climate.PlaceOutlook;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.LotOutlook;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.Phrase;
import undercroft.quantity.Temperature;

/**
 * Bottles are promised for a time to come. One with the same id is changed.
 *
 * @param now bottles are promised for later than this
 * @param outlook what is known of batches and places; without it only the numbers are checked
 */
public record PromiseBottles(Serving serving, Instant now, Optional<CellarOutlook> outlook) implements CellarChange {
    /** An id that no serving of the cellar has. */
    public static String freeId(Cellar cellar, String batchId) {
        List<String> taken = cellar.servings().stream().map(Serving::id).toList();
        String id = batchId;
        for (int n = 2; taken.contains(id); n++) {
            id = batchId + "-" + n;
        }
        return id;
    }

    @Override
    public Cellar applyTo(Cellar cellar) {
        if (!serving.at().isAfter(now)) {
            throw new InvalidInput("at", "form.serving.past");
        }
        Batch batch = cellar.batch(serving.batchId());
        serving.placeId().ifPresent(cellar::place);
        checkBottles(cellar, batch);
        outlook.ifPresent(known -> checkReady(known, batch));
        outlook.ifPresent(known -> checkCold(known, batch));
        return cellar.withServing(serving);
    }

    private void checkBottles(Cellar cellar, Batch batch) {
        int left = batch.leftAt(now);
        if (serving.bottles() > left) {
            throw new InvalidInput("bottles", "form.serving.too-many", left);
        }
        int promised = cellar.servings().stream()
                .filter(each -> each.batchId().equals(batch.id()) && each.at().isAfter(now))
                .filter(each -> !each.id().equals(serving.id()))
                .mapToInt(Serving::bottles)
                .sum();
        if (serving.bottles() + promised > left) {
            throw new InvalidInput("bottles", "form.serving.promised", promised, left, Math.max(0, left - promised));
        }
    }

    private static void checkReady(CellarOutlook known, Batch batch) {
        Optional<LotOutlook> lot = known.batches().stream()
                .filter(each -> each.id().equals(batch.id()) && each.isCapped())
                .map(BatchOutlook::mainLot)
                .findFirst();
        if (lot.isPresent() && lot.get().ready().median().isEmpty()) {
            throw new InvalidInput(
                    "batch", "form.serving.never-ready", lot.get().place().name());
        }
    }

    private void checkCold(CellarOutlook known, Batch batch) {
        if (!serving.coolingMedium().isGoodForResting()) {
            return;
        }
        double wanted = serving.glassCelsius()
                .orElse(batch.beer().kind().servingCelsius().median());
        Optional<PlaceOutlook> chilled = serving.placeId()
                .flatMap(id -> known.places().stream()
                        .filter(each -> each.place().id().equals(id))
                        .findFirst());
        double cold = chilled.map(PlaceOutlook::nowCelsius)
                .orElseGet(() -> serving.placeId().isPresent()
                        ? Double.NEGATIVE_INFINITY
                        : serving.coolingMedium().usualCelsius());
        if (cold > wanted) {
            throw new InvalidInput(
                    "glassCelsius",
                    "form.serving.warm-place",
                    Temperature.ofCelsius(wanted),
                    chilled.<Object>map(place -> place.place().name())
                            .orElseGet(() -> Phrase.of("form.serving.elsewhere")),
                    Temperature.ofCelsius(cold));
        }
    }
}
