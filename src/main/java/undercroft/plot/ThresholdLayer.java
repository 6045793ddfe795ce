package undercroft.plot;

import undercroft.plot.mark.Role;

/** A level across the whole width, dashed, with its label; an automatic axis reaches out to it. */
public record ThresholdLayer(double value, Role role, String label) implements Layer {
    public ThresholdLayer {
        if (!Double.isFinite(value)) {
            throw new IllegalArgumentException("a threshold is a number");
        }
    }
}
