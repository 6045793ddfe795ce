package undercroft.report;

import undercroft.markup.Markup;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.serving.Concern;
import undercroft.outlook.serving.ServingPlan;

/** Bottles promised for a time, and when they go into the cold. */
final class ServingsSection {
    private ServingsSection() {}

    static void write(Markup page, CellarOutlook outlook, PageWords words) {
        if (outlook.servings().isEmpty()) {
            return;
        }
        page.open("section", "aria-labelledby", "pours").element("h2", "Pours", "id", "pours");
        page.open("ul", "class", "plain");
        for (ServingPlan plan : outlook.servings()) {
            page.open("li")
                    .open("p", "class", "what")
                    .text(words.full(plan.serving().at()) + ": ");
            page.text(plan.serving().bottles() + " ")
                    .open("a", "href", "#batch-" + plan.serving().batchId());
            page.name(outlook.cellar().batch(plan.serving().batchId()).name())
                    .close("a")
                    .close("p");
            String chill = plan.chillFrom()
                    .map(from -> from.isAfter(outlook.at()) ? "Into the cold " + words.when(from) + ". " : "")
                    .orElse("");
            page.element("p", chill + sentence(plan.why()), "class", "faint");
            for (Concern concern : plan.concerns()) {
                page.element("p", concern.sentence(), "class", AlertMark.cssName(concern.alert()));
            }
            if (!plan.serving().note().isEmpty()) {
                page.open("p", "class", "faint").name(plan.serving().note()).close("p");
            }
            page.close("li");
        }
        page.close("ul")
                .element("p", "How to pour: " + ServingPlan.POURING_NOTE, "class", "faint")
                .close("section");
    }

    private static String sentence(String words) {
        return words.isEmpty() ? "" : Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
    }
}
