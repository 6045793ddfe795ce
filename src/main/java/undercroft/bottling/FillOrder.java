package undercroft.bottling;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import undercroft.calc.gas.PressureLimits;
import undercroft.catalogue.BottleType;
import undercroft.cellar.BottleStock;

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
    public static final String FILL_ADVICE =
            "Leave 25 to 40 mm below the rim, the same in every bottle; never less than"
                    + " 15 mm, which leaves no room to expand, nor more than 60 mm, which shuts in air.";

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
            Optional<String> refusal = wanted ? PressureLimits.refusal(bottle) : Optional.empty();
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

    /** What should be said about the bottles, as sentences. */
    public List<String> notes() {
        List<String> notes = new ArrayList<>();
        rest().ifPresent(notes::add);
        for (FillRow row : rows) {
            if (row.refusal().isEmpty() && row.leftEmpty() > 0) {
                notes.add(row.leftEmpty() + " of " + row.available() + " × "
                        + row.bottle().label() + " stay empty: there is no beer for them.");
            }
        }
        notes.add(
                testBottle().isPresent()
                        ? "Fill one " + testBottle().get().label()
                                + " first and mark it: squeezed, it tells how the pressure rises."
                        : "Add one small plastic bottle, or one with a pressure gauge, filled like the others: it shows how"
                                + " the pressure rises.");
        return notes;
    }

    private Optional<String> rest() {
        if (leftOverLitres < HARDLY_ANYTHING_LITRES) {
            return Optional.empty();
        }
        Optional<FillRow> next = rows.stream()
                .filter(row -> row.refusal().isEmpty() && row.leftEmpty() > 0)
                .min(Comparator.comparingDouble(row -> row.bottle().fillMillilitres()));
        if (next.isPresent()) {
            double share = leftOverLitres * 1000 / next.get().bottle().fillMillilitres();
            return Optional.of(String.format(
                    Locale.ROOT,
                    "%.0f mL are left over, %.0f %% of a %s: taste it, do not cap it, for a bottle part full shuts in too"
                            + " much air.",
                    leftOverLitres * 1000,
                    share * 100,
                    next.get().bottle().label()));
        }
        return Optional.of(String.format(
                Locale.ROOT, "%.1f L find no bottle: set out more, or give them to the keg.", leftOverLitres));
    }
}
