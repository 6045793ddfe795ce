package undercroft.calc.conditioning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static undercroft.calc.conditioning.ReferenceBatch.gauge;
import static undercroft.calc.conditioning.ReferenceBatch.gravity;
import static undercroft.calc.conditioning.ReferenceBatch.wide;

import java.util.List;
import java.util.function.DoubleFunction;
import org.junit.jupiter.api.Test;

/**
 * A higher reading never lowers the forecast. Swept from what an ordinary batch shows upwards; what is allowed to fall is what
 * was found for a prototype, worked out for this project, unpublished.
 */
class HigherReadingTest {
    private static final double STEP = 0.4;

    private static void rises(DoubleFunction<List<Observation>> seen, double from, double until, double step) {
        ReferenceBatch batch = wide(0.05);
        double strongest = 0;
        double median = 0;
        double volumes = 0;
        double heat = Double.POSITIVE_INFINITY;
        for (double read = from; step > 0 ? read <= until : read >= until; read += step) {
            ReferenceBatch.Figures found = batch.figures(seen.apply(read));
            assertTrue(
                    found.strongest().high() > strongest - 0.1, read + ": " + strongest + " to " + found.strongest());
            assertTrue(found.bar().median() > median - 0.1, read + ": " + median + " to " + found.bar());
            assertTrue(found.atEnd().high() > volumes - 0.3, read + ": " + volumes + " to " + found.atEnd());
            assertTrue(found.heatLimit() < heat + 1, read + ": " + heat + " to " + found.heatLimit());
            strongest = Math.max(strongest, found.strongest().high());
            median = Math.max(median, found.bar().median());
            volumes = Math.max(volumes, found.atEnd().high());
            heat = Math.min(heat, found.heatLimit());
        }
    }

    @Test
    void ofAGaugeLate() {
        rises(bar -> List.of(gauge(68, bar, 0)), 2.2, 9.8, STEP);
    }

    @Test
    void ofAGaugeEarly() {
        rises(bar -> List.of(gauge(20, bar, 0)), 2.2, 9.8, STEP);
    }

    @Test
    void ofASecondBottle() {
        rises(bar -> List.of(gauge(40, 2.6, 0), gauge(68, bar, 1)), 2.2, 9.8, STEP);
    }

    @Test
    void ofAFallInGravity() {
        rises(points -> List.of(gravity(68, points)), 2, -14, -1);
    }

    /** A leak, not a calm batch: 95 % within 0.3 bar of what no reading gives. */
    @Test
    void aGaugeThatShowsNothingCalmsNobody() {
        double unread = wide(0.05).figures(List.of()).strongest().high();
        double leaking =
                wide(0.05).figures(List.of(gauge(68, 0, 0))).strongest().high();
        assertEquals(unread, leaking, 0.3);
    }
}
