package undercroft.plot.scale;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Locale;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class ValueTicksTest {
    /** Heckbert, Graphics Gems (1990), p. 62, from memory: for data from 105 to 543 the labels are hundreds. */
    @Test
    void hundredsSuitTheBookExample() {
        ValueTicks ticks = ValueTicks.of(105, 543, 5);
        assertEquals(100, ticks.step());
        assertEquals(200, ticks.at(0));
        assertEquals(4, ticks.count());
    }

    @Test
    void tenthsAreWrittenExactly() {
        ValueTicks ticks = ValueTicks.of(-0.21, 0.32, 6);
        StringBuilder labels = new StringBuilder();
        for (int i = 0; i < ticks.count(); i++) {
            labels.append(ticks.label(i, Locale.UK)).append(' ');
        }
        assertEquals("\u22120.2 \u22120.1 0.0 0.1 0.2 0.3 ", labels.toString());
        assertEquals("0,3", ticks.label(5, Locale.GERMANY));
    }

    @Property(tries = 500, seed = "20260104")
    void stepsAreOneTwoOrFiveTimesAPowerOfTen(
            @ForAll @DoubleRange(min = -1e6, max = 1e6) double low,
            @ForAll @DoubleRange(min = 0.01, max = 1e6) double span,
            @ForAll @IntRange(min = 2, max = 12) int maxTicks) {
        ValueTicks ticks = ValueTicks.of(low, low + span, maxTicks);
        assertTrue(ticks.count() <= maxTicks);
        assertTrue(ticks.count() * 4 + 3 >= maxTicks, "room is used");
        double mantissa = ticks.step() / Math.pow(10, Math.floor(Math.log10(ticks.step() * 1.0000001)));
        assertTrue(
                Math.abs(mantissa - 1) < 1e-6 || Math.abs(mantissa - 2) < 1e-6 || Math.abs(mantissa - 5) < 1e-6,
                "mantissa " + mantissa);
        for (int i = 0; i < ticks.count(); i++) {
            double slack = 1e-6 * ticks.step();
            assertTrue(ticks.at(i) >= low - slack && ticks.at(i) <= low + span + slack);
        }
    }
}
