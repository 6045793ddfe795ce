package undercroft.outlook.lot;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import undercroft.calc.conditioning.ConditioningEnsemble;
import undercroft.calc.conditioning.ReadingsVerdict.Agreement;
import undercroft.calc.gas.ClosedBottle;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Draw;
import undercroft.cellar.Lot;
import undercroft.outlook.Wording;
import undercroft.outlook.climate.LotClimate;
import undercroft.outlook.climate.PlaceClimate;

/** From a batch and the climates of its places to its outlook. */
public final class BatchCalculator {
    private static final int MEMBERS = 512;
    private static final long BURST_MEMORY_SECONDS = 30 * 86_400;

    private final Cellar cellar;
    private final Map<String, PlaceClimate> places;
    private final Instant at;
    private final Wording words;

    public BatchCalculator(Cellar cellar, Map<String, PlaceClimate> places, Instant at) {
        this.cellar = cellar;
        this.places = places;
        this.at = at;
        this.words = new Wording(cellar.zone(), cellar.settings().units(), at);
    }

    public BatchOutlook outlook(Batch batch) {
        Headlines headlines = new Headlines(words);
        if (batch.cappedAt().isEmpty() || batch.cappedAt().get().isAfter(at)) {
            return new BatchOutlook(
                    batch,
                    Stage.FILLING,
                    Alert.CLEAR,
                    headlines.notCappedYet(batch),
                    0,
                    List.of(),
                    Agreement.NO_READINGS,
                    List.of());
        }
        BatchChemistry chemistry = BatchChemistry.of(cellar, batch);
        Map<String, LotClimate> climates = new LinkedHashMap<>();
        Map<String, ClosedBottle> bottles = new LinkedHashMap<>();
        for (Lot lot : batch.lots()) {
            LotClimate climate = LotClimate.of(lot, batch.cappedAt().get(), at, places);
            climates.put(lot.id(), climate);
            bottles.put(
                    lot.id(),
                    Readings.bottle(cellar.bottleType(lot.bottleTypeId()), lot, batch, chemistry.atmosphereBar()));
        }
        ConditioningEnsemble ensemble = ConditioningEnsemble.of(chemistry.refermentation(), MEMBERS)
                .updated(Readings.of(batch, at, climates, bottles));
        List<LotOutlook> lots = new ArrayList<>();
        for (Lot lot : batch.lots()) {
            lots.add(new LotCalculator(cellar, batch, lot, at, climates.get(lot.id()), places)
                    .outlook(chemistry, ensemble, bottles.get(lot.id())));
        }
        BatchOutlook bare = new BatchOutlook(
                batch,
                Stage.READY,
                Alert.CLEAR,
                "",
                batch.leftAt(at),
                lots,
                ensemble.verdict().agreement(),
                List.of());
        LotOutlook main = bare.mainLot();
        Stage stage = bare.bottlesLeft() == 0 ? Stage.EMPTY : main.stage();
        String headline = stage == Stage.EMPTY
                ? headlines.gone(batch)
                : headlines.of(batch, stage, main, bare.tightestLot(), bare.bottlesLeft());
        return new BatchOutlook(
                batch,
                stage,
                alert(batch, stage, lots, main)
                        .or(stage == Stage.EMPTY ? Alert.CLEAR : Alerts.ofReadings(bare.readings())),
                headline,
                bare.bottlesLeft(),
                lots,
                bare.readings(),
                new Whys(words).of(batch, chemistry, bare));
    }

    private Alert alert(Batch batch, Stage stage, List<LotOutlook> lots, LotOutlook main) {
        if (stage == Stage.EMPTY) {
            return Alert.CLEAR;
        }
        Alert alert = Alerts.ofProgress(main.progress());
        for (LotOutlook lot : lots) {
            alert = alert.or(lot.alert());
        }
        if (stage == Stage.PAST_BEST_BEFORE) {
            alert = alert.or(Alert.WATCH);
        }
        return burstLately(batch) ? Alert.ACT : alert;
    }

    private boolean burstLately(Batch batch) {
        return batch.lots().stream().flatMap(lot -> lot.draws().stream()).anyMatch(draw -> isLateBurst(draw, at));
    }

    /** Whether a bottle burst so short ago that the others are still to be looked at. */
    public static boolean isLateBurst(Draw draw, Instant at) {
        return draw.fate() == Draw.Fate.BURST
                && !draw.at().isAfter(at)
                && draw.at().isAfter(at.minusSeconds(BURST_MEMORY_SECONDS));
    }
}
