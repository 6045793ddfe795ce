package undercroft.app.shelf;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import undercroft.outlook.Wording;
import undercroft.outlook.lot.AgeingOutlook;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.CarbonationOutlook;
import undercroft.outlook.lot.LotOutlook;
import undercroft.outlook.lot.PressureOutlook;
import undercroft.outlook.lot.Why;
import undercroft.quantity.Temperature;
import undercroft.quantity.UnitSystem;
import undercroft.wording.Texts;

/** The key figures of a lot. */
record BatchFigures(BatchOutlook batch, LotOutlook lot, Wording words) {
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
        return figure("carbonation", words.volumes(carbonation.atPresent().median()), detail, Alert.CLEAR);
    }

    private BatchPage.Figure pressure() {
        PressureOutlook pressure = lot.pressure();
        String detail = Texts.of("batch.figure.pressure-limit", words.bar(pressure.workingPressureBar()));
        return figure("pressure", words.bar(pressure.atPresent().median()), detail, pressure.alert());
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
                "heat-limit",
                value,
                Texts.of(
                        "batch.figure.heat-limit-bottle",
                        lot.pressure().bottle().label()),
                lot.pressure().alert());
    }

    private double inUnits(double celsius) {
        return words.units() == UnitSystem.US ? Temperature.ofCelsius(celsius).fahrenheit() : celsius;
    }

    private BatchPage.Figure light() {
        return figure(
                "light",
                lot.light().words(),
                Texts.of("batch.figure.light-glass", lot.lot().colour().label()),
                lot.light().alert());
    }

    private BatchPage.Figure bestBefore() {
        AgeingOutlook ageing = lot.ageing();
        String value = ageing.bestBefore().map(words::month).orElseGet(() -> Texts.of("batch.figure.keeps-long"));
        String detail = Texts.of(
                "batch.figure.days-used",
                Wording.number(ageing.daysUsed().median(), 0),
                Wording.number(ageing.budgetDays().median(), 0));
        return figure("best-before", value, detail, Alert.CLEAR);
    }

    private BatchPage.Figure figure(String id, String value, String detail, Alert alert) {
        String label = Texts.of("batch.figure." + id);
        return new BatchPage.Figure(id, label, value, detail, alert, why(Texts.of("batch.why." + id)));
    }

    /** The grounds whose number begins with, or failing that mentions, the subject of the figure. */
    private Optional<Why> why(String subject) {
        String sought = subject.toLowerCase(Locale.ROOT);
        return batch.whys().stream()
                .filter(why -> why.number().toLowerCase(Locale.ROOT).startsWith(sought))
                .findFirst()
                .or(() -> batch.whys().stream()
                        .filter(why -> why.number().toLowerCase(Locale.ROOT).contains(sought))
                        .findFirst());
    }
}
