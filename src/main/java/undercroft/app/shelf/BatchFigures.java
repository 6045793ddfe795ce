package undercroft.app.shelf;

import java.util.List;
import java.util.Locale;
import undercroft.outlook.Wording;
import undercroft.outlook.lot.AgeingOutlook;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.CarbonationOutlook;
import undercroft.outlook.lot.Cause;
import undercroft.outlook.lot.FigureKind;
import undercroft.outlook.lot.LotOutlook;
import undercroft.outlook.lot.PressureOutlook;
import undercroft.quantity.Temperature;
import undercroft.quantity.UnitSystem;
import undercroft.wording.Texts;
import undercroft.wording.Whys;

/** The key figures of a lot. */
record BatchFigures(BatchOutlook batch, LotOutlook lot, Wording words, Whys whys) {
    /** From here on a place to store bottles in is not meant any more, °C. */
    private static final double HOTTER_THAN_ANY_ROOM_CELSIUS = 60;

    List<BatchPage.Figure> all() {
        return List.of(carbonation(), pressure(), heatLimit(), light(), bestBefore());
    }

    private BatchPage.Figure carbonation() {
        CarbonationOutlook carbonation = lot.carbonation();
        String range = Wording.range(carbonation.atPresent(), 1);
        double end = carbonation.atEnd().median();
        boolean done = carbonation.fractionDone().median() > 0.95;
        String detail = done
                ? Texts.of("batch.figure.carbonation-done", range)
                : Texts.of("batch.figure.carbonation-coming", range, Wording.number(end, 1));
        return figure(
                FigureKind.CARBONATION, words.volumes(carbonation.atPresent().median()), detail, Alert.CLEAR);
    }

    private BatchPage.Figure pressure() {
        PressureOutlook pressure = lot.pressure();
        String detail = Texts.of("batch.figure.pressure-limit", words.bar(pressure.workingPressureBar()));
        return figure(
                FigureKind.PRESSURE, words.bar(pressure.atPresent().median()), detail, alert(Cause.Topic.PRESSURE));
    }

    private BatchPage.Figure heatLimit() {
        double celsius = lot.pressure().heatLimitCelsius();
        String value;
        if (celsius > HOTTER_THAN_ANY_ROOM_CELSIUS) {
            value = Texts.of("batch.figure.heat-limit-none");
        } else if (celsius < 0) {
            value = Texts.of("batch.figure.heat-limit-passed");
        } else {
            value = Texts.of(
                    words.units() == UnitSystem.US ? "words.temperature.fahrenheit" : "words.temperature.celsius",
                    Wording.number(Math.floor(inUnits(celsius)), 0));
        }
        return figure(
                FigureKind.HEAT_LIMIT,
                value,
                Texts.of(
                        "batch.figure.heat-limit-bottle",
                        lot.pressure().bottle().label()),
                alert(Cause.Topic.PRESSURE));
    }

    private double inUnits(double celsius) {
        return words.units() == UnitSystem.US ? Temperature.ofCelsius(celsius).fahrenheit() : celsius;
    }

    private BatchPage.Figure light() {
        return figure(
                FigureKind.LIGHT,
                lot.light().words(),
                Texts.of("batch.figure.light-glass", lot.lot().colour().label()),
                alert(Cause.Topic.LIGHT));
    }

    private BatchPage.Figure bestBefore() {
        AgeingOutlook ageing = lot.ageing();
        String value = ageing.bestBefore().map(words::month).orElseGet(() -> Texts.of("batch.figure.keeps-long"));
        String detail = Texts.of(
                "batch.figure.days-used",
                Wording.number(ageing.daysUsed().median(), 0),
                Wording.number(ageing.budgetDays().median(), 0));
        return figure(FigureKind.BEST_BEFORE, value, detail, Alert.CLEAR);
    }

    private Alert alert(Cause.Topic topic) {
        return lot.verdict().alert(topic);
    }

    private BatchPage.Figure figure(FigureKind kind, String value, String detail, Alert alert) {
        String id = kind.name().toLowerCase(Locale.ROOT).replace('_', '-');
        String label = Texts.of("batch.figure." + id);
        return new BatchPage.Figure(id, label, value, detail, alert, whys.of(batch, lot, kind));
    }
}
