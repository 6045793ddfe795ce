package undercroft.plot.scale;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.LongRange;
import org.junit.jupiter.api.Test;

class TimeScaleTest {
    private static final TimeScale SCALE = new TimeScale(1_000_000, 1_700_000, 40, 740);

    @Property(tries = 200, seed = "20260104")
    void aPixelFindsItsInstantAndAnInstantItsPixel(@ForAll @LongRange(min = 1_000_000, max = 1_700_000) long time) {
        assertEquals(time, SCALE.epochAt(SCALE.xAt(time)));
    }

    @Property(tries = 200, seed = "20260104")
    void theInstantUnderTheCursorStaysWhileZooming(
            @ForAll @DoubleRange(min = 40, max = 740) double x,
            @ForAll @DoubleRange(min = 0.1, max = 10) double factor) {
        TimeScale zoomed = SCALE.zoomedAbout(x, factor);
        assertEquals(x, zoomed.xAt(SCALE.epochAt(x)), 0.05);
        assertEquals(700_000 / factor, (double) (zoomed.until() - zoomed.from()), 1);
    }

    @Test
    void pullingToTheRightShowsEarlierTimes() {
        TimeScale panned = SCALE.pannedBy(70);
        assertEquals(930_000, panned.from());
        assertEquals(1_630_000, panned.until());
    }

    @Test
    void zoomingStopsAtAMinuteAndAtACentury() {
        TimeScale close = SCALE.zoomedAbout(100, 1e12);
        assertEquals(TimeScale.SHORTEST_SECONDS, close.until() - close.from());
        TimeScale far = SCALE.zoomedAbout(100, 1e-12);
        assertEquals(TimeScale.LONGEST_SECONDS, far.until() - far.from());
    }

    @Test
    void valuesRiseUpward() {
        ValueScale values = new ValueScale(1, 3, 20, 120);
        assertEquals(120, values.yAt(1));
        assertEquals(20, values.yAt(3));
        assertTrue(values.yAt(2.5) < values.yAt(1.5));
        assertEquals(2.25, values.valueAt(values.yAt(2.25)), 1e-12);
    }
}
