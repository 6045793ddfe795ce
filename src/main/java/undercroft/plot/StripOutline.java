package undercroft.plot;

import undercroft.plot.mark.Points;
import undercroft.plot.scale.TimeScale;
import undercroft.plot.scale.ValueScale;
import undercroft.series.TimeSeries;

/** Stepped outline of a strip: its upper edge, and the area between it and the foot of the axis. */
record StripOutline(Points top, Points area) {
    /** Steps closer than a pixel are merged into the tallest of them, so that no short spell in the light is lost. */
    static StripOutline of(StripLayer layer, TimeScale time, ValueScale values) {
        TimeSeries steps = layer.steps();
        long until = Math.min(time.until(), layer.until());
        Points.Builder top = new Points.Builder(64);
        double column = Double.NaN;
        double tallest = values.bottom();
        double x = time.left();
        for (int i = Math.max(0, steps.indexAtOrBefore(time.from())); i < steps.size(); i++) {
            if (steps.timeAt(i) >= until) {
                break;
            }
            double newX = Math.max(time.left(), time.xAt(steps.timeAt(i)));
            double y = values.yAt(steps.valueAt(i));
            if (Math.floor(newX) == column) {
                tallest = Math.min(tallest, y);
                continue;
            }
            if (!Double.isNaN(column)) {
                top.add(x, tallest).add(newX, tallest);
            }
            column = Math.floor(newX);
            x = newX;
            tallest = y;
        }
        double end = time.xAt(until);
        if (!Double.isNaN(column) && end > x) {
            top.add(x, tallest).add(end, tallest);
        }
        Points edge = top.build();
        if (edge.size() == 0) {
            return new StripOutline(edge, edge);
        }
        Points foot = Points.of(edge.x(0), values.bottom(), edge.x(edge.size() - 1), values.bottom());
        return new StripOutline(edge, edge.backOver(foot));
    }
}
