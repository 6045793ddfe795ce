package undercroft.report.page;

import java.util.List;
import undercroft.markup.Markup;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.climate.PlaceOutlook;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.wording.Headlines;
import undercroft.wording.ShelfWords;

/** The shelf at a glance: a crate for each batch, and how warm the places are. */
final class ShelfSection {
    private static final double NOTICED_KELVIN = 0.5;

    private ShelfSection() {}

    static void write(Markup page, CellarOutlook outlook, List<BatchOutlook> batches, ShelfWords words) {
        page.open("section", "aria-labelledby", "shelf").element("h2", words.of("report.shelf.title"), "id", "shelf");
        if (batches.isEmpty()) {
            page.element("p", words.of("report.shelf.empty"), "class", "quiet");
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

    private static void crate(Markup page, BatchOutlook batch, String key, ShelfWords words) {
        page.open("li", "class", "crate");
        if (batch.bottlesLeft() > 0) {
            BottleRow.write(page, batch, key);
        }
        page.open("div", "class", "face").open("h3").open("a", "href", "#batch-" + batch.id());
        page.name(batch.batch().name()).close("a").close("h3");
        AlertMark.write(page.open("p", "class", "row"), batch.alert(), words);
        page.element("span", words.nameOf(batch.stage()), "class", "stage");
        String left = batch.isCapped()
                ? words.of("report.shelf.left", batch.bottlesLeft())
                : words.of("report.shelf.not-capped");
        page.element("strong", left).close("p");
        page.element("p", new Headlines(words).of(batch), "class", "headline")
                .close("div")
                .close("li");
    }

    private static void places(Markup page, List<PlaceOutlook> places, ShelfWords words) {
        page.open("table", "class", "places").element("caption", words.of("report.places.title"));
        page.open("thead").open("tr");
        for (String head : List.of(
                words.of("report.places.place"),
                words.of("report.places.now"),
                words.of("report.places.trend"),
                words.of("report.places.source"))) {
            page.element("th", head, "scope", "col");
        }
        page.close("tr").close("thead").open("tbody");
        for (PlaceOutlook place : places) {
            page.open("tr")
                    .open("th", "scope", "row")
                    .name(place.place().name())
                    .close("th");
            page.element("td", words.format().celsius(place.nowCelsius()));
            page.element("td", words.of(trend(place.trendKelvin())));
            page.element("td", words.of(place.measured() ? "report.places.log" : "report.places.guess"))
                    .close("tr");
        }
        page.close("tbody").close("table");
    }

    private static String trend(double kelvin) {
        if (Math.abs(kelvin) < NOTICED_KELVIN) {
            return "report.places.steady";
        }
        return kelvin > 0 ? "report.places.warmer" : "report.places.cooler";
    }
}
