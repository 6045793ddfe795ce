package undercroft.plot;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import undercroft.plot.mark.Points;
import undercroft.plot.scale.TimeScale;
import undercroft.plot.scale.ValueScale;
import undercroft.series.Band;

/**
 * The closed outlines between two levels of a band, one for each stretch without gap. Where samples lie closer than
 * pixels, each pixel column keeps its least and greatest value.
 */
final class BandOutline {
    private final Band band;
    private final TimeScale time;
    private final ValueScale values;

    BandOutline(Band band, TimeScale time, ValueScale values) {
        this.band = band;
        this.time = time;
        this.values = values;
    }

    /** What of it lies from one x to another. */
    List<Points> areas(IntToDoubleFunction low, IntToDoubleFunction high, double fromX, double untilX) {
        int first = Math.max(0, band.indexAtOrBefore(time.from() - 1));
        int last = Math.min(band.size() - 1, band.indexAtOrBefore(time.until() - 1) + 1);
        boolean dense = last - first > 2 * (time.right() - time.left());
        List<Points> areas = new ArrayList<>();
        Stretch stretch = new Stretch(dense, fromX, untilX);
        for (int i = first; i <= last; i++) {
            double foot = low.applyAsDouble(i);
            double top = high.applyAsDouble(i);
            if (Double.isNaN(foot) || Double.isNaN(top)) {
                stretch.closeInto(areas);
                stretch = new Stretch(dense, fromX, untilX);
            } else {
                stretch.add(time.xAt(band.timeAt(i)), values.yAt(foot), values.yAt(top));
            }
        }
        stretch.closeInto(areas);
        return areas;
    }

    private static final class Stretch {
        private final boolean dense;
        private final double fromX;
        private final double untilX;
        private final Points.Builder upper = new Points.Builder(64);
        private final Points.Builder lower = new Points.Builder(64);
        private boolean open;
        private double x;
        private double bottom;
        private double top;

        private Stretch(boolean dense, double fromX, double untilX) {
            this.dense = dense;
            this.fromX = fromX;
            this.untilX = untilX;
        }

        private void add(double newX, double newBottom, double newTop) {
            if (open && dense && Math.floor(newX) == Math.floor(x)) {
                bottom = Math.max(bottom, newBottom);
                top = Math.min(top, newTop);
                return;
            }
            keep();
            open = true;
            x = newX;
            bottom = newBottom;
            top = newTop;
        }

        private void keep() {
            if (open) {
                upper.add(x, top);
                lower.add(x, bottom);
            }
        }

        private void closeInto(List<Points> areas) {
            keep();
            Points above = upper.build().between(fromX, untilX);
            Points below = lower.build().between(fromX, untilX);
            if (above.size() > 1) {
                areas.add(above.backOver(below));
            }
        }
    }
}
