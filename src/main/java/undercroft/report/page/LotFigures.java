package undercroft.report.page;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import undercroft.markup.Markup;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.LotOutlook;
import undercroft.quantity.Interval;
import undercroft.wording.ShelfWords;

/** Every figure of every lot of a batch, a column for each lot. */
final class LotFigures {
    private final ShelfWords words;

    private LotFigures(ShelfWords words) {
        this.words = words;
    }

    private record Row(String key, Function<LotOutlook, String> value) {}

    static void write(Markup page, CellarOutlook outlook, BatchOutlook batch, ShelfWords words) {
        String label = words.of("report.lots.of", batch.batch().name());
        page.open("div", "class", "scroll", "role", "region", "tabindex", "0", "aria-label", label);
        page.open("table", "class", "lots").open("caption").text(words.of("report.lots.title"));
        page.element("span", " " + words.of("report.lots.range"), "class", "faint")
                .close("caption");
        page.open("thead").open("tr").element("th", words.of("report.lots.lot"), "scope", "col");
        for (LotOutlook lot : batch.lots()) {
            page.open("th", "scope", "col")
                    .text(words.of("report.lots.count", lot.lot().count()) + " ");
            page.name(words.name(outlook.cellar().bottleType(lot.lot().bottleTypeId())))
                    .close("th");
        }
        page.close("tr").close("thead").open("tbody");
        for (Row row : new LotFigures(words).rows()) {
            page.open("tr").element("th", words.of(row.key()), "scope", "row");
            batch.lots().forEach(lot -> page.element("td", row.value().apply(lot)));
            page.close("tr");
        }
        page.close("tbody").close("table").close("div");
    }

    private List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        rows.add(new Row(
                "report.lots.left",
                lot -> words.of("report.lots.of-count", lot.left(), lot.lot().count())));
        rows.add(new Row("report.lots.place", lot -> lot.place().name()));
        rows.add(new Row("report.lots.glass", lot -> words.name(lot.lot().colour())));
        rows.add(new Row(
                "report.lots.carbonation",
                lot -> words.format().volumes(lot.carbonation().atPresent())));
        rows.add(new Row(
                "report.lots.end",
                lot -> words.format().volumes(lot.carbonation().atEnd())));
        rows.add(new Row(
                "report.lots.done",
                lot -> words.format().percent(lot.carbonation().fractionDone().median())));
        rows.add(new Row("report.lots.ready", this::ready));
        rows.add(new Row(
                "report.lots.pressure",
                lot -> words.format().bars(lot.pressure().atPresent())));
        rows.add(new Row(
                "report.lots.strongest",
                lot -> words.format().bars(lot.pressure().strongestBottle())));
        rows.add(new Row(
                "report.lots.past", lot -> words.format().bars(lot.pressure().peakPast())));
        rows.add(new Row(
                "report.lots.ahead", lot -> words.format().bars(lot.pressure().peakAhead())));
        rows.add(new Row(
                "report.lots.limit",
                lot -> words.format().barLimit(lot.pressure().workingPressureBar())));
        rows.add(new Row(
                "report.lots.heat",
                lot -> words.format().heatLimit(lot.pressure().heatLimitCelsius())));
        rows.add(new Row("report.lots.temperature", words::warmth));
        rows.add(new Row(
                "report.lots.kinetic",
                lot -> words.format().celsius(lot.temperature().meanKineticCelsius())));
        rows.add(new Row(
                "report.lots.known",
                lot -> words.format().percent(lot.temperature().coverage())));
        rows.add(new Row("report.lots.light", lot -> dose(lot.light().dose())));
        rows.add(new Row(
                "report.lots.shelf-life",
                lot -> words.of(
                        "report.lots.of-count",
                        around(lot.ageing().daysUsed(), 0),
                        words.format().number(lot.ageing().budgetDays().median(), 0))));
        rows.add(new Row(
                "report.lots.best-before",
                lot -> lot.ageing()
                        .bestBefore()
                        .map(words::day)
                        .orElseGet(() -> words.of("figure.best-before.years"))));
        return rows;
    }

    private String ready(LotOutlook lot) {
        String median = dayOrNever(lot.ready().median());
        return lot.ready().early().isEmpty()
                ? median
                : words.of(
                        "quantity.around",
                        median,
                        dayOrNever(lot.ready().early()),
                        dayOrNever(lot.ready().late()));
    }

    private String dayOrNever(Optional<Instant> day) {
        return day.map(words::day).orElseGet(() -> words.of("figure.ready.never"));
    }

    /** {@code 12 (10 to 15)}. */
    private String around(Interval interval, int decimals) {
        return words.of(
                "figure.around",
                words.format().number(interval.median(), decimals),
                words.format().range(interval, decimals));
    }

    private String dose(Interval dose) {
        if (dose.high() == 0) {
            return words.of("report.lots.dark");
        }
        return around(dose, dose.median() < 1 ? 2 : dose.median() < 10 ? 1 : 0);
    }
}
