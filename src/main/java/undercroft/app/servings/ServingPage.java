package undercroft.app.servings;

import java.util.ArrayList;
import java.util.List;
import undercroft.catalogue.BeerStyle;
import undercroft.cellar.Batch;
import undercroft.outlook.CellarOutlook;
import undercroft.wording.ShelfWords;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.serving.Chilling;
import undercroft.outlook.serving.Concern;
import undercroft.outlook.serving.ServingPlan;
import undercroft.wording.Texts;

/**
 * What the page says of a pour.
 *
 * @param headline when to do what, in one sentence
 * @param why the plan counted back, in words
 */
public record ServingPage(
        ServingPlan plan, String title, String headline, String why, List<Figure> figures, List<Concern> concerns) {
    public ServingPage {
        figures = List.copyOf(figures);
        concerns = List.copyOf(concerns);
    }

    /** A moment or a number with what stands above and below it. */
    public record Figure(String id, String label, String value, String detail) {}

    static ServingPage of(ServingPlan plan, CellarOutlook outlook) {
        ShelfWords words = ShelfWords.of(outlook, Texts.messages());
        Batch batch = outlook.cellar().batch(plan.serving().batchId());
        return new ServingPage(
                plan,
                Texts.counted("pours.page.title", plan.serving().bottles(), batch.name()),
                headline(plan, outlook, words),
                capital(plan.why()),
                figures(plan, batch, outlook, words),
                plan.concerns());
    }

    private static String headline(ServingPlan plan, CellarOutlook outlook, ShelfWords words) {
        String when = words.format().weekdayAndTime(plan.serving().at());
        String place = outlook.cellar().coldName(plan.serving());
        if (plan.chillFrom().isEmpty()) {
            return Texts.of("pours.headline.too-late", when);
        }
        if (plan.chillFrom().get().isBefore(outlook.at())) {
            return Texts.of("pours.headline.there", when, place);
        }
        return plan.serving().coolingMedium().isGoodForResting()
                ? Texts.of(
                        "pours.headline.chill",
                        when,
                        place,
                        words.format().weekdayAndTime(plan.chillFrom().get()))
                : Texts.of(
                        "pours.headline.quick",
                        when,
                        plan.serving().coolingMedium().label(),
                        words.format().weekdayAndTime(plan.chillFrom().get()));
    }

    private static List<Figure> figures(ServingPlan plan, Batch batch, CellarOutlook outlook, ShelfWords words) {
        List<Figure> figures = new ArrayList<>();
        boolean late = plan.chillFrom().isEmpty();
        boolean there = !late && plan.chillFrom().get().isBefore(outlook.at());
        figures.add(figure(
                "in",
                late
                        ? Texts.of("pours.figure.in-late")
                        : there
                                ? Texts.of("pours.figure.in-there")
                                : words.format().weekdayAndTime(plan.chillFrom().get()),
                plan.chilling()
                        .map(chilling -> Texts.of("pours.figure.in-detail", words.format().celsius(chilling.coldCelsius())))
                        .orElse("")));
        boolean warms = plan.takeOut().isBefore(plan.serving().at());
        figures.add(figure(
                "out",
                words.format().date(plan.takeOut()).equals(words.format().date(plan.serving().at()))
                        ? words.format().clock(plan.takeOut())
                        : words.format().weekdayAndTime(plan.takeOut()),
                warms ? Texts.of("pours.figure.out-before") : Texts.of("pours.figure.out-then")));
        BeerStyle kind = batch.beer().kind();
        figures.add(figure(
                "glass",
                words.format().celsius(plan.chilling()
                        .map(Chilling::wantedCelsius)
                        .orElse(kind.servingCelsius().median())),
                Texts.of(
                        "pours.figure.glass-detail",
                        words.format().celsius(kind.servingCelsius().low()),
                        words.format().celsius(kind.servingCelsius().high()))));
        figures.add(figure(
                "ready",
                Texts.of("pours.figure.percent", Math.round(100 * plan.probabilityReady())),
                Texts.of("pours.figure.ready-detail")));
        return figures;
    }

    private static Figure figure(String id, String value, String detail) {
        return new Figure(id, Texts.of("pours.figure." + id), value, detail);
    }

    private static String capital(String words) {
        return words.isEmpty() ? "" : Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
    }

    /** The worst of the concerns. */
    public Alert alert() {
        return plan.alert();
    }
}
