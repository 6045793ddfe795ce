package undercroft.outlook.lot;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import undercroft.calc.conditioning.ConditioningEnsemble;
import undercroft.calc.conditioning.ConditioningRun;
import undercroft.calc.conditioning.LotReadings;
import undercroft.calc.gas.ClosedBottle;
import undercroft.calc.learning.BatchKeys;
import undercroft.calc.learning.BatchSummary;
import undercroft.calc.learning.Lessons;
import undercroft.calc.learning.TraitLikelihood;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Lot;
import undercroft.cellar.Place;
import undercroft.cellar.Reading;
import undercroft.cellar.TemperatureSource;
import undercroft.outlook.climate.LotClimate;
import undercroft.outlook.climate.PlaceClimate;

/**
 * From a batch and the climates of its places to its outlook. It is remembered by what stands here, so that nothing else
 * may be asked.
 *
 * @param cellar with this batch, its places, bottles and sugars alone
 * @param earlier what earlier batches teach, the oldest first
 */
public record BatchCalculator(Cellar cellar, Map<String, PlaceClimate> places, Instant at, List<BatchSummary> earlier) {
    public BatchOutlook outlook(Batch batch) {
        if (batch.cappedAt().isEmpty() || batch.cappedAt().get().isAfter(at)) {
            return new BatchOutlook(batch, List.of(), Optional.empty());
        }
        BatchChemistry chemistry = BatchChemistry.of(cellar, batch);
        Map<String, ClosedBottle> bottles = bottles(batch, chemistry);
        Followed followed = followed(batch, chemistry, bottles);
        Beliefs beliefs = followed.beliefs();
        Evidence evidence = Evidence.of(batch, at, beliefs.clock());
        List<LotOutlook> lots = new ArrayList<>();
        followed.lots()
                .forEach((calculator, alone) -> lots.add(
                        calculator.outlook(chemistry, beliefs, alone, bottles.get(calculator.lotId()), evidence)));
        return new BatchOutlook(batch, lots, beliefs.learned());
    }

    /**
     * A batch by all that is believed of it.
     *
     * @param lots its lots in order, each with the course it has by this batch alone
     */
    private record Followed(Beliefs beliefs, Map<LotCalculator, ConditioningRun> lots) {}

    /** A batch that is ready by itself has nothing to learn of dates any more. */
    private Followed followed(Batch batch, BatchChemistry chemistry, Map<String, ClosedBottle> bottles) {
        Map<String, LotClimate> climates = climates(batch);
        List<LotReadings> readings = Readings.of(cellar, batch, at, climates, bottles);
        ConditioningEnsemble alone = Beliefs.alone(chemistry.refermentation(), readings);
        Map<LotCalculator, ConditioningRun> lots = new LinkedHashMap<>();
        boolean isReady = true;
        for (Lot lot : batch.lots()) {
            LotCalculator calculator = new LotCalculator(cellar, batch, lot, at, climates.get(lot.id()), places);
            ConditioningRun run = calculator.follow(alone);
            isReady &= run.readyEpochSeconds().high() <= at.getEpochSecond();
            lots.put(calculator, run);
        }
        return new Followed(
                isReady ? Beliefs.untaught(alone, readings) : Beliefs.of(alone, readings, lessons(batch)), lots);
    }

    /** The possible beers by all that was seen of a capped batch. */
    ConditioningEnsemble ensemble(Batch batch) {
        BatchChemistry chemistry = BatchChemistry.of(cellar, batch);
        return followed(batch, chemistry, bottles(batch, chemistry)).beliefs().clock();
    }

    /** What a capped batch teaches of later ones; empty where nothing was read of it, or nothing can be learned from it. */
    public Optional<BatchSummary> summary(Batch batch) {
        TraitLikelihood traits = Beliefs.alone(BatchChemistry.of(cellar, batch).refermentation(), readings(batch, at))
                .traits();
        int readings = (int) batch.readings().stream()
                .filter(reading -> !reading.at().isAfter(at))
                .count();
        return traits.isTelling() ? Optional.of(new BatchSummary(keys(batch), readings, traits)) : Optional.empty();
    }

    /** A yeast that reaches dextrins keeps a time of its own, which is not learned. */
    private Lessons lessons(Batch batch) {
        return new Lessons(batch.yeast().fermentsDextrins() ? List.of() : earlier, keys(batch));
    }

    private BatchKeys keys(Batch batch) {
        Place place = cellar.place(batch.lots().get(0).stays().get(0).placeId());
        return new BatchKeys(
                batch.yeast().strain().id(),
                batch.yeast().state().id(),
                batch.fillingMethod().id(),
                place.id() + (place.temperature() instanceof TemperatureSource.Logged ? "/logged" : ""),
                batch.readings().stream()
                        .filter(Reading.Gauge.class::isInstance)
                        .map(reading -> ((Reading.Gauge) reading).gauge())
                        .findFirst()
                        .orElse(""));
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
