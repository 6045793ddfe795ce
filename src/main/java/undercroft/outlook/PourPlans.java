package undercroft.outlook;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import undercroft.calc.chill.ChillCourse;
import undercroft.calc.chill.ChillPlan;
import undercroft.catalogue.Surroundings;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Pour;
import undercroft.series.TimeSeries;

/** When the bottles of each pour that is still to come go into the cold. */
final class PourPlans {
    private static final double ALREADY_COLD_KELVIN = 1.5;
    private static final long SHOWN_BEFORE_SECONDS = 6 * 3600;
    /** A place colder than this is a freezer of its own, whose log is believed. */
    private static final double FREEZER_AT_MOST_CELSIUS = -5;

    private final Cellar cellar;
    private final Map<String, PlaceClimate> places;
    private final Instant at;
    private final Wording words;

    PourPlans(Cellar cellar, Map<String, PlaceClimate> places, Instant at, Wording words) {
        this.cellar = cellar;
        this.places = places;
        this.at = at;
        this.words = words;
    }

    List<PourPlan> of(List<BatchOutlook> batches) {
        List<PourPlan> plans = new ArrayList<>();
        for (Pour pour : cellar.pours()) {
            if (pour.at().isAfter(at)) {
                batches.stream()
                        .filter(batch -> batch.id().equals(pour.batchId()) && batch.isCapped())
                        .findFirst()
                        .ifPresent(batch -> plans.add(plan(pour, batch)));
            }
        }
        plans.sort(Comparator.comparing(plan -> plan.pour().at()));
        return plans;
    }

    private PourPlan plan(Pour pour, BatchOutlook batch) {
        LotOutlook lot = lotFor(pour, batch);
        Batch beer = batch.batch();
        double cold = coldCelsius(pour);
        double wanted =
                pour.glassCelsius().orElse(beer.beer().kind().servingCelsius().median());
        boolean there =
                pour.surroundings().isGoodForResting() && lot.place().id().equals(pour.placeId());
        double from = there
                ? Math.min(lot.temperature().nowCelsius(), cold + ALREADY_COLD_KELVIN)
                : lot.temperature().nowCelsius();
        ChillPlan plan = ChillPlan.backwards(
                pour.at().getEpochSecond(),
                lot.pressure().bottle(),
                pour.bottles(),
                from,
                cold,
                wanted,
                beer.yeast().settling(),
                pour.surroundings());
        Instant exact = Instant.ofEpochSecond(plan.putInEpochSecond());
        Optional<Instant> chillFrom = there
                ? Optional.of(lot.lot().stayAt(at).from())
                : exact.isBefore(at) ? Optional.empty() : Optional.of(putIn(plan, exact, pour));
        Instant stops = there ? pour.at() : chillFrom.orElse(at);
        double probability = lot.ready().probabilityBy(stops);
        Chilling chilling = chilling(pour, lot, plan, there, from, cold, wanted, chillFrom);
        Instant takeOut = Instant.ofEpochSecond(plan.takeOutEpochSecond());
        return new PourPlan(
                pour,
                chillFrom,
                takeOut,
                probability >= 0.5,
                new PourReasons(words, cellar, pour, lot, plan, chilling, takeOut)
                        .sentence(there, chillFrom, probability),
                probability,
                Optional.of(chilling),
                new PourConcerns(words, cellar, at, pour, batch, lot, plan, chilling).all(chillFrom, probability));
    }

    /** By day for what stands for hours; to the minute for what is only dipped. Never before now. */
    private Instant putIn(ChillPlan plan, Instant exact, Pour pour) {
        Instant latest = pour.surroundings().isGoodForResting() ? plan.putInWhileAwake(words.zone()) : exact;
        return latest.isBefore(at) ? at : latest;
    }

    private Chilling chilling(
            Pour pour,
            LotOutlook lot,
            ChillPlan plan,
            boolean there,
            double from,
            double cold,
            double wanted,
            Optional<Instant> chillFrom) {
        long putIn = there
                ? Math.max(at.getEpochSecond(), plan.takeOutEpochSecond() - SHOWN_BEFORE_SECONDS)
                : chillFrom.orElse(at).getEpochSecond();
        TimeSeries course = ChillCourse.of(
                plan, lot.pressure().bottle(), pour.surroundings(), pour.bottles(), putIn, there ? cold : from, cold);
        return new Chilling(
                lot.lot().id(),
                lot.pressure().bottle(),
                pour.bottles(),
                pour.surroundings(),
                from,
                cold,
                wanted,
                there ? 0 : plan.coolingMinutes(),
                plan.clearingHours(),
                Instant.ofEpochSecond(there ? putIn : putIn + Math.round(plan.coolingMinutes() * 60)),
                course);
    }

    /** The lot in the fridge already, if it is enough; otherwise the biggest one. */
    private static LotOutlook lotFor(Pour pour, BatchOutlook batch) {
        return batch.lots().stream()
                .filter(lot -> lot.place().id().equals(pour.placeId()) && lot.left() >= pour.bottles())
                .findFirst()
                .orElseGet(batch::mainLot);
    }

    /** A fridge or room as its log tells; a bucket or a freezer as such things are, whatever place it stands in. */
    private double coldCelsius(Pour pour) {
        double place = meanAround(pour);
        Surroundings surroundings = pour.surroundings();
        if (surroundings.isGoodForResting()
                || (surroundings == Surroundings.FREEZER && place < FREEZER_AT_MOST_CELSIUS)) {
            return place;
        }
        return surroundings.usualCelsius();
    }

    private double meanAround(Pour pour) {
        PlaceClimate place = places.get(pour.placeId());
        int last = place.bottles().indexAt(pour.at().getEpochSecond());
        int first = Math.max(0, last - 24);
        double sum = 0;
        for (int i = first; i <= last; i++) {
            sum += place.bottles().valueAt(i);
        }
        return sum / (last - first + 1);
    }
}
