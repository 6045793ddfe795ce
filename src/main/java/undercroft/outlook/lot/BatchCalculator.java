package undercroft.outlook.lot;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import undercroft.calc.conditioning.ConditioningEnsemble;
import undercroft.calc.gas.ClosedBottle;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Lot;
import undercroft.outlook.climate.LotClimate;
import undercroft.outlook.climate.PlaceClimate;

/**
 * From a batch and the climates of its places to its outlook. It is remembered by what stands here, so that nothing else
 * may be asked.
 *
 * @param cellar with this batch, its places, bottles and sugars alone
 */
public record BatchCalculator(Cellar cellar, Map<String, PlaceClimate> places, Instant at) {
    private static final int MEMBERS = 512;

    public BatchOutlook outlook(Batch batch) {
        if (batch.cappedAt().isEmpty() || batch.cappedAt().get().isAfter(at)) {
            return new BatchOutlook(batch, List.of());
        }
        boolean gone = batch.leftAt(at) == 0;
        BatchChemistry chemistry = BatchChemistry.of(cellar, batch);
        Map<String, LotClimate> climates = new LinkedHashMap<>();
        Map<String, ClosedBottle> bottles = new LinkedHashMap<>();
        for (Lot lot : batch.lots()) {
            LotClimate climate = LotClimate.of(lot, batch.cappedAt().get(), at, places, gone);
            climates.put(lot.id(), climate);
            bottles.put(
                    lot.id(),
                    Readings.bottle(cellar.bottleType(lot.bottleTypeId()), lot, batch, chemistry.atmosphereBar()));
        }
        ConditioningEnsemble ensemble = ConditioningEnsemble.of(chemistry.refermentation(), MEMBERS)
                .updated(Readings.of(cellar, batch, at, climates, bottles));
        Evidence evidence = Evidence.of(batch, at, ensemble);
        List<LotOutlook> lots = new ArrayList<>();
        for (Lot lot : batch.lots()) {
            lots.add(new LotCalculator(cellar, batch, lot, at, climates.get(lot.id()), places)
                    .outlook(chemistry, ensemble, bottles.get(lot.id()), evidence));
        }
        return new BatchOutlook(batch, lots);
    }
}
