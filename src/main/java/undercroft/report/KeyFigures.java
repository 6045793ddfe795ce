package undercroft.report;

import undercroft.outlook.lot.AgeingOutlook;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.CarbonationOutlook;
import undercroft.outlook.lot.LotOutlook;
import undercroft.outlook.lot.PressureOutlook;

/** The five figures a person asks for first; of the lot that has it worst, as in report.json. */
final class KeyFigures {
    private static final double DONE = 0.95;

    private KeyFigures() {}

    static void write(Markup page, BatchOutlook batch, PageWords words) {
        page.open("dl", "class", "figures");
        CarbonationOutlook carbonation = batch.mainLot().carbonation();
        String coming = carbonation.fractionDone().median() < DONE
                ? ", at the end " + PageWords.volumes(carbonation.atEnd().median())
                : "";
        figure(
                page,
                "Carbonation",
                PageWords.volumes(carbonation.atPresent().median()),
                PageWords.range(carbonation.atPresent(), 1) + coming);
        PressureOutlook pressure = batch.tightestLot().pressure();
        figure(
                page,
                "Pressure now",
                words.bar(pressure.atPresent().median()),
                words.barRange(pressure.atPresent()) + ", limit " + words.bar(pressure.workingPressureBar()));
        figure(
                page,
                "Heat limit",
                words.heatLimit(pressure.heatLimitCelsius()),
                pressure.bottle().label());
        LotOutlook brightest = batch.brightestLot();
        figure(
                page,
                "Light",
                brightest.light().words(),
                brightest.lot().colour().label());
        AgeingOutlook ageing = batch.oldestLot().ageing();
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
