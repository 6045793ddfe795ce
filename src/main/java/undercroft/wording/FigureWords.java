package undercroft.wording;

import undercroft.calc.light.LightBand;
import undercroft.outlook.lot.AgeingOutlook;
import undercroft.outlook.lot.CarbonationOutlook;
import undercroft.outlook.lot.FigureKind;
import undercroft.outlook.lot.LightOutlook;
import undercroft.outlook.lot.LotOutlook;
import undercroft.outlook.lot.PressureOutlook;

/** The figures of a lot as tiles, page and grounds all show them. */
public record FigureWords(ShelfWords words) {
    public String label(FigureKind figure) {
        return words.of(Keys.of("figure.label", figure));
    }

    /** The figure itself. */
    public String value(LotOutlook lot, FigureKind figure) {
        QuantityFormat format = words.format();
        return switch (figure) {
            case CARBONATION -> format.volumes(lot.carbonation().atPresent().median());
            case PRESSURE -> format.bar(lot.pressure().atPresent().median());
            case HEAT_LIMIT -> format.heatLimit(lot.pressure().heatLimitCelsius());
            case LIGHT -> light(lot.light());
            case BEST_BEFORE ->
                lot.ageing().bestBefore().map(format::month).orElseGet(() -> words.of("figure.best-before.years"));
            case READY -> lot.ready().median().map(words::day).orElseGet(() -> words.of("figure.ready.never"));
        };
    }

    /** What stands beside it: its range, what it is compared with. */
    public String detail(LotOutlook lot, FigureKind figure) {
        QuantityFormat format = words.format();
        return switch (figure) {
            case CARBONATION -> carbonation(lot.carbonation());
            case PRESSURE -> {
                PressureOutlook pressure = lot.pressure();
                yield words.of(
                        "figure.pressure.detail",
                        format.barRange(pressure.atPresent()),
                        format.barLimit(pressure.workingPressureBar()));
            }
            case HEAT_LIMIT ->
                words.of("figure.heat-limit.detail", lot.pressure().bottle());
            case LIGHT -> words.name(lot.lot().colour());
            case BEST_BEFORE -> {
                AgeingOutlook ageing = lot.ageing();
                yield words.of(
                        "figure.best-before.detail",
                        format.number(ageing.daysUsed().median(), 0),
                        format.number(ageing.budgetDays().median(), 0));
            }
            case READY ->
                words.of(
                        "figure.ready.detail",
                        lot.ready().early().map(words::day).orElseGet(() -> words.of("figure.ready.never")),
                        lot.ready().late().map(words::day).orElseGet(() -> words.of("figure.ready.never")));
        };
    }

    /** What light has done to the beer so far. */
    public String light(LightOutlook light) {
        if (light.dose().median() == 0) {
            return words.of("figure.light.dark");
        }
        return light.band() == LightBand.NONE && light.perDay() == 0
                ? words.of("figure.light.hardly")
                : words.name(light.band());
    }

    private String carbonation(CarbonationOutlook carbonation) {
        String range = words.format().volumeRange(carbonation.atPresent());
        return carbonation.isDone()
                ? words.of("figure.carbonation.done", range)
                : words.of(
                        "figure.carbonation.coming",
                        range,
                        words.format().volumes(carbonation.atEnd().median()));
    }
}
