package undercroft.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;

class ReadoutTest {
    @Test
    void everyPlotSaysItsMedianAndBandUnderTheCursor() {
        List<Readout> readouts = SamplePlots.stack("Carbonation, vol").valuesAt(SamplePlots.FROM);
        assertEquals("0.50 (0.30–0.70)\u00A0vol", readouts.get(0).text());
        assertEquals(0.5, readouts.get(0).value().orElseThrow(), 1e-12);
        assertEquals("0.5 (0.2–0.8)\u00A0bar", readouts.get(1).text());
    }

    @Test
    void betweenTwoInstantsTheValueLiesOnTheStraightLine() {
        PlotStack stack = SamplePlots.stack("C");
        double first = stack.valuesAt(SamplePlots.FROM).get(0).value().orElseThrow();
        double next = stack.valuesAt(SamplePlots.FROM + SamplePlots.DAY)
                .get(0)
                .value()
                .orElseThrow();
        double between = stack.valuesAt(SamplePlots.FROM + SamplePlots.DAY / 2)
                .get(0)
                .value()
                .orElseThrow();
        assertEquals((first + next) / 2, between, 1e-12);
    }

    @Test
    void nothingIsReadOutInsideAGapOrOutsideTheData() {
        PlotStack stack = SamplePlots.stack("C");
        Readout gap = stack.valuesAt(SamplePlots.GAP_BEGIN + SamplePlots.DAY).get(2);
        assertEquals("–", gap.text());
        assertTrue(gap.value().isEmpty());
        stack.valuesAt(SamplePlots.FROM - 1)
                .forEach(readout -> assertTrue(readout.value().isEmpty()));
    }

    @Test
    void aStripHoldsItsValueUntilTheNextAndEndsWhereItEnds() {
        PlotStack stack = SamplePlots.stack("C");
        assertEquals(
                "2.5\u00A0klx h",
                stack.valuesAt(SamplePlots.FROM + 11 * SamplePlots.DAY - 1)
                        .get(3)
                        .text());
        assertEquals(
                "0.1\u00A0klx h",
                stack.valuesAt(SamplePlots.FROM + 11 * SamplePlots.DAY).get(3).text());
        assertTrue(stack.valuesAt(SamplePlots.NOW).get(3).value().isEmpty());
    }
}
