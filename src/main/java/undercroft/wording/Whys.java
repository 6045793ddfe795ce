package undercroft.wording;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.Collectors;
import undercroft.calc.ageing.ShelfLife;
import undercroft.calc.light.LightUncertainty;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.Sugar;
import undercroft.cellar.Batch;
import undercroft.cellar.Reading;
import undercroft.cellar.SugarDose;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.Wording;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.FigureKind;
import undercroft.outlook.lot.LotOutlook;
import undercroft.quantity.Mass;
import undercroft.quantity.Volume;
import undercroft.wording.Why.Assumption;
import undercroft.wording.Why.Grade;
import undercroft.wording.Why.Input;

/** Where the figures of a lot come from. */
public record Whys(CellarOutlook outlook, Wording words) {
    /** The grounds of each figure of a batch, told of the lot whose figure stands for it. */
    public List<Why> of(BatchOutlook batch) {
        if (!batch.isCapped()) {
            return List.of();
        }
        return Arrays.stream(FigureKind.values())
                .map(figure -> of(batch, batch.lotFor(figure), figure))
                .toList();
    }

    /** The grounds of one figure of a lot. */
    public Why of(BatchOutlook batch, LotOutlook lot, FigureKind figure) {
        return switch (figure) {
            case CARBONATION -> carbonation(batch.batch(), lot);
            case PRESSURE -> pressure(lot);
            case HEAT_LIMIT -> heatLimit(lot);
            case LIGHT -> light(batch.batch(), lot);
            case BEST_BEFORE -> ageing(batch.batch(), lot);
            case READY -> ready(batch.batch(), lot);
        };
    }

    private Why carbonation(Batch batch, LotOutlook main) {
        List<SugarDose> doses = batch.priming().doses();
        String sugars = doses.isEmpty()
                ? "none"
                : doses.stream()
                        .map(one -> Mass.ofGrams(one.grams()).text(words.units()) + " of "
                                + sugar(one).label())
                        .collect(Collectors.joining(", "));
        List<Assumption> assumptions = new ArrayList<>(List.of(
                new Assumption("95 % of what the sugar could give is made (90 to 100)", Grade.ASSUMED),
                new Assumption("uptake of 1 g/L a day at 21 °C, lag of a day, each with a wide spread", Grade.ASSUMED),
                new Assumption("response to temperature between the yeast's cardinal temperatures", Grade.PUBLISHED)));
        doses.forEach(one -> assumptions.add(
                new Assumption(sugar(one).label() + ": " + sugar(one).basis(), Grade.PUBLISHED)));
        if (!batch.readings().isEmpty()) {
            assumptions.add(new Assumption(readings(batch), Grade.MEASURED_BY_YOU));
        }
        return new Why(
                FigureKind.CARBONATION,
                main.id(),
                "Carbonation " + Wording.volumes(main.carbonation().atPresent()),
                "residual carbonation at the warmest temperature since fermentation, plus what the yeast has made of the"
                        + " priming sugar along the bottles' own temperature history",
                List.of(
                        new Input("priming", sugars),
                        new Input(
                                "beer primed",
                                Volume.ofLitres(batch.priming().beerLitres()).text(words.units())),
                        new Input("residual", Wording.volumes(main.carbonation().residual())),
                        new Input(
                                "warmest since fermentation",
                                words.celsius(batch.beer().warmestCelsius())),
                        new Input(
                                "yeast",
                                batch.yeast().strain().label() + ", "
                                        + batch.yeast().state().label()),
                        new Input(
                                "when all is done",
                                Wording.volumes(main.carbonation().atEnd()))),
                assumptions,
                "Weiss 1974, Mar. Chem. 2:203 (solubility); Rosso et al. 1993, J. Theor. Biol. 162:447 (temperature);"
                        + " sugar stoichiometry");
    }

    private Sugar sugar(SugarDose dose) {
        return outlook.cellar().sugar(dose.sugarId());
    }

    private String readings(Batch batch) {
        long count = batch.readings().stream()
                .map(Reading::at)
                .filter(at -> !at.isAfter(words.at()))
                .count();
        return count == 1 ? "1 reading of yours" : count + " readings of yours";
    }

    private Why pressure(LotOutlook lot) {
        BottleType bottle = lot.pressure().bottle();
        return new Why(
                FigureKind.PRESSURE,
                lot.id(),
                "Pressure " + words.bars(lot.pressure().atPresent()),
                "CO2 shared between beer and headspace at the bottle's temperature, plus trapped air and water vapour, less"
                        + " the outside air; beer and glass expand",
                List.of(
                        new Input("bottle", bottle.label()),
                        new Input(
                                "fill and headspace",
                                Wording.number(bottle.fillMillilitres(), 0) + " mL and "
                                        + Wording.number(bottle.headspaceMillilitres(), 0) + " mL"),
                        new Input(
                                "bottle temperature",
                                words.temperature(lot.temperature().nowCelsius())),
                        new Input(
                                "carbonation", Wording.volumes(lot.carbonation().atPresent())),
                        new Input(
                                "strongest of " + lot.left(),
                                words.bars(lot.pressure().strongestBottle())),
                        new Input(
                                "all pressure so far, as one minute's load",
                                words.bars(lot.pressure().memoryBar()))),
                List.of(
                        new Assumption("beer dissolves 0.95 of what water does (0.90 to 1.00)", Grade.ASSUMED),
                        new Assumption(
                                "air under the cap dissolves partly; its oxygen goes to the yeast", Grade.ASSUMED),
                        new Assumption("priming differs by 3 to 8 % from bottle to bottle", Grade.COMMON_PRACTICE)),
                "Weiss 1974 with fugacity and Poynting factor; Kell 1975 (water); closed-bottle balance");
    }

    private Why heatLimit(LotOutlook lot) {
        double heat = lot.pressure().heatLimitCelsius();
        String shown =
                Double.isInfinite(heat) ? "none up to 60 °C" : heat < 0 ? "passed even cold" : words.limitCelsius(heat);
        return new Why(
                FigureKind.HEAT_LIMIT,
                lot.id(),
                "Heat limit " + shown,
                "the warmest storage at which the 95 % pressure of the finished beer stays within what the weakest bottle is"
                        + " trusted with",
                List.of(
                        new Input("weakest bottle", lot.pressure().bottle().label()),
                        new Input("trusted with", words.bar(lot.pressure().workingPressureBar())),
                        new Input(
                                "carbonation when all is done",
                                Wording.volumes(lot.carbonation().atEnd()))),
                List.of(new Assumption(
                        lot.pressure().bottle().bottleClass().label() + ": "
                                + lot.pressure().bottle().bottleClass().basis(),
                        Grade.ASSUMED)),
                "British Glass TEC 7 (4.7 bar); static fatigue of soda-lime glass, exponent 16 (EN 16612); no maker's promise");
    }

    private Why light(Batch batch, LotOutlook lot) {
        return new Why(
                FigureKind.LIGHT,
                lot.id(),
                "Light: " + lot.light().words(),
                "lux and hours of each place it stood in, through the glass, weighed by how light acts on hops",
                List.of(
                        new Input("glass", lot.lot().colour().label()),
                        new Input(
                                "stands now",
                                lot.place().name() + ", "
                                        + lot.place().light().kind().label()),
                        new Input("bitterness", Wording.number(batch.beer().bitternessIbu(), 0) + " IBU"),
                        new Input("colour", Wording.number(batch.beer().colourEbc(), 0) + " EBC")),
                List.of(
                        new Assumption(
                                "just noticed after 45 s of full sun in clear glass; " + LightUncertainty.BASIS,
                                Grade.ASSUMED),
                        new Assumption(
                                lot.place().light().measured()
                                        ? "light as you measured it"
                                        : "usual light of such a place",
                                lot.place().light().measured() ? Grade.MEASURED_BY_YOU : Grade.COMMON_PRACTICE)),
                "riboflavin action spectrum; CIE and ASTM G173 light; transmission of container glass");
    }

    private Why ageing(Batch batch, LotOutlook lot) {
        return new Why(
                FigureKind.BEST_BEFORE,
                lot.id(),
                "Best before"
                        + lot.ageing()
                                .bestBefore()
                                .map(day -> " " + words.day(day))
                                .orElse(": more than ten years"),
                "each hour counts by its temperature (Arrhenius, 83 kJ/mol, 60 to 110), in days at 20 °C, against a keeping"
                        + " budget for the kind of beer",
                List.of(
                        new Input("used", days(lot.ageing().daysUsed().median())),
                        new Input(
                                "budget",
                                days(lot.ageing().budgetDays().median()) + " ("
                                        + batch.beer().kind().label() + ")"),
                        new Input(
                                "mean kinetic temperature",
                                words.temperature(lot.temperature().meanKineticCelsius())),
                        new Input("filling", batch.fillingMethod().label()),
                        new Input(
                                "temperatures known",
                                Wording.percent(lot.temperature().coverage()))),
                List.of(
                        new Assumption("keeping budgets by kind of beer", Grade.COMMON_PRACTICE),
                        new Assumption("oxygen let in at filling", Grade.ASSUMED)),
                ShelfLife.BASIS + "; mean kinetic temperature: USP <1160>");
    }

    private Why ready(Batch batch, LotOutlook main) {
        return new Why(
                FigureKind.READY,
                main.id(),
                "Ready " + main.ready().median().map(words::day).orElse("not within a year"),
                "95 % of the priming sugar taken up, then 4 days (2 to 8) at 21 °C or as long as that takes in the cold",
                List.of(
                        new Input(
                                "earliest", main.ready().early().map(words::day).orElse("not within a year")),
                        new Input("latest", main.ready().late().map(words::day).orElse("not within a year")),
                        new Input("ready now", Wording.percent(main.ready().probabilityNow())),
                        new Input("strength", Wording.number(batch.beer().abvPercent(), 1) + " % ABV")),
                List.of(
                        new Assumption("two weeks at room temperature for an ordinary ale", Grade.COMMON_PRACTICE),
                        new Assumption("the room stays as its own past suggests", Grade.ASSUMED)),
                "calibrated on practice; 512 equally likely beers, 5, 50 and 95 % shown");
    }

    private static String days(double days) {
        return Wording.number(days, 0) + " days at 20 °C";
    }
}
