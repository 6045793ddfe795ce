package undercroft.bottling;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import undercroft.calc.priming.Dosing;
import undercroft.catalogue.Closure;
import undercroft.quantity.Temperature;
import undercroft.quantity.UnitSystem;
import undercroft.quantity.Volume;

/** The steps of the day in working order, with the day's amounts in their words. */
final class Steps {
    private static final int COOL_MINUTES = 20;

    private final BottlingDay day;
    private final UnitSystem units;
    private final List<Step> steps = new ArrayList<>();

    private Steps(BottlingDay day, UnitSystem units) {
        this.day = day;
        this.units = units;
    }

    static List<Step> of(BottlingDay day, UnitSystem units) {
        Steps all = new Steps(day, units);
        all.prepare();
        if (!day.sugar().dose().notNeeded()) {
            all.sweeten();
        }
        all.fill();
        all.finish();
        return List.copyOf(all.steps);
    }

    private void prepare() {
        steps.add(Step.of(
                "gravity",
                "Read the gravity once more and write it down. "
                        + day.unfinished().reason()));
        steps.add(Step.of(
                        "bottles",
                        "Set out " + bottles() + " and " + day.supplies().spareBottles()
                                + " spare. Look at each against the light: chipped or cracked ones go to the glass bank.")
                .caution("Broken glass: gloves."));
        steps.add(Step.of("clean", capital(day.wash().cleaning().words(units)) + ".")
                .timed(day.wash().cleaning().minutes())
                .caution(String.join(" ", day.wash().cleaning().cautions())));
        steps.add(Step.of(
                        "sanitise",
                        capital(day.wash().sanitising().words(units))
                                + ". Bottles, filler, tubes, spoon and vessel, inside all over.")
                .timed(day.wash().sanitising().minutes())
                .caution(String.join(" ", day.wash().sanitising().cautions())));
        if (!day.supplies().closures().isEmpty()) {
            steps.add(Step.of("caps", "Lay ready " + closures() + ", spares included, wet with sanitiser."));
        }
        day.keg()
                .ifPresent(keg -> steps.add(Step.of(
                                "keg",
                                "Run " + Volume.ofLitres(keg.litres()).text(units) + " into the keg, before any syrup. "
                                        + keg.words(units))
                        .caution("Never over the keg's own pressure mark.")
                        .oxygen("Fill from the bottom and blow the air out with CO2.")));
    }

    private void sweeten() {
        SugarPlan sugar = day.sugar();
        String weight = DoseLine.massText(sugar.weighGrams());
        if (sugar.dosing() == Dosing.SYRUP) {
            String water =
                    Volume.ofMillilitres(sugar.dose().syrupWaterMillilitres()).text(units);
            steps.add(Step.of(
                    "weigh", "Weigh " + weight + " of " + sugar.dose().sugar().label() + "."));
            steps.add(Step.of("boil", "Stir it into " + water + " of water and boil 5 to 10 minutes.")
                    .timed(SugarPlan.BOIL_MINUTES)
                    .caution("Hot syrup sticks and burns."));
            steps.add(Step.of("cool", "Cool the syrup, lid on, below " + whole(SugarPlan.COOL_BELOW_CELSIUS) + ".")
                    .timed(COOL_MINUTES));
            steps.add(Step.of("mix", "Syrup into the empty vessel first, run the beer onto it, stir gently and well.")
                    .oxygen("The end of the tube stays under the surface; no splashing."));
        } else {
            String each = sugar.perBottle().stream()
                    .map(per -> DoseLine.massText(per.grams().median()) + " into each "
                            + per.bottle().label())
                    .collect(Collectors.joining(", "));
            steps.add(Step.of(
                    "weigh", "Weigh " + weight + " of " + sugar.dose().sugar().label() + "."));
            steps.add(Step.of("dose", "Put " + each + ", dry, before the beer.")
                    .caution("Sugar thrown into gassy beer makes it gush."));
        }
    }

    private void fill() {
        String test = day.order().testBottle().isPresent()
                ? " Begin with the " + day.order().testBottle().get().label() + "."
                : "";
        steps.add(Step.of("fill", "Fill " + bottles() + "." + test + " " + FillOrder.FILL_ADVICE)
                .oxygen("Filler down to the bottom, let the beer rise quietly, no splashing."));
        steps.add(Step.of("cap", "Lay a cap on each bottle as it is filled, then close them in the order of filling.")
                .oxygen("Close at once, or let foam rise under the loose cap for some minutes and close on it."));
        if (day.supplies().closures().containsKey(Closure.CROWN)) {
            steps.add(Step.of(
                    "crimp", "Measure a few crimped crowns: 28.6 to 28.8 mm across. Turn some over: none may drip."));
        }
    }

    private void finish() {
        steps.add(Step.of("count", "Count the bottles of each kind, note them and the sugar as it was weighed."));
        steps.add(Step.of("store", "Wipe, label and stand them upright in the dark, in a box or crate with a lid.")
                .caution(heat()));
        steps.add(Step.of("rinse", "Rinse all gear before it dries."));
    }

    private String heat() {
        return day.weakest()
                .map(weakest -> switch (weakest.heatLimit().reach()) {
                    case NOT_REACHED -> "Keep children and faces away; cap and glass are under pressure for months.";
                    case BEYOND_WHEN_COLD -> "These bottles are over their limit even when cold: do not fill them.";
                    case PRESSURE, LIQUID_FULL, MATERIAL ->
                        "Never warmer than "
                                + Temperature.ofCelsius(
                                                Math.floor(weakest.heatLimit().celsius()))
                                        .text(units)
                                + ": there the " + weakest.bottle().label() + " reaches its limit.";
                })
                .orElse("");
    }

    private String bottles() {
        String list = day.order().rows().stream()
                .filter(row -> row.filled() > 0)
                .map(row -> row.filled() + " × " + row.bottle().label())
                .collect(Collectors.joining(", "));
        return list.isEmpty() ? "no bottles" : list;
    }

    private String whole(double celsius) {
        return Temperature.ofCelsius(celsius).text(units).replace(".0 ", " ");
    }

    private String closures() {
        return day.supplies().closures().entrySet().stream()
                .sorted((a, b) -> a.getKey().compareTo(b.getKey()))
                .map(entry -> entry.getValue() + " × " + entry.getKey().label())
                .collect(Collectors.joining(", "));
    }

    private static String capital(String words) {
        return words.substring(0, 1).toUpperCase(Locale.ROOT) + words.substring(1);
    }
}
