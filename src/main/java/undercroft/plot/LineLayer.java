package undercroft.plot;

import undercroft.plot.mark.Stroke;
import undercroft.series.TimeSeries;

/**
 * Measured values as a line, broken where neighbours are further apart than {@code longestStepSeconds}.
 *
 * @param label written beside the line where there is room; empty for none
 */
public record LineLayer(TimeSeries series, long longestStepSeconds, Stroke stroke, String label) implements Layer {
    public LineLayer {
        if (longestStepSeconds <= 0) {
            throw new IllegalArgumentException("the longest step is above zero");
        }
    }
}
