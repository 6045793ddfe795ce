package undercroft.outlook.lot;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import undercroft.calc.conditioning.ConditioningEnsemble;
import undercroft.calc.conditioning.LotReadings;
import undercroft.calc.conditioning.ReadingForecast;
import undercroft.calc.learning.BatchSummary;
import undercroft.catalogue.BottleFeel;
import undercroft.catalogue.PerceivedCarbonation;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Draw;
import undercroft.cellar.Lot;
import undercroft.cellar.Reading;
import undercroft.outlook.climate.PlaceClimate;
import undercroft.quantity.Interval;

/**
 * The outlook of a batch told again with the first of its readings and bursts, then the first two, and so on. Asked for when
 * somebody looks at it; a batch with {@value #MOST_STEPS} readings takes as long as as many batches.
 *
 * @param cellar with this batch, its places, bottles and sugars alone
 * @param earlier what earlier batches teach, the oldest first
 */
public record EvidenceCalculator(
        Cellar cellar, Map<String, PlaceClimate> places, Instant at, List<BatchSummary> earlier) {
    /** Of more moments than these only the newest are told one by one. */
    private static final int MOST_STEPS = 12;

    /** Empty while the batch is not capped. */
    public EvidenceCourse course(Batch batch) {
        BatchCalculator calculator = new BatchCalculator(cellar, places, at, earlier);
        BatchOutlook now = calculator.outlook(batch);
        String lotId = now.limitingLot().lot().id();
        List<Instant> moments = moments(batch);
        int first = Math.max(0, moments.size() - MOST_STEPS);
        Instant known = first == 0 ? Instant.MIN : moments.get(first - 1);
        List<EvidenceCourse.Step> steps = new ArrayList<>();
        for (Instant moment : moments.subList(first, moments.size())) {
            Batch after = until(batch, moment);
            LotOutlook told = lot(calculator.outlook(after), lotId);
            steps.add(new EvidenceCourse.Step(
                    moment,
                    foretold(calculator, until(batch, known), batch, moment),
                    burst(batch, moment),
                    told.pressure().heatLimitCelsius(),
                    told.carbonation().atEnd()));
            known = moment;
        }
        return new EvidenceCourse(
                lot(calculator.outlook(unseen(batch)), lotId), lot(now, lotId), steps, next(calculator, batch, lotId));
    }

    private static LotOutlook lot(BatchOutlook batch, String lotId) {
        return batch.lots().stream()
                .filter(each -> each.lot().id().equals(lotId))
                .findFirst()
                .orElseThrow();
    }

    private List<Instant> moments(Batch batch) {
        return Stream.concat(
                        batch.readings().stream().map(Reading::at),
                        batch.lots().stream()
                                .flatMap(lot -> lot.draws().stream())
                                .filter(draw -> draw.fate() == Draw.Fate.BURST)
                                .map(Draw::at))
                .filter(seen -> !seen.isAfter(at))
                .distinct()
                .sorted()
                .toList();
    }

    private static int burst(Batch batch, Instant moment) {
        return batch.lots().stream()
                .flatMap(lot -> lot.draws().stream())
                .filter(draw -> draw.fate() == Draw.Fate.BURST && draw.at().equals(moment))
                .mapToInt(Draw::count)
                .sum();
    }

    private static Batch unseen(Batch batch) {
        return until(batch, Instant.MIN);
    }

    /** The batch with nothing that was read of it, or burst, after a moment; the bottles that burst later are broken ones. */
    private static Batch until(Batch batch, Instant moment) {
        Batch known = batch.withReadings(batch.readings().stream()
                .filter(reading -> !reading.at().isAfter(moment))
                .toList());
        return known.withLots(batch.lots().stream()
                .map(lot -> new Lot(
                        lot.id(),
                        lot.bottleTypeId(),
                        lot.colour(),
                        lot.count(),
                        lot.fillMillilitres(),
                        lot.scuffed(),
                        lot.stays(),
                        lot.draws().stream()
                                .map(draw -> draw.fate() == Draw.Fate.BURST
                                                && draw.at().isAfter(moment)
                                        ? new Draw(draw.at(), draw.count(), Draw.Fate.BROKEN, draw.note())
                                        : draw)
                                .toList()))
                .toList());
    }

    private List<EvidenceCourse.Foretold> foretold(
            BatchCalculator calculator, Batch known, Batch batch, Instant moment) {
        ConditioningEnsemble ensemble = calculator.ensemble(known);
        List<EvidenceCourse.Foretold> all = new ArrayList<>();
        for (Reading reading : batch.readings()) {
            if (reading.at().equals(moment)) {
                calculator.readings(unseen(batch).withReadings(List.of(reading)), moment).stream()
                        .map(one -> ReadingForecast.of(ensemble, one).get(0))
                        .map(interval -> new EvidenceCourse.Foretold(reading, asRead(batch, reading, interval)))
                        .forEach(all::add);
            }
        }
        return all;
    }

    /** Points of change as the specific gravity that a hydrometer would show. */
    private static Interval asRead(Batch batch, Reading reading, Interval foretold) {
        return reading instanceof Reading.Density
                ? foretold.times(0.001).plus(batch.beer().gravityAtBottling().orElseThrow())
                : foretold;
    }

    private List<EvidenceCourse.Sharpening> next(BatchCalculator calculator, Batch batch, String lotId) {
        if (batch.lot(lotId).leftAt(at) == 0) {
            return List.of();
        }
        ConditioningEnsemble ensemble = calculator.ensemble(batch);
        double now = ReadingForecast.volumesWide(ensemble);
        List<EvidenceCourse.Sharpening> all = new ArrayList<>();
        for (EvidenceCourse.Kind kind : EvidenceCourse.Kind.values()) {
            Batch supposed = unseen(batch).withReadings(List.of(supposed(kind, lotId)));
            for (LotReadings one : calculator.readings(supposed, at)) {
                all.add(new EvidenceCourse.Sharpening(kind, now, ReadingForecast.volumesWideAfter(ensemble, one)));
            }
        }
        all.sort(Comparator.comparingDouble(EvidenceCourse.Sharpening::volumesWideAfter));
        return all;
    }

    /** A reading of a kind today; what it shows is not looked at. */
    private Reading supposed(EvidenceCourse.Kind kind, String lotId) {
        return switch (kind) {
            case GAUGE -> new Reading.Gauge(at, lotId, "gauge", 1);
            case GRAVITY -> new Reading.Density(at, 1.010);
            case OPENED -> new Reading.Opened(at, lotId, PerceivedCarbonation.SOFT);
            case SQUEEZE -> new Reading.Squeeze(at, lotId, BottleFeel.FIRM);
        };
    }
}
