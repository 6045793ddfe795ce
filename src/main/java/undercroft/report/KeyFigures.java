package undercroft.report;

import undercroft.markup.Markup;
import undercroft.outlook.lot.AgeingOutlook;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.CarbonationOutlook;
import undercroft.outlook.lot.FigureKind;
import undercroft.outlook.lot.LotOutlook;
import undercroft.outlook.lot.PressureOutlook;

/** The five figures a person asks for first; of the lot that has it worst, as in report.json. */
final class KeyFigures {
    private static final double DONE = 0.95;

    private KeyFigures() {}

    static void write(Markup page, BatchOutlook batch, PageWords words) {
        page.open("dl", "class", "figures");
        CarbonationOutlook carbonation = batch.lotFor(FigureKind.CARBONATION).carbonation();
        String coming = carbonation.fractionDone().median() < DONE
                ? ", at the end " + PageWords.volumes(carbonation.atEnd().median())
                : "";
        figure(
                page,
                "Carbonation",
                PageWords.volumes(carbonation.atPresent().median()),
                PageWords.range(carbonation.atPresent(), 1) + coming);
        PressureOutlook pressure = batch.lotFor(FigureKind.PRESSURE).pressure();
        figure(
                page,
                "Pressure now",
                words.bar(pressure.atPresent().median()),
                words.barRange(pressure.atPresent()) + ", limit " + words.bar(pressure.workingPressureBar()));
        PressureOutlook weakest = batch.lotFor(FigureKind.HEAT_LIMIT).pressure();
        figure(
                page,
                "Heat limit",
                words.heatLimit(weakest.heatLimitCelsius()),
                weakest.bottle().label());
        LotOutlook brightest = batch.lotFor(FigureKind.LIGHT);
        figure(
                page,
                "Light",
                brightest.light().words(),
                brightest.lot().colour().label());
        AgeingOutlook ageing = batch.lotFor(FigureKind.BEST_BEFORE).ageing();
        figure(
                page,
                "Best before",
                words.month(ageing.bestBefore()),
                PageWords.number(ageing.daysUsed().median(), 0) + " of "
                        + PageWords.number(ageing.budgetDays().median(), 0) + " keeping days used");
        page.close("dl");
    }

    private static void figure(Markup page, String name, String value, String detail) {
        page.open("div").element("dt", name).element("dd", value, "class", "value");
        page.element("dd", detail, "class", "faint").close("div");
    }
}
