package undercroft.outlook;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import undercroft.calc.chill.ChillPlan;
import undercroft.catalogue.Surroundings;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Pour;

/** When the bottles of each pour that is still to come go into the cold. */
final class PourPlans {
    private static final double ALREADY_COLD_KELVIN = 1.5;

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
        double fridge = meanAround(pour);
        double wanted =
                pour.glassCelsius().orElse(beer.beer().kind().servingCelsius().median());
        boolean there = lot.place().id().equals(pour.placeId());
        double from = there
                ? Math.min(lot.temperature().nowCelsius(), fridge + ALREADY_COLD_KELVIN)
                : lot.temperature().nowCelsius();
        ChillPlan plan = ChillPlan.backwards(
                pour.at().getEpochSecond(),
                lot.pressure().bottle(),
                pour.bottles(),
                from,
                fridge,
                wanted,
                beer.yeast().settling(),
                Surroundings.STILL_FRIDGE);
        Instant takeOut = Instant.ofEpochSecond(plan.takeOutEpochSecond());
        boolean ready = lot.ready().median().map(day -> !day.isAfter(pour.at())).orElse(false);
        if (there) {
            return new PourPlan(
                    pour,
                    Optional.of(lot.lot().stayAt(at).from()),
                    takeOut,
                    ready,
                    "already in the cold since "
                            + words.day(lot.lot().stayAt(at).from()) + takeOutWords(plan, takeOut));
        }
        Instant latest = plan.putInWhileAwake(words.zone());
        boolean inTime = !latest.isBefore(at);
        String why = inTime
                ? hours(plan.coolingMinutes() / 60) + " to cool from " + words.celsius(from) + " to "
                        + words.celsius(fridge + 1) + " in the "
                        + cellar.place(pour.placeId()).name() + ", then "
                        + hours(plan.clearingHours()) + " upright to clear" + takeOutWords(plan, takeOut)
                : "too late to be cold and clear; cool it in ice water and pour gently, leaving the sediment";
        String readiness = ready ? "" : "; it may not be ready by then";
        return new PourPlan(pour, inTime ? Optional.of(latest) : Optional.empty(), takeOut, ready, why + readiness);
    }

    /** The lot in the fridge already, if it is enough; otherwise the biggest one. */
    private static LotOutlook lotFor(Pour pour, BatchOutlook batch) {
        return batch.lots().stream()
                .filter(lot -> lot.place().id().equals(pour.placeId()) && lot.left() >= pour.bottles())
                .findFirst()
                .orElseGet(batch::mainLot);
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

    private String takeOutWords(ChillPlan plan, Instant takeOut) {
        return plan.warmingMinutes() < 3
                ? ""
                : "; out of the cold at " + words.moment(takeOut) + " (" + Math.round(plan.warmingMinutes())
                        + " min before)";
    }

    private static String hours(double hours) {
        return hours < 1.5 ? Math.round(hours * 60) + " min" : Math.round(hours) + " h";
    }
}
