package undercroft.report;

import java.util.List;
import undercroft.markup.Markup;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.climate.PlaceOutlook;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.wording.Headlines;

/** The shelf at a glance: a crate for each batch, and how warm the places are. */
final class ShelfSection {
    private static final double NOTICED_KELVIN = 0.5;

    private ShelfSection() {}

    static void write(Markup page, CellarOutlook outlook, List<BatchOutlook> batches, PageWords words) {
        page.open("section", "aria-labelledby", "shelf").element("h2", "The shelf", "id", "shelf");
        if (batches.isEmpty()) {
            page.element("p", "Nothing has been bottled yet.", "class", "quiet");
        } else {
            page.open("ul", "class", "shelf");
            for (int i = 0; i < batches.size(); i++) {
                crate(page, batches.get(i), "glass-" + i, words);
            }
            page.close("ul");
        }
        if (!outlook.places().isEmpty()) {
            places(page, outlook.places(), words);
        }
        page.close("section");
    }

    private static void crate(Markup page, BatchOutlook batch, String key, PageWords words) {
        page.open("li", "class", "crate");
        if (batch.bottlesLeft() > 0) {
            BottleRow.write(page, batch, key);
        }
        page.open("div", "class", "face").open("h3").open("a", "href", "#batch-" + batch.id());
        page.name(batch.batch().name()).close("a").close("h3");
        AlertMark.write(page.open("p", "class", "row"), batch.alert(), words);
        page.element("span", words.words().nameOf(batch.stage()), "class", "stage");
        String left = batch.isCapped() ? batch.bottlesLeft() + " left" : "not capped";
        page.element("strong", left).close("p");
        page.element("p", new Headlines(words.words()).of(batch), "class", "headline")
                .close("div")
                .close("li");
    }

    private static void places(Markup page, List<PlaceOutlook> places, PageWords words) {
        page.open("table", "class", "places").element("caption", "How warm it is");
        page.open("thead").open("tr");
        for (String head : List.of("Place", "Now", "Last three days", "Known from")) {
            page.element("th", head, "scope", "col");
        }
        page.close("tr").close("thead").open("tbody");
        for (PlaceOutlook place : places) {
            page.open("tr")
                    .open("th", "scope", "row")
                    .name(place.place().name())
                    .close("th");
            page.element("td", words.celsius(place.nowCelsius()));
            page.element("td", trend(place.trendKelvin()));
            page.element("td", place.measured() ? "its log" : "a guess").close("tr");
        }
        page.close("tbody").close("table");
    }

    private static String trend(double kelvin) {
        if (Math.abs(kelvin) < NOTICED_KELVIN) {
            return "steady";
        }
        return kelvin > 0 ? "warmer" : "cooler";
    }
}
