package undercroft.outlook.lot;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import undercroft.calc.conditioning.LotReadings;
import undercroft.calc.conditioning.Observation;
import undercroft.calc.conditioning.PressureModel;
import undercroft.calc.gas.ClosedBottle;
import undercroft.catalogue.BottleType;
import undercroft.cellar.Batch;
import undercroft.cellar.Lot;
import undercroft.cellar.Reading;
import undercroft.outlook.climate.LotClimate;
import undercroft.series.Track;

/** A batch's readings up to an instant, as the update wants them: by lot, with the lot's climate and bottle. */
final class Readings {
    private static final double WARMEST_CAPPING_CELSIUS = 40;

    private Readings() {}

    static List<LotReadings> of(
            Batch batch, Instant at, Map<String, LotClimate> climates, Map<String, ClosedBottle> bottles) {
        Map<String, List<Observation>> byLot = new LinkedHashMap<>();
        Map<String, Integer> gauges = new LinkedHashMap<>();
        String firstLot = batch.lots().get(0).id();
        for (Reading reading : batch.readings()) {
            if (reading.at().isAfter(at)) {
                continue;
            }
            long when = reading.at().getEpochSecond();
            if (reading instanceof Reading.Gauge gauge) {
                Track track = climates.get(gauge.lotId()).bottles();
                int number = gauges.computeIfAbsent(gauge.gauge(), name -> gauges.size());
                add(
                        byLot,
                        gauge.lotId(),
                        new Observation.GaugePressure(
                                when,
                                gauge.gaugeBar(),
                                Math.min(number, Observation.MOST_GAUGE_BOTTLES - 1),
                                track.valueAt(track.indexAt(when))));
            } else if (reading instanceof Reading.Squeeze squeeze) {
                add(byLot, squeeze.lotId(), new Observation.Squeeze(when, squeeze.feel()));
            } else if (reading instanceof Reading.Opened opened) {
                add(byLot, opened.lotId(), new Observation.Opened(when, opened.perceivedCarbonation()));
            } else if (reading instanceof Reading.Density density) {
                OptionalDouble before = batch.beer().gravityAtBottling();
                before.ifPresent(start -> add(
                        byLot,
                        firstLot,
                        new Observation.ApparentGravity(when, density.specificGravity(), start, false)));
            }
        }
        List<LotReadings> lots = new ArrayList<>();
        long capped = batch.cappedAt().orElseThrow().getEpochSecond();
        byLot.forEach((lotId, observations) -> lots.add(
                new LotReadings(observations, climates.get(lotId).bottles(), capped, model(bottles.get(lotId)))));
        return lots;
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
