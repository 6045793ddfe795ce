package undercroft.report;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import undercroft.markup.Markup;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.LotOutlook;
import undercroft.quantity.Interval;

/** Every figure of every lot of a batch, a column for each lot. */
final class LotFigures {
    private final PageWords words;

    private LotFigures(PageWords words) {
        this.words = words;
    }

    private record Row(String name, Function<LotOutlook, String> value) {}

    static void write(Markup page, CellarOutlook outlook, BatchOutlook batch, PageWords words) {
        String label = "Figures of " + batch.batch().name();
        page.open("div", "class", "scroll", "role", "region", "tabindex", "0", "aria-label", label);
        page.open("table", "class", "lots").open("caption").text("Figures");
        page.element("span", " middle value (5 to 95 %)", "class", "faint").close("caption");
        page.open("thead").open("tr").element("th", "Lot", "scope", "col");
        for (LotOutlook lot : batch.lots()) {
            page.open("th", "scope", "col").text(lot.lot().count() + " × ");
            page.name(outlook.cellar().bottleType(lot.lot().bottleTypeId()).label())
                    .close("th");
        }
        page.close("tr").close("thead").open("tbody");
        for (Row row : new LotFigures(words).rows()) {
            page.open("tr").element("th", row.name(), "scope", "row");
            batch.lots().forEach(lot -> page.element("td", row.value().apply(lot)));
            page.close("tr");
        }
        page.close("tbody").close("table").close("div");
    }

    private List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        rows.add(new Row("Bottles left", lot -> lot.left() + " of " + lot.lot().count()));
        rows.add(new Row("Stands in", lot -> lot.place().name()));
        rows.add(new Row("Glass", lot -> lot.lot().colour().label()));
        rows.add(new Row(
                "Carbonation now", lot -> words.volumes(lot.carbonation().atPresent())));
        rows.add(new Row(
                "Carbonation at the end", lot -> words.volumes(lot.carbonation().atEnd())));
        rows.add(new Row(
                "Of that made by now",
                lot -> words.percent(lot.carbonation().fractionDone().median())));
        rows.add(new Row("Ready", this::ready));
        rows.add(new Row("Pressure now", lot -> words.bars(lot.pressure().atPresent())));
        rows.add(
                new Row("Strongest bottle now", lot -> words.bars(lot.pressure().strongestBottle())));
        rows.add(new Row("Highest so far", lot -> words.bars(lot.pressure().peakPast())));
        rows.add(new Row(
                "Highest in the weeks ahead", lot -> words.bars(lot.pressure().peakAhead())));
        rows.add(
                new Row("Working pressure", lot -> words.barLimit(lot.pressure().workingPressureBar())));
        rows.add(new Row("Heat limit", lot -> words.heatLimit(lot.pressure().heatLimitCelsius())));
        rows.add(new Row(
                "Bottle temperature", lot -> words.celsius(lot.temperature().nowCelsius())));
        rows.add(new Row(
                "Mean kinetic temperature",
                lot -> words.celsius(lot.temperature().meanKineticCelsius())));
        rows.add(new Row(
                "Temperatures known", lot -> words.percent(lot.temperature().coverage())));
        rows.add(new Row("Light, 1 is just noticed", lot -> dose(lot.light().dose())));
        rows.add(new Row(
                "Shelf life used, days at 20 °C",
                lot -> words.around(lot.ageing().daysUsed(), 0) + " of "
                        + words.number(lot.ageing().budgetDays().median(), 0)));
        rows.add(new Row("Best before", lot -> words.dateOrLong(lot.ageing().bestBefore())));
        return rows;
    }

    private String ready(LotOutlook lot) {
        String median = words.dayOrNever(lot.ready().median());
        if (lot.ready().early().isEmpty()) {
            return median;
        }
        return median + " (" + words.dayOrNever(lot.ready().early()) + " to "
                + words.dayOrNever(lot.ready().late()) + ")";
    }

    private String dose(Interval dose) {
        if (dose.high() == 0) {
            return "none";
        }
        return words.around(dose, dose.median() < 1 ? 2 : dose.median() < 10 ? 1 : 0);
    }
}
