package undercroft.report;

import undercroft.outlook.CellarOutlook;
import undercroft.outlook.PourPlan;

/** Bottles promised for a time, and when they go into the cold. */
final class PoursSection {
    private PoursSection() {}

    static void write(Markup page, CellarOutlook outlook, PageWords words) {
        if (outlook.pours().isEmpty()) {
            return;
        }
        page.open("section", "aria-labelledby", "pours").element("h2", "Pours", "id", "pours");
        page.open("ul", "class", "plain");
        for (PourPlan plan : outlook.pours()) {
            page.open("li")
                    .open("p", "class", "what")
                    .text(words.full(plan.pour().at()) + ": ");
            page.text(plan.pour().bottles() + " ")
                    .open("a", "href", "#batch-" + plan.pour().batchId());
            page.name(outlook.cellar().batch(plan.pour().batchId()).name())
                    .close("a")
                    .close("p");
            String chill = plan.chillFrom()
                    .map(from -> from.isAfter(outlook.at()) ? "Into the cold " + words.when(from) + ". " : "")
                    .orElse("");
            page.element("p", chill + sentence(plan.why()), "class", "faint");
            if (!plan.pour().note().isEmpty()) {
                page.open("p", "class", "faint").name(plan.pour().note()).close("p");
            }
            page.close("li");
        }
        page.close("ul").close("section");
    }

    private static String sentence(String words) {
        return words.isEmpty() ? "" : Character.toUpperCase(words.charAt(0)) + words.substring(1) + ".";
    }
}
