package undercroft.report;

import undercroft.markup.Markup;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.serving.Concern;
import undercroft.outlook.serving.ServingPlan;
import undercroft.wording.ServingWords;

/** Bottles promised for a time, and when they go into the cold. */
final class ServingsSection {
    private ServingsSection() {}

    static void write(Markup page, CellarOutlook outlook, PageWords words) {
        if (outlook.servings().isEmpty()) {
            return;
        }
        page.open("section", "aria-labelledby", "pours").element("h2", "Pours", "id", "pours");
        page.open("ul", "class", "plain");
        ServingWords said = new ServingWords(words.words());
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
            page.element("p", chill + words.words().format().messages().sentence(said.why(plan)), "class", "faint");
            for (Concern concern : plan.concerns()) {
                page.element("p", said.concern(plan, concern), "class", AlertMark.cssName(concern.alert()));
            }
            if (!plan.serving().note().isEmpty()) {
                page.open("p", "class", "faint").name(plan.serving().note()).close("p");
            }
            page.close("li");
        }
        page.close("ul")
                .element("p", "How to pour: " + said.pouring(), "class", "faint")
                .close("section");
    }
}
