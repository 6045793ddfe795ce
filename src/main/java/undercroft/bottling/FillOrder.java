package undercroft.bottling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import undercroft.calc.gas.PressureLimits;
import undercroft.catalogue.BottleType;
import undercroft.cellar.BottleStock;
import undercroft.quantity.Phrase;
import undercroft.quantity.Volume;

/**
 * Which bottles are filled and what does not fit. Bottles are taken in the order they were set out; one plastic bottle, where
 * there is one, comes before all others, since it can be squeezed later to feel the pressure.
 *
 * @param rows in the order of the plan
 * @param bottleLitres beer there is for bottles
 * @param leftOverLitres what is left when no further bottle can be filled whole
 */
public record FillOrder(List<FillRow> rows, double bottleLitres, double leftOverLitres) {
    /** Below the rim of the bottle, mm (common practice, no source). */
    public static final Phrase FILL_ADVICE = Phrase.of("bottling.fill-height");

    /** What is less than this is wetness, not a rest. */
    private static final double HARDLY_ANYTHING_LITRES = 0.03;

    private static final double ROUNDING = 1e-9;

    public FillOrder {
        rows = List.copyOf(rows);
    }

    /** Fills the plan's bottles; of bottles that are refused, none. */
    static FillOrder of(BottlingPlan plan) {
        double litres = plan.filling().shares().bottleLitres();
        int count = plan.bottles().size();
        int[] filled = new int[count];
        int test = testBottle(plan);
        double left = litres;
        if (test >= 0 && fits(plan, test, 0, left) > 0) {
            filled[test] = 1;
            left -= plan.bottles().get(test).fillMillilitres() / 1000;
        }
        List<FillRow> rows = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            BottleType bottle = plan.bottles().get(i);
            boolean wanted = plan.filling().wish().targetVolumes() > 0;
            Optional<Phrase> refusal = wanted ? PressureLimits.refusal(bottle) : Optional.empty();
            if (refusal.isEmpty()) {
                int more = fits(plan, i, filled[i], left);
                filled[i] += more;
                left -= more * bottle.fillMillilitres() / 1000;
            }
            BottleStock stock = plan.filling().bottles().get(i);
            rows.add(new FillRow(bottle, stock.scuffed(), stock.available(), filled[i], refusal));
        }
        return new FillOrder(rows, litres, Math.max(0, left));
    }

    private static int fits(BottlingPlan plan, int index, int filled, double litres) {
        double each = plan.bottles().get(index).fillMillilitres() / 1000;
        int whole = (int) Math.floor(litres / each + ROUNDING);
        return Math.min(whole, plan.filling().bottles().get(index).available() - filled);
    }

    private static int testBottle(BottlingPlan plan) {
        for (int i = 0; i < plan.bottles().size(); i++) {
            boolean plastic = plan.bottles().get(i).bottleClass().isPlastic();
            if (plastic && plan.filling().bottles().get(i).available() > 0) {
                return i;
            }
        }
        return -1;
    }

    /** Bottles filled, over all kinds. */
    public int filled() {
        return rows.stream().mapToInt(FillRow::filled).sum();
    }

    /** Beer in the filled bottles. */
    public double filledLitres() {
        return rows.stream().mapToDouble(FillRow::filledLitres).sum();
    }

    /** The plastic bottle to be filled first and squeezed later, if there is one. */
    public Optional<BottleType> testBottle() {
        return rows.stream()
                .filter(row -> row.filled() > 0 && row.bottle().bottleClass().isPlastic())
                .map(FillRow::bottle)
                .findFirst();
    }

    /** What should be said about the bottles. */
    public List<Phrase> notes() {
        List<Phrase> notes = new ArrayList<>();
        rest().ifPresent(notes::add);
        for (FillRow row : rows) {
            if (row.refusal().isEmpty() && row.leftEmpty() > 0) {
                notes.add(Phrase.of("bottling.note.empty", row.leftEmpty(), row.available(), row.bottle()));
            }
        }
        notes.add(testBottle()
                .map(test -> Phrase.of("bottling.note.test-bottle", test))
                .orElseGet(() -> Phrase.of("bottling.note.add-test-bottle")));
        return notes;
    }

    private Optional<Phrase> rest() {
        if (leftOverLitres < HARDLY_ANYTHING_LITRES) {
            return Optional.empty();
        }
        Volume rest = Volume.ofLitres(leftOverLitres);
        return rows.stream()
                .filter(row -> row.refusal().isEmpty() && row.leftEmpty() > 0)
                .map(FillRow::bottle)
                .min(Comparator.comparingDouble(BottleType::fillMillilitres))
                .map(next -> Phrase.of(
                        "bottling.note.part-full",
                        rest,
                        Math.round(100 * rest.millilitres() / next.fillMillilitres()),
                        next))
                .or(() -> Optional.of(Phrase.of("bottling.note.no-bottle-left", rest)));
    }
}
