package undercroft.outlook.lot;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import undercroft.calc.conditioning.GaugeFit;
import undercroft.calc.conditioning.LotReadings;
import undercroft.calc.gas.ClosedBottle;
import undercroft.catalogue.BottleType;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.FittedGauge;
import undercroft.cellar.Lot;
import undercroft.cellar.Reading;
import undercroft.outlook.climate.LotClimate;
import undercroft.outlook.climate.PlaceClimate;
import undercroft.quantity.InvalidInput;
import undercroft.series.Track;

/**
 * A gauge experiment with what it was made on and what it says.
 *
 * @param bottle the make as it is used
 * @param readings of its gauge, in order of time
 * @param taste of its bottle, once that was opened
 * @param bottles temperature of the beer, hourly from capping on, °C
 * @param coverage share of the time since capping with measured temperatures
 */
public record GaugeExperiment(
        Batch batch,
        Lot lot,
        BottleType bottle,
        List<Reading.Gauge> readings,
        Optional<Reading.Opened> taste,
        Track bottles,
        double coverage,
        GaugeFit fit) {
    public GaugeExperiment {
        readings = List.copyOf(readings);
    }

    /**
     * The experiment on a lot.
     *
     * @throws InvalidInput when no gauge was fitted, or it was never read
     */
    public static GaugeExperiment of(
            Cellar cellar, Map<String, PlaceClimate> places, Instant at, Batch batch, Optional<String> lotId) {
        Lot lot = batch.lots().stream()
                .filter(each -> lotId.map(each.id()::equals).orElse(true)
                        && each.gauge().isPresent())
                .findFirst()
                .orElseThrow(() -> new InvalidInput(batch.id(), "experiment.fault.none"));
        FittedGauge fitted = lot.gauge().orElseThrow();
        List<Reading.Gauge> readings = own(batch, Reading.Gauge.class)
                .filter(reading ->
                        fitted.isOwn(reading, lot.id()) && !reading.at().isAfter(at))
                .sorted(Comparator.comparing(Reading.Gauge::at))
                .toList();
        if (readings.isEmpty()) {
            throw new InvalidInput(batch.id(), "experiment.fault.no-readings", fitted.instrument());
        }
        Optional<Reading.Opened> taste = own(batch, Reading.Opened.class)
                .filter(opened -> opened.lotId().equals(lot.id())
                        && opened.origin().bottle().equals(fitted.instrument())
                        && fitted.opened().map(opened.at()::equals).orElse(false))
                .findFirst();
        BatchChemistry chemistry = BatchChemistry.of(cellar, batch);
        LotClimate climate = LotClimate.of(lot, batch.cappedAt().orElseThrow(), at, places, false);
        BottleType type = cellar.bottleType(lot.bottleTypeId());
        ClosedBottle bottle = Readings.bottle(type, lot, batch, chemistry.atmosphereBar());
        // Alone: whatever else was read on the batch, the experiment speaks for itself.
        Batch alone = batch.withLots(batch.lots().stream()
                        .map(each -> each.withDraws(List.of()))
                        .toList())
                .withReadings(List.copyOf(readings));
        LotReadings heard = Readings.of(cellar, alone, at, Map.of(lot.id(), climate), Map.of(lot.id(), bottle))
                .get(0);
        return new GaugeExperiment(
                batch,
                lot,
                LotCalculator.bottleAsUsed(type, lot),
                readings,
                taste,
                climate.bottles(),
                climate.coverage(),
                GaugeFit.of(chemistry.refermentation(), heard));
    }

    private static <T extends Reading> Stream<T> own(Batch batch, Class<T> kind) {
        return batch.readings().stream().filter(kind::isInstance).map(kind::cast);
    }
}
