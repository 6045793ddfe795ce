package undercroft.app.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import undercroft.cellar.Batch;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.lot.FigureKind;
import undercroft.outlook.lot.LotOutlook;
import undercroft.picture.ComparePicture;
import undercroft.picture.ComparePicture.Compared;
import undercroft.plot.PlotStack;
import undercroft.wording.FigureWords;
import undercroft.wording.Messages;
import undercroft.wording.ShelfWords;

/**
 * Two or three batches side by side.
 *
 * @param names of the batches, in the order chosen
 * @param told what was told of them: the recipe, the bottles, the place
 * @param today how they are at the moment looked at
 */
public record ComparePage(List<String> names, List<Row> told, List<Row> today, PlotStack picture) {
    public ComparePage {
        names = List.copyOf(names);
        told = List.copyOf(told);
        today = List.copyOf(today);
    }

    /** One quantity of each batch. */
    public record Row(String label, List<String> values) {
        public Row {
            values = List.copyOf(values);
        }

        /** Whether the batches are not alike in it. */
        public boolean differs() {
            return values.stream().distinct().count() > 1;
        }
    }

    /** Batches that are not capped, or not there, are left out. */
    public static ComparePage of(CellarOutlook outlook, List<String> batchIds, boolean fromCapping, Messages messages) {
        ShelfWords words = ShelfWords.of(outlook, messages);
        List<Compared> compared = batchIds.stream()
                .flatMap(id ->
                        outlook.batches().stream().filter(batch -> batch.id().equals(id) && batch.isCapped()))
                .map(batch -> new Compared(batch, batch.mainLot()))
                .toList();
        return new Writer(outlook, words, compared).page(fromCapping);
    }

    private record Writer(CellarOutlook outlook, ShelfWords words, List<Compared> compared) {
        private ComparePage page(boolean fromCapping) {
            return new ComparePage(
                    compared.stream().map(each -> each.batch().batch().name()).toList(),
                    told(),
                    today(),
                    ComparePicture.of(compared, words, fromCapping));
        }

        private Row row(String key, Function<Compared, String> value) {
            return new Row(words.of(key), compared.stream().map(value).toList());
        }

        private List<Row> told() {
            return List.of(
                    row("compare.style", each -> words.name(batch(each).beer().kind())),
                    row(
                            "compare.abv",
                            each -> words.of(
                                    "compare.percent",
                                    words.format().number(batch(each).beer().abvPercent(), 1))),
                    row(
                            "compare.target",
                            each -> batch(each).priming().targetVolumes().isPresent()
                                    ? words.format()
                                            .volumes(batch(each)
                                                    .priming()
                                                    .targetVolumes()
                                                    .getAsDouble())
                                    : words.of("compare.not-told")),
                    row("compare.sugar", this::sugar),
                    row(
                            "compare.bottle",
                            each -> words.name(
                                    outlook.cellar().bottleType(each.lot().lot().bottleTypeId()))),
                    row("compare.place", each -> each.lot().place().name()),
                    row(
                            "compare.mean",
                            each -> words.format()
                                    .celsius(each.lot().temperature().meanKineticCelsius())),
                    row(
                            "compare.days",
                            each -> words.format()
                                    .number(
                                            (double) words.dayNumber(
                                                    batch(each).cappedAt().orElseThrow()),
                                            0)));
        }

        private String sugar(Compared each) {
            double grams = batch(each).priming().doses().stream()
                    .mapToDouble(dose -> dose.grams())
                    .sum();
            return words.format().gramsPerLitre(grams / batch(each).priming().beerLitres());
        }

        private List<Row> today() {
            FigureWords figures = new FigureWords(words);
            List<Row> rows = new ArrayList<>();
            rows.add(row("compare.stage", each -> words.nameOf(each.lot().stage())));
            for (FigureKind figure : FigureKind.values()) {
                rows.add(new Row(
                        figures.label(figure),
                        compared.stream()
                                .map(each -> figures.value(lotFor(each, figure), figure))
                                .toList()));
            }
            rows.add(row(
                    "compare.left", each -> words.format().bottles(each.batch().bottlesLeft())));
            return rows;
        }

        private static LotOutlook lotFor(Compared each, FigureKind figure) {
            return each.batch().lotFor(figure);
        }

        private static Batch batch(Compared each) {
            return each.batch().batch();
        }
    }
}
