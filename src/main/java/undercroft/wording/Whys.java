package undercroft.wording;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.Function;
import java.util.stream.Stream;
import undercroft.calc.ageing.ShelfLife;
import undercroft.calc.light.LightUncertainty;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.Sugar;
import undercroft.cellar.Batch;
import undercroft.cellar.Reading;
import undercroft.cellar.SugarDose;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.FigureKind;
import undercroft.outlook.lot.LotOutlook;
import undercroft.wording.Why.Assumption;
import undercroft.wording.Why.Grade;
import undercroft.wording.Why.Input;

/** Where the figures of a lot come from. */
public record Whys(ShelfWords words) {
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
        FigureWords figures = new FigureWords(words);
        String value = figures.value(lot, figure);
        return new Why(
                figure,
                lot.id(),
                value,
                title(figures, lot, figure, value),
                words.of(Keys.of("why.how", figure)),
                inputs(batch.batch(), lot, figure),
                assumptions(batch.batch(), lot, figure),
                basis(figure));
    }

    private String basis(FigureKind figure) {
        String key = Keys.of("why.basis", figure);
        return figure == FigureKind.BEST_BEFORE ? words.of(key, ShelfLife.BASIS) : words.of(key);
    }

    private String title(FigureWords figures, LotOutlook lot, FigureKind figure, String value) {
        String label = figures.label(figure);
        return switch (figure) {
            case CARBONATION ->
                words.of(
                        "why.title-range",
                        label,
                        value,
                        words.format().volumeRange(lot.carbonation().atPresent()));
            case PRESSURE ->
                words.of(
                        "why.title-range",
                        label,
                        value,
                        words.format().barRange(lot.pressure().atPresent()));
            default -> words.of("why.title", label, value);
        };
    }

    private List<Input> inputs(Batch batch, LotOutlook lot, FigureKind figure) {
        return switch (figure) {
            case CARBONATION -> carbonation(batch, lot);
            case PRESSURE -> pressure(lot);
            case HEAT_LIMIT ->
                List.of(
                        input("why.input.bottle", words.name(lot.pressure().bottle())),
                        input(
                                "why.input.working-pressure",
                                words.format().barLimit(lot.pressure().workingPressureBar())),
                        input(
                                "why.input.final",
                                words.format().volumes(lot.carbonation().atEnd())));
            case LIGHT -> light(batch, lot);
            case BEST_BEFORE -> bestBefore(batch, lot);
            case READY -> ready(batch, lot);
        };
    }

    private List<Input> carbonation(Batch batch, LotOutlook lot) {
        QuantityFormat format = words.format();
        List<String> sugars = batch.priming().doses().stream()
                .map(dose -> words.of("why.input.dose", format.grams(dose.grams()), sugar(dose)))
                .toList();
        return List.of(
                input(
                        "why.input.priming",
                        sugars.isEmpty()
                                ? words.of("why.input.no-priming")
                                : format.messages().list(sugars)),
                input("why.input.beer-primed", format.litres(batch.priming().beerLitres())),
                input("why.input.residual", format.volumes(lot.carbonation().residual())),
                input(
                        "why.input.highest-temperature",
                        format.wholeCelsius(batch.beer().warmestCelsius())),
                input(
                        "why.input.yeast",
                        words.of(
                                "why.input.yeast-value",
                                batch.yeast().strain(),
                                batch.yeast().state())),
                input("why.input.final", format.volumes(lot.carbonation().atEnd())));
    }

    private List<Input> pressure(LotOutlook lot) {
        QuantityFormat format = words.format();
        BottleType bottle = lot.pressure().bottle();
        return List.of(
                input("why.input.bottle", words.name(bottle)),
                input(
                        "why.input.fill",
                        words.of(
                                "why.input.fill-value",
                                format.millilitres(bottle.fillMillilitres()),
                                format.millilitres(bottle.headspaceMillilitres()))),
                input("why.input.bottle-temperature", words.warmth(lot)),
                input("why.input.carbonation", format.volumes(lot.carbonation().atPresent())),
                new Input(
                        words.of("why.input.strongest", lot.left()),
                        format.bars(lot.pressure().strongestBottle())),
                input(
                        "why.input.load",
                        words.of(
                                "why.input.load-value",
                                format.bars(lot.pressure().memoryBar()))));
    }

    private List<Input> light(Batch batch, LotOutlook lot) {
        return List.of(
                input("why.input.glass", words.name(lot.lot().colour())),
                input(
                        "why.input.stands",
                        words.of(
                                "why.input.stands-value",
                                lot.place().name(),
                                lot.place().light().kind())),
                input(
                        "why.input.bitterness",
                        words.of(
                                "why.input.bitterness-value",
                                words.format().number(batch.beer().bitternessIbu(), 0))),
                input(
                        "why.input.colour",
                        words.of(
                                "why.input.colour-value",
                                words.format().number(batch.beer().colourEbc(), 0))));
    }

    private List<Input> bestBefore(Batch batch, LotOutlook lot) {
        QuantityFormat format = words.format();
        return List.of(
                input(
                        "why.input.used",
                        words.of(
                                "why.input.days",
                                format.number(lot.ageing().daysUsed().median(), 0))),
                input(
                        "why.input.budget",
                        words.of(
                                "why.input.budget-value",
                                format.number(lot.ageing().budgetDays().median(), 0),
                                batch.beer().kind())),
                input("why.input.mean-kinetic", format.celsius(lot.temperature().meanKineticCelsius())),
                input("why.input.filling", words.name(batch.fillingMethod())),
                input("why.input.coverage", format.percent(lot.temperature().coverage())));
    }

    private List<Input> ready(Batch batch, LotOutlook lot) {
        String never = words.of("figure.ready.never");
        List<Input> inputs = new ArrayList<>(List.of(
                input("why.input.earliest", lot.ready().early().map(words::day).orElse(never)),
                input("why.input.latest", lot.ready().late().map(words::day).orElse(never)),
                input("why.input.ready-now", words.format().percent(lot.ready().probabilityNow())),
                input(
                        "why.input.abv",
                        words.of(
                                "why.input.abv-value",
                                words.format().number(batch.beer().abvPercent(), 1)))));
        new LearnedWords(words).alone(lot).ifPresent(alone -> inputs.add(input("why.input.alone", alone)));
        return inputs;
    }

    private List<Assumption> assumptions(Batch batch, LotOutlook lot, FigureKind figure) {
        return switch (figure) {
            case CARBONATION -> carbonationAssumed(batch);
            case PRESSURE ->
                List.of(
                        assumed("why.assumed.beer-factor", Grade.ASSUMED),
                        assumed("why.assumed.air", Grade.ASSUMED),
                        assumed("why.assumed.uneven", Grade.COMMON_PRACTICE));
            case HEAT_LIMIT ->
                List.of(new Assumption(
                        words.of(
                                "why.assumed.basis",
                                lot.pressure().bottle().bottleClass(),
                                lot.pressure().bottle().bottleClass().basis()),
                        Grade.ASSUMED));
            case LIGHT ->
                List.of(
                        new Assumption(words.of("why.assumed.sun", LightUncertainty.BASIS), Grade.ASSUMED),
                        lot.place().light().measured()
                                ? assumed("why.assumed.light-measured", Grade.MEASURED_BY_YOU)
                                : assumed("why.assumed.light-usual", Grade.COMMON_PRACTICE));
            case BEST_BEFORE ->
                List.of(
                        assumed("why.assumed.budgets", Grade.COMMON_PRACTICE),
                        assumed("why.assumed.oxygen", Grade.ASSUMED));
            case READY ->
                Stream.of(
                                Stream.of(assumed("why.assumed.two-weeks", Grade.COMMON_PRACTICE)),
                                Stream.of(assumed("why.assumed.room", Grade.ASSUMED)),
                                lot.ready().alone().stream()
                                        .map(alone -> assumed("why.assumed.learned", Grade.ASSUMED)))
                        .flatMap(Function.identity())
                        .toList();
        };
    }

    private List<Assumption> carbonationAssumed(Batch batch) {
        List<Assumption> assumptions = new ArrayList<>(List.of(
                assumed("why.assumed.yield", Grade.ASSUMED),
                assumed("why.assumed.uptake", Grade.ASSUMED),
                assumed("why.assumed.cardinal", Grade.PUBLISHED)));
        batch.priming()
                .doses()
                .forEach(dose -> assumptions.add(new Assumption(
                        words.of("why.assumed.basis", sugar(dose), sugar(dose).basis()), Grade.PUBLISHED)));
        long readings = batch.readings().stream()
                .map(Reading::at)
                .filter(at -> !at.isAfter(words.at()))
                .count();
        if (readings > 0) {
            assumptions.add(new Assumption(words.of("why.assumed.readings", readings), Grade.MEASURED_BY_YOU));
        }
        return assumptions;
    }

    private Sugar sugar(SugarDose dose) {
        return words.outlook().cellar().sugar(dose.sugarId());
    }

    private Input input(String key, String value) {
        return new Input(words.of(key), value);
    }

    private Assumption assumed(String key, Grade grade) {
        return new Assumption(words.of(key), grade);
    }
}
