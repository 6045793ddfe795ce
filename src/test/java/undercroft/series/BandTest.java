package undercroft.series;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

final class BandTest {
    private static final Band CELSIUS = Band.of(
            new long[] {0, 10, 20},
            new double[] {0, Double.NaN, 10},
            new double[] {5, Double.NaN, 15},
            new double[] {10, Double.NaN, 20},
            new double[] {20, Double.NaN, 30},
            new double[] {100, Double.NaN, 37});

    /** Fixed points of the Fahrenheit scale: ice 32, steam 212. */
    @Test
    void everyLevelGoesIntoTheOtherUnitAndWhatIsNotKnownStaysSo() {
        Band fahrenheit = CELSIUS.mapRising(celsius -> celsius * 1.8 + 32);
        assertEquals(32, fahrenheit.lowAt(0));
        assertEquals(41, fahrenheit.lowerQuartileAt(0));
        assertEquals(50, fahrenheit.medianAt(0));
        assertEquals(68, fahrenheit.upperQuartileAt(0));
        assertEquals(212, fahrenheit.highAt(0));
        assertTrue(Double.isNaN(fahrenheit.medianAt(1)));
        assertEquals(10, CELSIUS.medianAt(0));
    }

    @Test
    void theMedianAloneLeavesOutWhatIsNotKnown() {
        assertEquals(TimeSeries.of(new long[] {0, 20}, new double[] {10, 20}), CELSIUS.medianSeries());
        assertEquals(
                TimeSeries.of(new long[] {0, 20}, new double[] {50, 68}),
                CELSIUS.medianSeries().map(celsius -> celsius * 1.8 + 32));
    }
}
