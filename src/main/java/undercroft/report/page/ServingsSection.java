package undercroft.report.page;

import undercroft.markup.Markup;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.serving.Concern;
import undercroft.outlook.serving.ServingPlan;
import undercroft.wording.ServingWords;
import undercroft.wording.ShelfWords;

/** Bottles promised for a time, and when they go into the cold. */
final class ServingsSection {
    private ServingsSection() {}

    static void write(Markup page, CellarOutlook outlook, ShelfWords words) {
        if (outlook.servings().isEmpty()) {
            return;
        }
        page.open("section", "aria-labelledby", "servings")
                .element("h2", words.of("report.servings.title"), "id", "servings");
        page.open("ul", "class", "plain");
        ServingWords said = new ServingWords(words);
        for (ServingPlan plan : outlook.servings()) {
            page.open("li")
                    .open("p", "class", "what")
                    .text(words.format().full(plan.serving().at()) + ": ");
            page.text(plan.serving().bottles() + " ")
                    .open("a", "href", "#batch-" + plan.serving().batchId());
            page.name(outlook.cellar().batch(plan.serving().batchId()).name())
                    .close("a")
                    .close("p");
            String chill = plan.chillFrom()
                    .filter(from -> from.isAfter(outlook.at()))
                    .map(from -> words.of("report.servings.chill", words.when(from)) + " ")
                    .orElse("");
            page.element("p", chill + words.format().messages().sentence(said.why(plan)), "class", "faint");
            for (Concern concern : plan.concerns()) {
                page.element("p", said.concern(plan, concern), "class", AlertMark.cssName(concern.alert()));
            }
            if (!plan.serving().note().isEmpty()) {
                page.open("p", "class", "faint").name(plan.serving().note()).close("p");
            }
            page.close("li");
        }
        page.close("ul")
                .element("p", words.of("report.servings.pouring", said.pouring()), "class", "faint")
                .close("section");
    }
}
