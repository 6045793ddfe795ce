package undercroft.calc.gas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

/** The oracle is the full closed-bottle model, which has its own outside checks. */
final class PressureTableTest {
    private static final ClosedBottle BOTTLE = ClosedBottle.of(520, 500, 5, 20, 1.01325);
    private static final PressureTable TABLE = PressureTable.of(BOTTLE, 12, 0.95);

    @Property(tries = 2000, seed = "20260104")
    void aTableAnswersLikeTheFullModel(
            @ForAll @DoubleRange(min = -2, max = 45) double celsius,
            @ForAll @DoubleRange(min = 0.5, max = 11) double grams,
            @ForAll @DoubleRange(min = 0.88, max = 1.0) double factor,
            @ForAll @DoubleRange(min = 0.79, max = 1) double amount,
            @ForAll @DoubleRange(min = 0, max = 1) double trapped) {
        double full = BOTTLE.at(celsius, grams, factor, amount, trapped).gaugeBar();
        double quick = TABLE.row().at(celsius).gaugeBar(grams, factor, amount, trapped);
        assertEquals(full, quick, 0.03 + 0.005 * Math.abs(full));
    }

    /** Bottles capped on foam keep little air or none. */
    @Property(tries = 2000, seed = "20260104")
    void aTableAnswersLikeTheFullModelWithLittleAir(
            @ForAll @DoubleRange(min = -2, max = 45) double celsius,
            @ForAll @DoubleRange(min = 0.5, max = 11) double grams,
            @ForAll @DoubleRange(min = 0.88, max = 1.0) double factor,
            @ForAll @DoubleRange(min = 0, max = 0.79) double amount,
            @ForAll @DoubleRange(min = 0, max = 1) double trapped) {
        double full = BOTTLE.at(celsius, grams, factor, amount, trapped).gaugeBar();
        double quick = TABLE.row().at(celsius).gaugeBar(grams, factor, amount, trapped);
        assertEquals(full, quick, 0.03 + 0.005 * Math.abs(full));
    }

    @Test
    void theAmountOfAirChangesThePressureWithoutAJump() {
        PressureTable.Row row = TABLE.row().at(20);
        double before = row.gaugeBar(5, 0.95, 0, 0.3);
        for (double amount = 0.001; amount <= 1; amount += 0.001) {
            double bar = row.gaugeBar(5, 0.95, amount, 0.3);
            assertTrue(bar >= before && bar - before < 0.002, "at " + amount);
            before = bar;
        }
    }

    @Test
    void beyondItsGasTheTableGoesOnStraight() {
        PressureTable.Row row = TABLE.row().at(20);
        double slope = row.gaugeBar(12, 0.95, 0.9, 0.5) - row.gaugeBar(11.5, 0.95, 0.9, 0.5);
        assertEquals(row.gaugeBar(12, 0.95, 0.9, 0.5) + slope, row.gaugeBar(12.5, 0.95, 0.9, 0.5), 1e-3);
    }

    @Test
    void aTableOfNoGasIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> PressureTable.of(BOTTLE, 0, 0.95));
        assertThrows(IllegalArgumentException.class, () -> PressureTable.of(BOTTLE, 30, 0.95));
        assertThrows(IllegalArgumentException.class, () -> PressureTable.of(BOTTLE, 12, 2));
    }
}
