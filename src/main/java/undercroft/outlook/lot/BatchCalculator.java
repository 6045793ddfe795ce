package undercroft.outlook.lot;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import undercroft.calc.conditioning.ConditioningEnsemble;
import undercroft.calc.conditioning.LotReadings;
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
        BatchChemistry chemistry = BatchChemistry.of(cellar, batch);
        Map<String, LotClimate> climates = climates(batch);
        Map<String, ClosedBottle> bottles = bottles(batch, chemistry);
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

    /** The possible beers by all that was seen of a capped batch. */
    ConditioningEnsemble ensemble(Batch batch) {
        return ConditioningEnsemble.of(BatchChemistry.of(cellar, batch).refermentation(), MEMBERS)
                .updated(readings(batch, at));
    }

    /** What was seen of a capped batch up to an instant, by lot. */
    List<LotReadings> readings(Batch batch, Instant until) {
        return Readings.of(cellar, batch, until, climates(batch), bottles(batch, BatchChemistry.of(cellar, batch)));
    }

    private Map<String, LotClimate> climates(Batch batch) {
        boolean gone = batch.leftAt(at) == 0;
        Map<String, LotClimate> climates = new LinkedHashMap<>();
        for (Lot lot : batch.lots()) {
            climates.put(lot.id(), LotClimate.of(lot, batch.cappedAt().orElseThrow(), at, places, gone));
        }
        return climates;
    }

    private Map<String, ClosedBottle> bottles(Batch batch, BatchChemistry chemistry) {
        Map<String, ClosedBottle> bottles = new LinkedHashMap<>();
        for (Lot lot : batch.lots()) {
            bottles.put(
                    lot.id(),
                    Readings.bottle(cellar.bottleType(lot.bottleTypeId()), lot, batch, chemistry.atmosphereBar()));
        }
        return bottles;
    }
}
