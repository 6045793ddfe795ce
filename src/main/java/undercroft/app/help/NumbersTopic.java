package undercroft.app.help;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import undercroft.calc.ageing.ShelfLife;
import undercroft.catalogue.BeerStyle;
import undercroft.catalogue.BottleClass;
import undercroft.catalogue.Listed;
import undercroft.catalogue.Sugars;
import undercroft.catalogue.YeastStrain;
import undercroft.outlook.lot.FigureKind;
import undercroft.quantity.Interval;
import undercroft.wording.Keys;
import undercroft.wording.Messages;
import undercroft.wording.QuantityFormat;

/** How the numbers are made: each figure as its own grounds tell it, and what the catalogue lists with its sources. */
record NumbersTopic(Messages messages, QuantityFormat format) {
    private enum Ground {
        CARBONATION,
        PRESSURE,
        LIMITS,
        AIR,
        FROST,
        LIGHT,
        KEEPING,
        CHILLING,
        LOGS,
        LEARNING
    }

    List<HelpBlock> blocks() {
        List<HelpBlock> blocks = new ArrayList<>();
        blocks.add(new HelpBlock.Paragraph(messages.of("numbers.intro")));
        blocks.add(new HelpBlock.Heading(messages.of("numbers.figures")));
        blocks.add(new HelpBlock.Terms(
                Arrays.stream(FigureKind.values()).map(this::figure).toList()));
        blocks.add(new HelpBlock.Heading(messages.of("numbers.behind")));
        blocks.add(new HelpBlock.Terms(Arrays.stream(Ground.values())
                .map(ground -> new HelpBlock.Term(
                        messages.of(Keys.of("numbers.title", ground)), messages.of(Keys.of("numbers.text", ground))))
                .toList()));
        blocks.add(new HelpBlock.Paragraph(messages.of("numbers.limits")));
        blocks.add(new HelpBlock.Heading(messages.of("numbers.bottles")));
        blocks.add(new HelpBlock.Paragraph(messages.of("numbers.bottles.text")));
        blocks.add(bottles());
        blocks.add(new HelpBlock.Heading(messages.of("numbers.sugars")));
        blocks.add(sugars());
        blocks.add(new HelpBlock.Heading(messages.of("numbers.yeasts")));
        blocks.add(new HelpBlock.Paragraph(messages.of("numbers.yeasts.text")));
        blocks.add(yeasts());
        blocks.add(new HelpBlock.Heading(messages.of("numbers.styles")));
        blocks.add(new HelpBlock.Paragraph(messages.of("numbers.styles.text")));
        blocks.add(styles());
        return blocks;
    }

    private HelpBlock.Term figure(FigureKind figure) {
        String basis = messages.of(Keys.of("why.basis", figure), ShelfLife.BASIS);
        String how = messages.sentence(messages.of(Keys.of("why.how", figure)));
        return new HelpBlock.Term(
                messages.of(Keys.of("figure.label", figure)),
                how + " " + messages.sentence(messages.of("help.source", basis)));
    }

    private HelpBlock bottles() {
        return table(
                List.of("numbers.bottles.class", "numbers.bottles.caution", "numbers.bottles.limit", "numbers.basis"),
                Arrays.stream(BottleClass.values())
                        .map(one -> List.of(
                                named(one),
                                format.barLimit(one.cautionBar()),
                                format.barLimit(one.workingPressureBar()),
                                one.basis()))
                        .toList());
    }

    private HelpBlock sugars() {
        return table(
                List.of("numbers.sugars.name", "numbers.sugars.yield", "numbers.basis"),
                Sugars.STANDARD.stream()
                        .map(one -> List.of(named(one), around(one.yield(), 2), one.basis()))
                        .toList());
    }

    private HelpBlock yeasts() {
        return table(
                List.of(
                        "numbers.yeasts.name",
                        "numbers.yeasts.lowest",
                        "numbers.yeasts.best",
                        "numbers.yeasts.highest",
                        "numbers.yeasts.alcohol"),
                Arrays.stream(YeastStrain.values())
                        .map(one -> List.of(
                                named(one),
                                format.statedCelsius(one.minimumCelsius()),
                                format.statedCelsius(one.optimumCelsius()),
                                format.statedCelsius(one.maximumCelsius()),
                                messages.of("numbers.yeasts.alcohol-value", format.lean(one.alcoholLimitPercent(), 1))))
                        .toList());
    }

    private HelpBlock styles() {
        return table(
                List.of(
                        "numbers.styles.name",
                        "numbers.styles.days",
                        "numbers.styles.volumes",
                        "numbers.styles.serving"),
                Arrays.stream(BeerStyle.values())
                        .map(one -> List.of(
                                named(one),
                                around(one.keepingDaysAt20Celsius(), 0),
                                format.volumeRange(one.targetVolumes()),
                                messages.of(
                                        "numbers.range",
                                        format.statedCelsius(
                                                one.servingCelsius().low()),
                                        format.statedCelsius(
                                                one.servingCelsius().high()))))
                        .toList());
    }

    private String named(Listed one) {
        return messages.capital(messages.name(one));
    }

    private String around(Interval values, int decimals) {
        return messages.of("figure.around", format.number(values.median(), decimals), format.range(values, decimals));
    }

    private HelpBlock table(List<String> columns, List<List<String>> rows) {
        return new HelpBlock.Table(columns.stream().map(messages::of).toList(), rows);
    }
}
