package undercroft.plot;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import undercroft.plot.LabelRoom.Spot;
import undercroft.plot.mark.Anchor;
import undercroft.plot.mark.Dash;
import undercroft.plot.mark.Frame;
import undercroft.plot.mark.Mark;
import undercroft.plot.mark.Points;
import undercroft.plot.mark.Role;
import undercroft.plot.mark.Stroke;
import undercroft.plot.mark.TextStyle;
import undercroft.plot.scale.TimeScale;
import undercroft.plot.scale.ValueScale;
import undercroft.series.Band;
import undercroft.series.MinMaxDownsampler;
import undercroft.series.Span;
import undercroft.series.ThinnedSeries;

/** Turns the layers of one plot into marks. Labels are placed last, when it is known where the data lie. */
final class LayerLayout {
    private static final double BAND_90_OPACITY = 0.18;
    private static final double BAND_50_OPACITY = 0.26;
    private static final double FORECAST_SHARE = 0.6;
    private static final double SPAN_OPACITY = 0.13;
    private static final double STRIP_OPACITY = 0.45;
    private static final double HATCH_STEP = 7;
    private static final double ERROR_BAR_CAP = 2.5;
    private static final double LABEL_DROP = 13;
    private static final double DENSE_POINTS_A_COLUMN = 2;

    private record Wish(String text, Role role, List<Spot> spots) {}

    private final Frame frame;
    private final TimeScale time;
    private final ValueScale values;
    private final double forecastX;
    private final LabelRoom room;
    private final List<Mark> marks = new ArrayList<>();
    private final List<Wish> wishes = new ArrayList<>();

    LayerLayout(Frame frame, TimeScale time, ValueScale values, double forecastX, LabelRoom room) {
        this.frame = frame;
        this.time = time;
        this.values = values;
        this.forecastX = forecastX;
        this.room = room;
    }

    /** Marks of all layers clipped to the frame, with their labels on top. */
    List<Mark> draw(List<Layer> layers) {
        layers.forEach(this::draw);
        List<Mark> all = new ArrayList<>();
        all.add(new Mark.Clipped(frame, marks));
        for (Wish wish : wishes) {
            room.place(wish.text(), TextStyle.LABEL, wish.role(), wish.spots()).ifPresent(all::add);
        }
        return all;
    }

    private void draw(Layer layer) {
        if (layer instanceof BandLayer band) {
            drawBand(band);
        } else if (layer instanceof LineLayer line) {
            drawLine(line);
        } else if (layer instanceof SpanLayer spans) {
            drawSpans(spans);
        } else if (layer instanceof ThresholdLayer threshold) {
            drawThreshold(threshold);
        } else if (layer instanceof PointLayer points) {
            points.points().forEach(point -> drawPoint(point, points));
        } else if (layer instanceof StripLayer strip) {
            drawStrip(strip);
        }
    }

    private int columns() {
        return Math.max(1, (int) Math.round(frame.width()));
    }

    private void drawBand(BandLayer layer) {
        Band band = layer.band();
        BandOutline outline = new BandOutline(band, time, values);
        fill(outline, band::lowAt, band::highAt, layer.role(), BAND_90_OPACITY);
        fill(outline, band::lowerQuartileAt, band::upperQuartileAt, layer.role(), BAND_50_OPACITY);
        ThinnedSeries thinned = MinMaxDownsampler.thin(band, time.from(), time.until(), columns());
        List<Points> lines = lines(thinned);
        Stroke stroke = Stroke.of(layer.role(), 2);
        for (Points line : lines) {
            addLine(line.between(frame.x(), forecastX), stroke);
            addLine(
                    line.between(forecastX, frame.right()),
                    Stroke.of(layer.role(), 1.5).with(Dash.LONG));
        }
        wishBesideEnd(layer.label(), layer.role(), lines);
    }

    private void fill(
            BandOutline outline, IntToDoubleFunction low, IntToDoubleFunction high, Role role, double opacity) {
        for (Points area : outline.areas(low, high, frame.x(), forecastX)) {
            marks.add(new Mark.Polygon(area, role, opacity));
        }
        for (Points area : outline.areas(low, high, forecastX, frame.right())) {
            marks.add(new Mark.Polygon(area, role, FORECAST_SHARE * opacity));
        }
    }

    private void drawLine(LineLayer layer) {
        ThinnedSeries thinned = MinMaxDownsampler.thin(
                layer.series(), time.from(), time.until(), columns(), layer.longestStepSeconds());
        List<Points> lines = lines(thinned);
        boolean dense = thinned.size() > DENSE_POINTS_A_COLUMN * columns();
        lines.forEach(line -> {
            if (dense) {
                addDenseLine(line, layer.stroke());
            } else {
                addLine(line, layer.stroke());
            }
        });
        wishBesideEnd(layer.label(), layer.stroke().role(), lines);
    }

    private List<Points> lines(ThinnedSeries thinned) {
        List<Points> lines = new ArrayList<>();
        Points.Builder line = new Points.Builder(thinned.size());
        for (int i = 0; i < thinned.size(); i++) {
            if (thinned.breaksBefore(i)) {
                keepLine(lines, line);
                line = new Points.Builder(thinned.size() - i);
            }
            line.add(time.xAt(thinned.timeAt(i)), values.yAt(thinned.valueAt(i)));
        }
        keepLine(lines, line);
        return lines;
    }

    /** A value alone between two gaps becomes a short stroke, as a line of one point would not be seen. */
    private void keepLine(List<Points> lines, Points.Builder line) {
        Points whole = line.build();
        if (whole.size() == 1 && frame.x() <= whole.x(0) && whole.x(0) <= frame.right()) {
            whole = Points.of(whole.x(0) - 1, whole.y(0), whole.x(0) + 1, whole.y(0));
        }
        Points seen = whole.between(frame.x(), frame.right());
        if (seen.size() > 1) {
            lines.add(seen);
        }
    }

    private void addLine(Points line, Stroke stroke) {
        if (line.size() > 1) {
            marks.add(new Mark.Polyline(line, stroke));
            room.shun(line);
        }
    }

    /** A line to and fro in every column is drawn as the area it covers: the same to the eye, and a tenth of the work. */
    private void addDenseLine(Points line, Stroke stroke) {
        DenseLine dense = DenseLine.of(line, stroke.width());
        marks.add(new Mark.Polygon(dense.area(), stroke.role(), stroke.opacity()));
        room.shun(line);
    }

    private void wishBesideEnd(String label, Role role, List<Points> lines) {
        if (label.isEmpty() || lines.isEmpty()) {
            return;
        }
        Points line = lines.get(lines.size() - 1);
        List<Spot> spots = new ArrayList<>();
        for (double share : new double[] {1, 0.75, 0.5, 0.25}) {
            int at = (int) Math.round(share * (line.size() - 1));
            spots.add(new Spot(line.x(at) - 4, line.y(at) - 7, Anchor.END));
            spots.add(new Spot(line.x(at) - 4, line.y(at) + LABEL_DROP + 2, Anchor.END));
        }
        wishes.add(new Wish(label, role, spots));
    }

    private void drawSpans(SpanLayer layer) {
        List<Spot> spots = new ArrayList<>();
        for (Span span : layer.spans()) {
            double left = Math.round(Math.max(frame.x(), time.xAt(span.fromInclusive())));
            double right = Math.round(Math.min(frame.right(), time.xAt(span.untilExclusive())));
            if (span.untilExclusive() <= time.from() || span.fromInclusive() >= time.until()) {
                continue;
            }
            Frame area = new Frame(left, frame.y(), Math.max(1, right - left), frame.height());
            drawSpan(area, layer.role());
            double middle = area.x() + area.width() / 2;
            spots.add(new Spot(middle, frame.y() + LABEL_DROP + 2, Anchor.MIDDLE));
            spots.add(new Spot(middle, frame.bottom() - 6, Anchor.MIDDLE));
        }
        if (!spots.isEmpty()) {
            wishes.add(new Wish(layer.label(), layer.role(), spots));
        }
    }

    private void drawSpan(Frame area, Role role) {
        marks.add(new Mark.Rect(area, 0, role, SPAN_OPACITY));
        if (role == Role.GAP) {
            Stroke stroke = Stroke.of(role, 1).withOpacity(0.45);
            for (double foot = area.x() - area.height(); foot < area.right(); foot += HATCH_STEP) {
                double left = Math.max(area.x(), foot);
                double right = Math.min(area.right(), foot + area.height());
                if (right > left) {
                    Points line = Points.of(left, area.bottom() - left + foot, right, area.bottom() - right + foot);
                    marks.add(new Mark.Polyline(line, stroke));
                }
            }
            return;
        }
        Stroke stroke = Stroke.of(role, 2).with(role == Role.SPELL ? Dash.DASHED : Dash.SOLID);
        double y = area.y() + 1;
        marks.add(new Mark.Polyline(Points.of(area.x(), y, area.right(), y), stroke));
    }

    private void drawThreshold(ThresholdLayer layer) {
        double y = values.yAt(layer.value());
        if (y < frame.y() || y > frame.bottom()) {
            return;
        }
        Points line = Points.of(frame.x(), y, frame.right(), y);
        addLine(line, Stroke.of(layer.role(), 1.5).with(Dash.LONG));
        List<Spot> spots = new ArrayList<>();
        for (double baseline : new double[] {y - 5, y + LABEL_DROP + 1}) {
            spots.add(new Spot(frame.right() - 4, baseline, Anchor.END));
            spots.add(new Spot(frame.x() + 6, baseline, Anchor.START));
        }
        wishes.add(new Wish(layer.label(), layer.role(), spots));
    }

    private void drawPoint(PointLayer.Point point, PointLayer layer) {
        double x = time.xAt(point.epochSecond());
        double reach = 6;
        if (x < frame.x() || x > frame.right()) {
            return;
        }
        double y = values.yAt(point.value());
        double top = values.yAt(point.high());
        double bottom = values.yAt(point.low());
        if (bottom > top) {
            Stroke bar = Stroke.of(layer.role(), 1.2);
            marks.add(new Mark.Polyline(Points.of(x, top, x, bottom), bar));
            for (double end : new double[] {top, bottom}) {
                marks.add(new Mark.Polyline(Points.of(x - ERROR_BAR_CAP, end, x + ERROR_BAR_CAP, end), bar));
            }
        }
        marks.add(new Mark.Marker(layer.shape(), x, y, 4, Role.PAPER, layer.role()));
        room.occupy(new Frame(x - reach, Math.min(top, y - reach), 2 * reach, Math.max(bottom - top, 2 * reach)));
    }

    private void drawStrip(StripLayer layer) {
        long until = Math.min(time.until(), layer.until());
        StripOutline outline = StripOutline.of(layer, time, values);
        if (outline.top().size() < 2) {
            return;
        }
        marks.add(new Mark.Polygon(outline.area(), layer.role(), STRIP_OPACITY));
        addLine(outline.top(), Stroke.of(layer.role(), 1.5));
        double end = time.xAt(until);
        double begin = outline.top().x(0);
        wishes.add(new Wish(
                layer.label(),
                layer.role(),
                List.of(
                        new Spot(end - 6, frame.y() + LABEL_DROP, Anchor.END),
                        new Spot((begin + end) / 2, frame.y() + LABEL_DROP, Anchor.MIDDLE),
                        new Spot(begin + 6, frame.y() + LABEL_DROP, Anchor.START))));
    }
}
