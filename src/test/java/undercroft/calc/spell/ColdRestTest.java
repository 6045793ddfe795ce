package undercroft.calc.spell;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.junit.jupiter.api.Test;
import undercroft.series.Track;

class ColdRestTest {
    private static final int HOUR = 3600;

    @Test
    void aDayInTheColdIsLongEnough() {
        Track track = of(30, 24.0, 5.0, 40);
        assertFalse(ColdRest.since(track, 10 * HOUR, 50 * HOUR).isLongEnough());
        ColdRest rest = ColdRest.since(track, 10 * HOUR, 54 * HOUR);
        assertEquals(24, rest.hours(), 1e-9);
        assertTrue(rest.isLongEnough());
        assertEquals(5, rest.celsius());
    }

    @Test
    void coldBeforeItHappenedDoesNotCount() {
        Track cold = Track.constant(0, HOUR, 100, 4);
        assertEquals(6, ColdRest.since(cold, 60 * HOUR, 66 * HOUR).hours(), 1e-9);
    }

    @Test
    void oneWarmHourStartsTheDayAnew() {
        double[] values = new double[60];
        Arrays.fill(values, 5);
        values[40] = 12;
        ColdRest rest = ColdRest.since(Track.of(0, HOUR, values, new double[60]), 0, 59 * HOUR);
        assertEquals(18, rest.hours(), 1e-9);
    }

    @Test
    void warmBottlesHaveNoRest() {
        ColdRest rest = ColdRest.since(Track.constant(0, HOUR, 50, 21), 0, 49 * HOUR);
        assertEquals(0, rest.hours());
        assertEquals(21, rest.celsius());
    }

    private static Track of(int warmHours, double warm, double cold, int coldHours) {
        double[] values = new double[warmHours + coldHours];
        Arrays.fill(values, 0, warmHours, warm);
        Arrays.fill(values, warmHours, values.length, cold);
        return Track.of(0, HOUR, values, new double[values.length]);
    }
}
