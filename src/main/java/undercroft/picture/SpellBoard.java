package undercroft.picture;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.ToDoubleFunction;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.spell.SpellImpact;
import undercroft.outlook.spell.SpellReview;

/** Spells by batches: a row for each batch that felt one, the worst first, with a mark for each spell in order of time. */
public record SpellBoard(List<Row> rows, long fromInclusive, long untilExclusive) {
    private static final long MARGIN_SECONDS = 3 * 86_400;
    private static final long LEAST_SECONDS = 28 * 86_400;

    public SpellBoard {
        rows = List.copyOf(rows);
    }

    /** A batch with its spells. */
    public record Row(String batchId, String name, Alert alert, List<Mark> marks) {
        public Row {
            marks = List.copyOf(marks);
        }
    }

    /** A spell of a batch. */
    public record Mark(SpellReview spell, SpellImpact impact) {
        /** The same spell of the same batch in another outlook, whatever became of it since. */
        public boolean isSameAs(Mark other) {
            return impact.batchId().equals(other.impact.batchId())
                    && spell.place().id().equals(other.spell.place().id())
                    && spell.from().equals(other.spell.from());
        }
    }

    public static SpellBoard of(CellarOutlook outlook) {
        Map<String, List<Mark>> byBatch = new LinkedHashMap<>();
        long first = outlook.at().getEpochSecond() - LEAST_SECONDS;
        for (SpellReview spell : outlook.spells()) {
            first = Math.min(first, spell.from().getEpochSecond());
            for (SpellImpact impact : spell.worstOfEachBatch()) {
                byBatch.computeIfAbsent(impact.batchId(), id -> new ArrayList<>())
                        .add(new Mark(spell, impact));
            }
        }
        List<Row> rows = new ArrayList<>();
        byBatch.values().forEach(marks -> rows.add(row(marks)));
        rows.sort(WORST_FIRST);
        return new SpellBoard(rows, first - MARGIN_SECONDS, outlook.at().getEpochSecond());
    }

    private static Row row(List<Mark> marks) {
        marks.sort(Comparator.comparing(mark -> mark.impact().since()));
        SpellImpact any = marks.get(0).impact();
        Alert alert = marks.stream().map(mark -> mark.impact().alert()).reduce(Alert.CLEAR, Alert::or);
        return new Row(any.batchId(), any.batchName(), alert, marks);
    }

    private static final Comparator<Row> WORST_FIRST = Comparator.comparing(Row::alert)
            .reversed()
            .thenComparing(Comparator.comparingDouble((Row row) -> sum(row, SpellImpact::hoursOverWorkingPressure))
                    .reversed())
            .thenComparing(Comparator.comparingDouble((Row row) -> sum(row, SpellImpact::shelfDaysCost))
                    .reversed())
            .thenComparing(Row::name);

    private static double sum(Row row, ToDoubleFunction<SpellImpact> figure) {
        return row.marks().stream()
                .mapToDouble(mark -> figure.applyAsDouble(mark.impact()))
                .sum();
    }

    public boolean isEmpty() {
        return rows.isEmpty();
    }

    /** The mark to look at first: the worst of the worst batch. */
    public Optional<Mark> first() {
        return rows.stream()
                .flatMap(row -> row.marks().stream()
                        .max(Comparator.comparing((Mark mark) -> mark.impact().alert())
                                .thenComparing(mark -> mark.spell().warm())
                                .thenComparingDouble(
                                        mark -> mark.impact().peakGaugeBar().high()))
                        .stream())
                .findFirst();
    }

    public Optional<Mark> find(Mark like) {
        return rows.stream()
                .flatMap(row -> row.marks().stream())
                .filter(mark -> mark.isSameAs(like))
                .findFirst();
    }
}
