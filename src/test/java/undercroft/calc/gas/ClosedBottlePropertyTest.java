package undercroft.calc.gas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import java.lang.management.ManagementFactory;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;

class ClosedBottlePropertyTest {
    private static final double MOLAR_MASS = 44.0095;

    /** Conservation of mass, counted again from the state: gas by pV/ZRT, beer as what the glass holds beside it. */
    @Property(seed = "20260104")
    void noCarbonDioxideIsLostOrMade(
            @ForAll @DoubleRange(min = -5, max = 60) double celsius,
            @ForAll @DoubleRange(min = 0, max = 16) double grams,
            @ForAll @DoubleRange(min = 0.8, max = 1) double factor,
            @ForAll @DoubleRange(min = 0, max = 1) double air,
            @ForAll @DoubleRange(min = 0, max = 1) double trapped,
            @ForAll @DoubleRange(min = 0.1, max = 40) double headspacePercent) {
        ClosedBottle bottle = ClosedBottle.of(500, 500 * (1 - headspacePercent / 100), 5, 20, 1.01325);
        BottleState state = bottle.at(celsius, grams, factor, air, trapped);
        double glass = 0.5 * (1 + 27e-6 * (celsius - 20)) * (1 + 3.5e-5 * state.gaugeBar());
        double room = state.headspaceMillilitres() / 1000;
        double rt = 0.08314462618 * (celsius + 273.15);
        double z = 1 + CarbonDioxideSolubility.secondVirial(celsius) * 1e-3 * state.carbonDioxideBar() / rt;
        double gas = state.carbonDioxideBar() * room / (z * rt) * MOLAR_MASS;
        double inBeer = state.dissolvedGramsPerLitre() * (glass - room);
        double total = grams * 0.5 * (1 - headspacePercent / 100);
        assertEquals(total, gas + inBeer, 1e-9 * total + 1e-15);
        assertTrue(Double.isFinite(state.gaugeBar()));
    }

    @Property(seed = "20260104")
    void warmthRaisesThePressure(
            @ForAll @DoubleRange(min = -5, max = 59) double celsius,
            @ForAll @DoubleRange(min = 1, max = 16) double grams,
            @ForAll @DoubleRange(min = 0, max = 1) double trapped,
            @ForAll @DoubleRange(min = 2, max = 40) double headspacePercent) {
        risesWithWarmth(celsius, grams, trapped, headspacePercent);
    }

    /** Below some 8 °C beer expands no more than glass, so that a brim-full bottle need not press harder when warmed. */
    @Property(seed = "20260104")
    void warmthRaisesThePressureOfOverfilledBottlesToo(
            @ForAll @DoubleRange(min = 8, max = 59) double celsius,
            @ForAll @DoubleRange(min = 1, max = 16) double grams,
            @ForAll @DoubleRange(min = 0, max = 1) double trapped,
            @ForAll @DoubleRange(min = 0.1, max = 2) double headspacePercent) {
        risesWithWarmth(celsius, grams, trapped, headspacePercent);
    }

    private static void risesWithWarmth(double celsius, double grams, double trapped, double headspacePercent) {
        ClosedBottle bottle = ClosedBottle.of(500, 500 * (1 - headspacePercent / 100), 5, 20, 1.01325);
        double cool = bottle.at(celsius, grams, 0.95, 1, trapped).gaugeBar();
        assertTrue(bottle.at(celsius + 1, grams, 0.95, 1, trapped).gaugeBar() > cool);
    }

    @Property(seed = "20260104")
    void moreGasPressesHarderAndThirstierBeerLess(
            @ForAll @DoubleRange(min = -5, max = 60) double celsius,
            @ForAll @DoubleRange(min = 1, max = 16) double grams,
            @ForAll @DoubleRange(min = 0.8, max = 0.99) double factor,
            @ForAll @DoubleRange(min = 0, max = 1) double trapped,
            @ForAll @DoubleRange(min = 3, max = 40) double headspacePercent) {
        ClosedBottle bottle = ClosedBottle.of(500, 500 * (1 - headspacePercent / 100), 5, 20, 1.01325);
        double gauge = bottle.at(celsius, grams, factor, 1, trapped).gaugeBar();
        assertTrue(bottle.at(celsius, grams + 0.1, factor, 1, trapped).gaugeBar() > gauge);
        assertTrue(bottle.at(celsius, grams, factor + 0.01, 1, trapped).gaugeBar() < gauge);
    }

    /** The fast path against the bracketing solution, from no guess, a near one and a wild one, down to liquid-full. */
    @Property(seed = "20260104")
    void theFastPathFindsTheSamePressure(
            @ForAll @DoubleRange(min = -5, max = 60) double celsius,
            @ForAll @DoubleRange(min = 0, max = 16) double grams,
            @ForAll @DoubleRange(min = 0.8, max = 1) double factor,
            @ForAll @DoubleRange(min = 0, max = 1) double air,
            @ForAll @DoubleRange(min = 0, max = 1) double trapped,
            @ForAll @DoubleRange(min = 0.1, max = 40) double headspacePercent,
            @ForAll @DoubleRange(min = -1, max = 20) double wild) {
        ClosedBottle bottle = ClosedBottle.of(500, 500 * (1 - headspacePercent / 100), 5, 20, 1.01325);
        double gauge = bottle.at(celsius, grams, factor, air, trapped).gaugeBar();
        assertEquals(gauge, bottle.gaugeBar(celsius, grams, factor, air, trapped, Double.NaN), 1e-4);
        assertEquals(gauge, bottle.gaugeBar(celsius, grams, factor, air, trapped, gauge + 0.1), 1e-4);
        assertEquals(gauge, bottle.gaugeBar(celsius, grams, factor, air, trapped, wild), 1e-4);
    }

    @Test
    void theFastPathAllocatesNothing() {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        ClosedBottle bottle = ClosedBottle.of(520, 500, 5, 20, 1.01325);
        long thread = Thread.currentThread().getId();
        run(bottle);
        long before = threads.getThreadAllocatedBytes(thread);
        double sum = run(bottle);
        long allocated = threads.getThreadAllocatedBytes(thread) - before;
        assertTrue(sum > 0);
        assertTrue(allocated < 1000, allocated + " bytes in 20,000 calls");
    }

    private static double run(ClosedBottle bottle) {
        double sum = 0;
        double gauge = 2;
        for (int i = 0; i < 20_000; i++) {
            gauge = bottle.gaugeBar(5 + i % 30, 5, 0.95, 0.9, 0.5, gauge);
            sum += gauge;
        }
        return sum;
    }
}
