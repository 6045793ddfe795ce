package undercroft.plot;

import java.util.ArrayList;
import java.util.List;

/**
 * One plot of a stack.
 *
 * @param title written above the plot
 * @param layers from back to front
 * @param weight share of the stack's height against the other plots
 */
public record Plot(String title, ValueAxis axis, List<Layer> layers, double weight) {
    public Plot {
        if (!(weight > 0) || Double.isInfinite(weight)) {
            throw new IllegalArgumentException("a weight is above zero");
        }
        layers = List.copyOf(layers);
    }

    public static Plot of(String title, ValueAxis axis, Layer... layers) {
        return new Plot(title, axis, List.of(layers), 1);
    }

    public Plot with(Layer layer) {
        List<Layer> more = new ArrayList<>(layers);
        more.add(layer);
        return new Plot(title, axis, more, weight);
    }

    public Plot withWeight(double newWeight) {
        return new Plot(title, axis, layers, newWeight);
    }
}
