package undercroft.plot;

import java.util.List;
import undercroft.plot.mark.MarkerShape;
import undercroft.plot.mark.Role;

/** Readings as markers with error bars from low to high. */
public record PointLayer(List<Point> points, MarkerShape shape, Role role) implements Layer {
    public PointLayer {
        points = List.copyOf(points);
    }

    /** One reading; low and high equal the value where its error is not known. */
    public record Point(long epochSecond, double value, double low, double high) {
        public Point {
            if (!(low <= value && value <= high) || Double.isInfinite(low) || Double.isInfinite(high)) {
                throw new IllegalArgumentException("a reading lies between its low and high");
            }
        }
    }
}
