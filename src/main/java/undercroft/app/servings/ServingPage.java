package undercroft.app.servings;

import java.util.ArrayList;
import java.util.List;
import undercroft.catalogue.BeerStyle;
import undercroft.cellar.Batch;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.serving.ServingPlan;
import undercroft.wording.ServingWords;
import undercroft.wording.ShelfWords;

/**
 * What the page says of a pour.
 *
 * @param headline when to do what, in one sentence
 * @param why the plan counted back, in words
 * @param concerns what stands in the way, worst first
 * @param pouring how to pour it
 */
public record ServingPage(
        ServingPlan plan,
        String title,
        String headline,
        String why,
        List<Figure> figures,
        List<Caution> concerns,
        String pouring) {
    public ServingPage {
        figures = List.copyOf(figures);
        concerns = List.copyOf(concerns);
    }

    /** Something that stands in the way, in a sentence with what to do. */
    public record Caution(Alert alert, String sentence) {}

    /** A moment or a number with what stands above and below it. */
    public record Figure(String id, String label, String value, String detail) {}

    static ServingPage of(ServingPlan plan, ShelfWords words) {
        CellarOutlook outlook = words.outlook();
        Batch batch = outlook.cellar().batch(plan.serving().batchId());
        ServingWords said = new ServingWords(words);
        return new ServingPage(
                plan,
                words.of("servings.page.title", plan.serving().bottles(), batch.name()),
                headline(plan, outlook, words),
                sentence(words, said.why(plan)),
                figures(plan, batch, outlook, words),
                plan.concerns().stream()
                        .map(concern -> new Caution(concern.alert(), said.concern(plan, concern)))
                        .toList(),
                said.pouring());
    }

    private static String headline(ServingPlan plan, CellarOutlook outlook, ShelfWords words) {
        String when = words.format().weekdayAndTime(plan.serving().at());
        String place = new ServingWords(words).coldPlace(plan.serving());
        if (plan.chillFrom().isEmpty()) {
            return words.of("servings.headline.too-late", when);
        }
        if (plan.chillFrom().get().isBefore(outlook.at())) {
            return words.of("servings.headline.there", when, place);
        }
        return plan.serving().coolingMedium().isGoodForResting()
                ? words.of(
                        "servings.headline.chill",
                        when,
                        place,
                        words.format().weekdayAndTime(plan.chillFrom().get()))
                : words.of(
                        "servings.headline.quick",
                        when,
                        plan.serving().coolingMedium(),
                        words.format().weekdayAndTime(plan.chillFrom().get()));
    }

    private static List<Figure> figures(ServingPlan plan, Batch batch, CellarOutlook outlook, ShelfWords words) {
        List<Figure> figures = new ArrayList<>();
        boolean late = plan.chillFrom().isEmpty();
        boolean there = !late && plan.chillFrom().get().isBefore(outlook.at());
        figures.add(figure(
                words,
                "in",
                late
                        ? words.of("servings.figure.in-late")
                        : there
                                ? words.of("servings.figure.in-there")
                                : words.format().weekdayAndTime(plan.chillFrom().get()),
                words.of(
                        "servings.figure.in-detail",
                        words.format().celsius(plan.chilling().coldCelsius()))));
        boolean warms = plan.takeOut().isBefore(plan.serving().at());
        figures.add(figure(
                words,
                "out",
                words.format()
                                .date(plan.takeOut())
                                .equals(words.format().date(plan.serving().at()))
                        ? words.format().clock(plan.takeOut())
                        : words.format().weekdayAndTime(plan.takeOut()),
                warms ? words.of("servings.figure.out-before") : words.of("servings.figure.out-then")));
        BeerStyle kind = batch.beer().kind();
        figures.add(figure(
                words,
                "glass",
                words.format().celsius(plan.chilling().wantedCelsius()),
                words.of(
                        "servings.figure.glass-detail",
                        words.format().celsius(kind.servingCelsius().low()),
                        words.format().celsius(kind.servingCelsius().high()))));
        figures.add(figure(
                words,
                "ready",
                words.of("servings.figure.percent", Math.round(100 * plan.probabilityReady())),
                words.of("servings.figure.ready-detail")));
        return figures;
    }

    private static Figure figure(ShelfWords words, String id, String value, String detail) {
        return new Figure(id, words.of("servings.figure." + id), value, detail);
    }

    private static String sentence(ShelfWords words, String half) {
        return words.format().messages().sentence(half);
    }

    /** The worst of the concerns. */
    public Alert alert() {
        return plan.alert();
    }
}
