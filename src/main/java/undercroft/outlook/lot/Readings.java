package undercroft.outlook.lot;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import undercroft.calc.conditioning.GlassStrength;
import undercroft.calc.conditioning.LotReadings;
import undercroft.calc.conditioning.Observation;
import undercroft.calc.conditioning.PressureModel;
import undercroft.calc.gas.ClosedBottle;
import undercroft.calc.gas.PressureLimits;
import undercroft.calc.priming.Dosing;
import undercroft.catalogue.BottleType;
import undercroft.cellar.Batch;
import undercroft.cellar.BurstCause;
import undercroft.cellar.Cellar;
import undercroft.cellar.Draw;
import undercroft.cellar.Lot;
import undercroft.cellar.Reading;
import undercroft.outlook.climate.LotClimate;
import undercroft.series.Track;

/** A batch's readings and bursts up to an instant, as the update wants them: by lot, with the lot's climate and bottle. */
final class Readings {
    private static final double WARMEST_CAPPING_CELSIUS = 40;
    private static final double MOST_GAUGE_BAR = 15;

    private Readings() {}

    static List<LotReadings> of(
            Cellar cellar,
            Batch batch,
            Instant at,
            Map<String, LotClimate> climates,
            Map<String, ClosedBottle> bottles) {
        Map<String, List<Observation>> byLot = new LinkedHashMap<>();
        Numbers numbers = new Numbers();
        for (Reading reading : batch.readings()) {
            if (!reading.at().isAfter(at)) {
                add(batch, reading, climates, numbers, byLot);
            }
        }
        for (Lot lot : batch.lots()) {
            bursts(lot, at, byLot);
        }
        List<LotReadings> lots = new ArrayList<>();
        long capped = batch.cappedAt().orElseThrow().getEpochSecond();
        double variation = (batch.priming().perBottle() ? Dosing.SPOON : Dosing.SYRUP).coefficientOfVariation();
        byLot.forEach((lotId, observations) -> {
            Lot lot = batch.lot(lotId);
            BottleType type = LotCalculator.bottleAsUsed(cellar.bottleType(lot.bottleTypeId()), lot);
            lots.add(new LotReadings(
                    observations,
                    climates.get(lotId).bottles(),
                    capped,
                    model(bottles.get(lotId)),
                    type.isGlass()
                            ? Optional.of(
                                    new GlassStrength(PressureLimits.of(type).minuteStrengthBar(), variation))
                            : Optional.empty()));
        });
        return lots;
    }

    /** What bottles, gauges and people are called, as numbers; the last number stands for all that come after. */
    private record Numbers(
            Map<String, Integer> bottles,
            Map<String, Integer> instruments,
            Map<String, Integer> tasters,
            Map<String, Integer> hands) {
        Numbers() {
            this(new LinkedHashMap<>(), new LinkedHashMap<>(), new LinkedHashMap<>(), new LinkedHashMap<>());
        }

        static int of(Map<String, Integer> known, String name) {
            return Math.min(Observation.MOST_ALIKE - 1, known.computeIfAbsent(name, fresh -> known.size()));
        }
    }

    private static void add(
            Batch batch,
            Reading reading,
            Map<String, LotClimate> climates,
            Numbers numbers,
            Map<String, List<Observation>> byLot) {
        long when = reading.at().getEpochSecond();
        if (reading instanceof Reading.Gauge gauge) {
            Track track = climates.get(gauge.lotId()).bottles();
            add(
                    byLot,
                    gauge.lotId(),
                    new Observation.GaugePressure(
                            when,
                            Math.min(MOST_GAUGE_BAR, gauge.gaugeBar()),
                            Numbers.of(numbers.bottles(), gauge.lotId() + "/" + gauge.bottle()),
                            Numbers.of(numbers.instruments(), gauge.gauge()),
                            Math.max(-5, Math.min(60, track.valueAt(track.indexAt(when))))));
        } else if (reading instanceof Reading.Squeeze squeeze) {
            int hand = Numbers.of(numbers.hands(), squeeze.origin().taster());
            add(byLot, squeeze.lotId(), new Observation.Squeeze(when, squeeze.feel(), hand));
        } else if (reading instanceof Reading.Opened opened) {
            int taster = Numbers.of(numbers.tasters(), opened.origin().taster());
            add(byLot, opened.lotId(), new Observation.Opened(when, opened.perceivedCarbonation(), taster));
        } else if (reading instanceof Reading.Density density) {
            batch.beer()
                    .gravityAtBottling()
                    .ifPresent(start -> add(
                            byLot,
                            batch.lots().get(0).id(),
                            new Observation.ApparentGravity(
                                    when,
                                    density.specificGravity(),
                                    start,
                                    batch.beer().gravityIncludesPriming())));
        }
    }

    /** Bottles of a lot that burst, those of one moment together; they never expire. */
    private static void bursts(Lot lot, Instant at, Map<String, List<Observation>> byLot) {
        for (Draw draw : lot.draws()) {
            if (draw.fate() != Draw.Fate.BURST || draw.at().isAfter(at)) {
                continue;
            }
            int present = lot.leftAt(draw.at().minusNanos(1));
            add(
                    byLot,
                    lot.id(),
                    new Observation.Bursts(
                            draw.at().getEpochSecond(),
                            draw.count(),
                            Math.max(draw.count(), present),
                            flaw(draw.cause().orElse(BurstCause.UNKNOWN))));
        }
    }

    private static Observation.Flaw flaw(BurstCause cause) {
        return switch (cause) {
            case CHIPPED -> Observation.Flaw.CHIPPED;
            case OVER_PRIMED -> Observation.Flaw.OVER_PRIMED;
            case UNFINISHED -> Observation.Flaw.UNFINISHED;
            case UNKNOWN -> Observation.Flaw.UNKNOWN;
        };
    }

    private static void add(Map<String, List<Observation>> byLot, String lotId, Observation observation) {
        byLot.computeIfAbsent(lotId, id -> new ArrayList<>()).add(observation);
    }

    private static PressureModel model(ClosedBottle bottle) {
        return (celsius, grams, factor, amount, trapped) -> bottle.gaugeBar(
                Math.max(-5, Math.min(60, celsius)),
                Math.max(0, Math.min(ClosedBottle.MOST_GRAMS_PER_LITRE, grams)),
                Math.max(0.5, Math.min(1.1, factor)),
                amount,
                trapped,
                Double.NaN);
    }

    /** A lot's bottle as it was capped, by the beer's own temperature, told or usual: the room's says nothing about it. */
    static ClosedBottle bottle(BottleType type, Lot lot, Batch batch, double atmosphereBar) {
        double capped = Math.min(
                WARMEST_CAPPING_CELSIUS,
                batch.packaging().beerCelsiusAtCapping().orElse(ClosedBottle.USUAL_CAPPING_CELSIUS));
        return ClosedBottle.of(
                LotCalculator.bottleAsUsed(type, lot), batch.beer().abvPercent(), capped, atmosphereBar);
    }
}
