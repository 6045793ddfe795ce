package undercroft.outlook.serving;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import undercroft.calc.chill.ChillPlan;
import undercroft.calc.chill.ChillTrajectory;
import undercroft.calc.chill.QuickChill;
import undercroft.catalogue.CoolingMedium;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Serving;
import undercroft.outlook.climate.PlaceClimate;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.LotOutlook;
import undercroft.series.TimeSeries;

/** When the bottles of each serving that is still to come go into the cold. */
public final class ServingPlans {
    private static final double ALREADY_COLD_KELVIN = 1.5;
    /** Below this the chance to find it ready is told as a concern (assumption). */
    private static final double CERTAIN_ENOUGH = 0.9;

    private static final long SHOWN_BEFORE_SECONDS = 6 * 3600;
    /** A place colder than this is a freezer of its own, whose log is believed. */
    private static final double FREEZER_AT_MOST_CELSIUS = -5;

    private final Cellar cellar;
    private final Map<String, PlaceClimate> places;
    private final Instant at;

    public ServingPlans(Cellar cellar, Map<String, PlaceClimate> places, Instant at) {
        this.cellar = cellar;
        this.places = places;
        this.at = at;
    }

    public List<ServingPlan> of(List<BatchOutlook> batches) {
        List<ServingPlan> plans = new ArrayList<>();
        for (Serving serving : cellar.servings()) {
            if (serving.at().isAfter(at)) {
                batches.stream()
                        .filter(batch -> batch.id().equals(serving.batchId()) && batch.isCapped())
                        .findFirst()
                        .ifPresent(batch -> plans.add(plan(serving, batch)));
            }
        }
        plans.sort(Comparator.comparing(plan -> plan.serving().at()));
        return plans;
    }

    private ServingPlan plan(Serving serving, BatchOutlook batch) {
        LotOutlook lot = lotFor(serving, batch);
        Batch beer = batch.batch();
        double cold = coldCelsius(serving);
        double wanted = serving.glassCelsius()
                .orElse(beer.beer().kind().servingCelsius().median());
        boolean there = serving.coolingMedium().isGoodForResting()
                && serving.isChilledIn(lot.place().id());
        double from = there
                ? Math.min(lot.temperature().nowCelsius(), cold + ALREADY_COLD_KELVIN)
                : lot.temperature().nowCelsius();
        ChillPlan plan = ChillPlan.backwards(
                serving.at().getEpochSecond(),
                lot.pressure().bottle(),
                serving.bottles(),
                from,
                cold,
                wanted,
                beer.yeast().flocculation(),
                serving.coolingMedium());
        Instant exact = Instant.ofEpochSecond(plan.putInEpochSecond());
        Optional<Instant> chillFrom = there
                ? Optional.of(lot.lot().stayAt(at).from())
                : exact.isBefore(at) ? Optional.empty() : Optional.of(putIn(plan, exact, serving));
        Instant stops = there ? serving.at() : chillFrom.orElse(at);
        double probability = lot.ready().probabilityBy(stops);
        Chilling chilling = chilling(serving, lot, plan, there, from, cold, wanted, chillFrom);
        Instant takeOut = Instant.ofEpochSecond(plan.takeOutEpochSecond());
        return new ServingPlan(
                serving,
                there,
                chillFrom,
                takeOut,
                probability,
                promised(serving.batchId()),
                chilling,
                QuickChill.of(
                        serving.at().getEpochSecond(),
                        chilling.bottle(),
                        serving.bottles(),
                        lot.temperature().nowCelsius(),
                        chilling.wantedCelsius()),
                concerns(serving, batch, lot, plan, chillFrom, probability));
    }

    private List<Concern> concerns(
            Serving serving,
            BatchOutlook batch,
            LotOutlook lot,
            ChillPlan plan,
            Optional<Instant> chillFrom,
            double probability) {
        List<Concern> concerns = new ArrayList<>();
        if (lot.handling().isHeldBack()) {
            concerns.add(new Concern(Concern.Kind.PRESSURE, Alert.ACT));
        }
        if (lot.ready().median().isEmpty()) {
            concerns.add(new Concern(Concern.Kind.NEVER_READY, Alert.WATCH));
        } else if (probability < CERTAIN_ENOUGH) {
            concerns.add(new Concern(Concern.Kind.MAY_NOT_BE_READY, Alert.WATCH));
        }
        if (promised(batch.id()) > batch.bottlesLeft()) {
            concerns.add(new Concern(Concern.Kind.SAME_BOTTLES, Alert.ACT));
        }
        if (chillFrom.isEmpty()) {
            concerns.add(new Concern(Concern.Kind.TOO_LATE, Alert.WATCH));
        } else if (!plan.coldEnough()) {
            concerns.add(new Concern(Concern.Kind.TOO_WARM_A_PLACE, Alert.WATCH));
        }
        if (serving.coolingMedium() == CoolingMedium.FREEZER) {
            concerns.add(
                    plan.freezerRisk()
                            ? new Concern(Concern.Kind.TOO_LONG_IN_FREEZER, Alert.ACT)
                            : new Concern(Concern.Kind.FREEZER_ALARM, Alert.WATCH));
        }
        return concerns;
    }

    private int promised(String batchId) {
        return cellar.servings().stream()
                .filter(each -> each.batchId().equals(batchId) && each.at().isAfter(at))
                .mapToInt(Serving::bottles)
                .sum();
    }

    /** By day for what stands for hours; to the minute for what is only dipped. Never before now. */
    private Instant putIn(ChillPlan plan, Instant exact, Serving serving) {
        Instant latest = serving.coolingMedium().isGoodForResting() ? plan.putInWhileAwake(cellar.zone()) : exact;
        return latest.isBefore(at) ? at : latest;
    }

    private Chilling chilling(
            Serving serving,
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
        TimeSeries trajectory = ChillTrajectory.of(
                plan,
                lot.pressure().bottle(),
                serving.coolingMedium(),
                serving.bottles(),
                putIn,
                there ? cold : from,
                cold);
        return new Chilling(
                lot.lot().id(),
                lot.pressure().bottle(),
                serving.bottles(),
                serving.coolingMedium(),
                from,
                cold,
                wanted,
                plan.bottleCelsius(),
                there ? 0 : plan.coolingMinutes(),
                plan.clearingHours(),
                plan.warmingMinutes(),
                Instant.ofEpochSecond(there ? putIn : putIn + Math.round(plan.coolingMinutes() * 60)),
                trajectory);
    }

    /** The lot in the fridge already, if it is enough; otherwise the biggest one. */
    private static LotOutlook lotFor(Serving serving, BatchOutlook batch) {
        return batch.lots().stream()
                .filter(lot -> serving.isChilledIn(lot.place().id()) && lot.left() >= serving.bottles())
                .findFirst()
                .orElseGet(batch::mainLot);
    }

    /** A fridge or room as its log tells; a bucket or a freezer as such things are, whatever place it stands in. */
    private double coldCelsius(Serving serving) {
        if (serving.placeId().isEmpty()) {
            return serving.coolingMedium().usualCelsius();
        }
        double place = meanAround(serving);
        CoolingMedium coolingMedium = serving.coolingMedium();
        if (coolingMedium.isGoodForResting()
                || (coolingMedium == CoolingMedium.FREEZER && place < FREEZER_AT_MOST_CELSIUS)) {
            return place;
        }
        return coolingMedium.usualCelsius();
    }

    private double meanAround(Serving serving) {
        PlaceClimate place = places.get(serving.placeId().orElseThrow());
        int last = place.bottles().indexAt(serving.at().getEpochSecond());
        int first = Math.max(0, last - 24);
        double sum = 0;
        for (int i = first; i <= last; i++) {
            sum += place.bottles().valueAt(i);
        }
        return sum / (last - first + 1);
    }
}
