package undercroft.bottling;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import undercroft.calc.priming.Dosing;
import undercroft.catalogue.Closure;
import undercroft.quantity.Limit;
import undercroft.quantity.Mass;
import undercroft.quantity.Phrase;
import undercroft.quantity.Temperature;
import undercroft.quantity.Volume;

/** The steps of the day in working order, with the day's amounts in their words. */
final class Steps {
    private static final int COOL_MINUTES = 20;

    private final BottlingDay day;
    private final List<Step> steps = new ArrayList<>();

    private Steps(BottlingDay day) {
        this.day = day;
    }

    static List<Step> of(BottlingDay day) {
        Steps all = new Steps(day);
        all.prepare();
        if (!day.sugar().dose().notNeeded()) {
            all.sweeten();
        }
        all.fill();
        all.finish();
        return List.copyOf(all.steps);
    }

    private void prepare() {
        steps.add(Step.of("gravity", day.unfinished().reason()));
        steps.add(Step.of("bottles", bottles(), day.supplies().spareBottles())
                .caution(Phrase.of("bottling.caution.glass")));
        steps.add(wash("clean", day.wash().cleaning()));
        steps.add(wash("sanitise", day.wash().sanitising()));
        if (!day.supplies().closures().isEmpty()) {
            steps.add(Step.of("caps", closures()));
        }
        day.keg()
                .ifPresent(keg -> steps.add(Step.of("keg", Volume.ofLitres(keg.litres()), keg.words())
                        .caution(Phrase.of("bottling.caution.keg"))
                        .oxygen(Phrase.of("bottling.oxygen.keg"))));
    }

    private static Step wash(String id, Solution solution) {
        Phrase cautions = solution.cautions().stream()
                .reduce((first, next) -> Phrase.of("list.sentences", first, next))
                .orElseThrow();
        return Step.of(id, solution.words()).timed(solution.minutes()).caution(cautions);
    }

    private void sweeten() {
        SugarPlan sugar = day.sugar();
        steps.add(
                Step.of("weigh", Mass.ofGrams(sugar.weighGrams()), sugar.dose().sugar()));
        if (sugar.dosing() == Dosing.SYRUP) {
            steps.add(Step.of("boil", Volume.ofMillilitres(sugar.dose().syrupWaterMillilitres()))
                    .timed(SugarPlan.BOIL_MINUTES)
                    .caution(Phrase.of("bottling.caution.syrup")));
            steps.add(Step.of("cool", Temperature.ofCelsius(SugarPlan.COOL_BELOW_CELSIUS))
                    .timed(COOL_MINUTES));
            steps.add(Step.of("mix").oxygen(Phrase.of("bottling.oxygen.mix")));
        } else {
            List<Phrase> each = sugar.perBottle().stream()
                    .map(per -> Phrase.of(
                            "bottling.step.dose.each", Mass.ofGrams(per.grams().median()), per.bottle()))
                    .toList();
            steps.add(Step.of("dose", each).caution(Phrase.of("bottling.caution.gush")));
        }
    }

    private void fill() {
        Step fill = day.order()
                .testBottle()
                .map(test -> Phrase.of("bottling.step.fill.test", bottles(), test))
                .map(words -> Step.of("fill", words, FillOrder.FILL_ADVICE))
                .orElseGet(
                        () -> Step.of("fill", Phrase.of("bottling.step.fill.all", bottles()), FillOrder.FILL_ADVICE));
        steps.add(fill.oxygen(Phrase.of("bottling.oxygen.fill")));
        steps.add(Step.of("cap").oxygen(Phrase.of("bottling.oxygen.cap")));
        if (day.supplies().closures().containsKey(Closure.CROWN)) {
            steps.add(Step.of("crimp"));
        }
    }

    private void finish() {
        steps.add(Step.of("count"));
        Step store = Step.of("store");
        steps.add(heat().map(store::caution).orElse(store));
        steps.add(Step.of("rinse"));
    }

    private Optional<Phrase> heat() {
        return day.weakest().map(weakest -> switch (weakest.heatLimit().reach()) {
            case NOT_REACHED -> Phrase.of("bottling.caution.heat.none");
            case BEYOND_WHEN_COLD -> Phrase.of("bottling.caution.heat.cold");
            case PRESSURE, LIQUID_FULL, MATERIAL ->
                Phrase.of(
                        "bottling.caution.heat.limit",
                        new Limit(Temperature.ofCelsius(weakest.heatLimit().celsius())),
                        weakest.bottle());
        });
    }

    /** What is filled, kind by kind. */
    private Object bottles() {
        List<Phrase> list = day.order().rows().stream()
                .filter(row -> row.filled() > 0)
                .map(row -> Phrase.of("bottling.times", row.filled(), row.bottle()))
                .toList();
        return list.isEmpty() ? Phrase.of("bottling.no-bottles") : list;
    }

    private List<Phrase> closures() {
        return day.supplies().closures().entrySet().stream()
                .sorted((a, b) -> a.getKey().compareTo(b.getKey()))
                .map(entry -> Phrase.of("bottling.times", entry.getValue(), entry.getKey()))
                .toList();
    }
}
