package undercroft.plot;

import java.util.ArrayList;
import java.util.List;
import undercroft.plot.LabelRoom.Spot;
import undercroft.plot.mark.Anchor;
import undercroft.plot.mark.Frame;
import undercroft.plot.mark.Mark;
import undercroft.plot.mark.Picture;
import undercroft.plot.mark.Points;
import undercroft.plot.mark.Role;
import undercroft.plot.mark.Stroke;
import undercroft.plot.mark.TextMeasure;
import undercroft.plot.mark.TextStyle;
import undercroft.plot.scale.TimeScale;
import undercroft.plot.scale.TimeTick;
import undercroft.plot.scale.ValueScale;
import undercroft.plot.scale.ValueTicks;

/** Shares out the room of a stack: titles, frames, axes, the row of times and the now-line. */
final class StackLayout {
    private static final double TITLE_HEIGHT = 20;
    private static final double PLOT_GAP = 10;
    private static final double TICK_ROW = 26;
    private static final double RIGHT_MARGIN = 10;
    private static final double AXIS_GAP = 8;
    private static final double LEAST_HEIGHT = 10;
    private static final double LEAST_WIDTH = 40;
    private static final double PIXELS_A_VALUE_TICK = 30;
    private static final double LEAST_TICK_DISTANCE = 15;
    private static final double PIXELS_A_TIME_TICK = 72;
    private static final double PILL_HEIGHT = 18;

    private final PlotStack stack;
    private final double width;
    private final double height;
    private final TextMeasure measure;
    private final List<double[]> ranges;
    private final List<Mark> marks = new ArrayList<>();
    private final List<Picture.PlotArea> areas = new ArrayList<>();

    StackLayout(PlotStack stack, double width, double height, TextMeasure measure) {
        this.stack = stack;
        this.width = Math.floor(width);
        this.height = Math.floor(height);
        this.measure = measure;
        this.ranges = stack.plots().stream()
                .map(plot -> ValueReach.of(plot, stack.from(), stack.until()))
                .toList();
    }

    Picture picture() {
        int count = stack.plots().size();
        double weights = stack.plots().stream().mapToDouble(Plot::weight).sum();
        double room = height - count * TITLE_HEIGHT - Math.max(0, count - 1) * PLOT_GAP - TICK_ROW;
        double[] heights = stack.plots().stream()
                .mapToDouble(plot -> Math.floor(room * plot.weight() / weights))
                .toArray();
        for (double plotHeight : heights) {
            if (plotHeight < LEAST_HEIGHT) {
                return nothing();
            }
        }
        double left = Math.ceil(axisWidth(heights));
        double right = width - RIGHT_MARGIN;
        if (count == 0 || right - left < LEAST_WIDTH) {
            return nothing();
        }
        TimeScale time = new TimeScale(stack.from(), stack.until(), left, right);
        double top = 0;
        for (int i = 0; i < count; i++) {
            top += TITLE_HEIGHT;
            Frame frame = new Frame(left, top, right - left, heights[i]);
            areas.add(new Picture.PlotArea(stack.plots().get(i).title(), frame, scale(i, frame)));
            top += heights[i] + PLOT_GAP;
        }
        List<TimeTick> ticks = stack.ticks(Math.max(2, (int) ((right - left) / PIXELS_A_TIME_TICK)));
        for (int i = 0; i < count; i++) {
            drawPlot(stack.plots().get(i), areas.get(i), time, ticks);
        }
        drawTimes(time, ticks, areas.get(count - 1).frame().bottom());
        return new Picture(width, height, marks, time, areas);
    }

    private Picture nothing() {
        TimeScale time = new TimeScale(stack.from(), stack.until(), 0, Math.max(1, width));
        return new Picture(Math.max(0, width), Math.max(0, height), List.of(), time, List.of());
    }

    private ValueScale scale(int plot, Frame frame) {
        double[] range = ranges.get(plot);
        return new ValueScale(range[0], range[1], frame.y(), frame.bottom());
    }

    private static ValueTicks valueTicks(ValueScale values) {
        double room = values.bottom() - values.top();
        int most = (int) (room / PIXELS_A_VALUE_TICK) + 1;
        ValueTicks ticks = ValueTicks.of(values.low(), values.high(), most);
        while (most > 1 && ticks.step() / (values.high() - values.low()) * room < LEAST_TICK_DISTANCE) {
            most--;
            ticks = ValueTicks.of(values.low(), values.high(), most);
        }
        return ticks;
    }

    private double axisWidth(double[] heights) {
        double widest = 0;
        for (int i = 0; i < heights.length; i++) {
            Plot plot = stack.plots().get(i);
            ValueTicks ticks = valueTicks(scale(i, new Frame(0, 0, 1, heights[i])));
            for (int k = 0; plot.axis().labelled() && k < ticks.count(); k++) {
                widest = Math.max(widest, measure.width(ticks.label(k, stack.locale()), TextStyle.TICK));
            }
        }
        return widest + AXIS_GAP + 2;
    }

    private void drawPlot(Plot plot, Picture.PlotArea area, TimeScale time, List<TimeTick> ticks) {
        Frame frame = area.frame();
        drawText(
                measure.fitted(plot.title(), TextStyle.TITLE, frame.width()),
                frame.x(),
                frame.y() - 7,
                Anchor.START,
                TextStyle.TITLE,
                Role.FAINT_INK);
        for (TimeTick tick : ticks) {
            double x = crisp(time.xAt(tick.epochSecond()), frame.x(), frame.right());
            line(x, frame.y(), x, frame.bottom(), Stroke.of(tick.major() ? Role.FRAME : Role.GRID, 1));
        }
        if (plot.axis().labelled()) {
            drawValues(area);
        }
        double bottom = frame.bottom() - 0.5;
        line(frame.x(), bottom, frame.right(), bottom, Stroke.of(Role.FRAME, 1));
        long begin = Math.min(stack.until(), stack.forecastBegin());
        double forecastX = Math.round(Math.max(frame.x(), Math.min(frame.right(), time.xAt(begin))));
        LabelRoom room = new LabelRoom(frame, measure);
        List<Mark> now = new ArrayList<>();
        if (isNowInView()) {
            double x = crisp(time.xAt(stack.now().getAsLong()), frame.x(), frame.right());
            now.add(new Mark.Polyline(
                    Points.of(x, frame.y(), x, frame.bottom()),
                    Stroke.of(Role.NOW, 1).withOpacity(0.85)));
            room.occupy(new Frame(x - 3, frame.y(), 6, frame.height()));
        }
        List<Mark> layers = new LayerLayout(frame, time, area.values(), forecastX, room).draw(plot.layers());
        marks.add(layers.get(0));
        marks.addAll(now);
        marks.addAll(layers.subList(1, layers.size()));
    }

    private void drawValues(Picture.PlotArea area) {
        Frame frame = area.frame();
        ValueTicks ticks = valueTicks(area.values());
        for (int i = 0; i < ticks.count(); i++) {
            double y = crisp(area.values().yAt(ticks.at(i)), frame.y(), frame.bottom());
            line(frame.x(), y, frame.right(), y, Stroke.of(Role.GRID, 1));
            String label = ticks.label(i, stack.locale());
            drawText(label, frame.x() - AXIS_GAP, y + 4, Anchor.END, TextStyle.TICK, Role.FAINT_INK);
        }
    }

    private boolean isNowInView() {
        return stack.now().isPresent()
                && stack.now().getAsLong() >= stack.from()
                && stack.now().getAsLong() <= stack.until();
    }

    private void drawTimes(TimeScale time, List<TimeTick> ticks, double top) {
        LabelRoom row = new LabelRoom(new Frame(0, top, width, height - top), measure);
        double baseline = top + 18;
        if (isNowInView()) {
            drawNowPill(time, top, row);
        }
        for (TimeTick tick : ticks) {
            double x = time.xAt(tick.epochSecond());
            TextStyle style = tick.major() ? TextStyle.LABEL : TextStyle.TICK;
            row.placeInRow(tick.label(), style, Role.FAINT_INK, new Spot(x, baseline, Anchor.MIDDLE))
                    .ifPresent(marks::add);
        }
    }

    private void drawNowPill(TimeScale time, double top, LabelRoom row) {
        double x = crisp(time.xAt(stack.now().getAsLong()), time.left(), time.right());
        line(x, top, x, top + 4, Stroke.of(Role.NOW, 1));
        if (stack.nowLabel().isEmpty()) {
            return;
        }
        double pill = Math.ceil(measure.width(stack.nowLabel(), TextStyle.LABEL)) + 14;
        double left = Math.round(Math.max(0, Math.min(width - pill, x - pill / 2)));
        Frame area = new Frame(left, top + 4, pill, PILL_HEIGHT);
        marks.add(new Mark.Rect(area, 4, Role.NOW, 1));
        drawText(stack.nowLabel(), left + pill / 2, top + 17, Anchor.MIDDLE, TextStyle.LABEL, Role.PAPER);
        row.occupy(new Frame(left - 4, area.y(), pill + 8, area.height()));
    }

    /** Middle of the pixel that holds the coordinate, inside the given range: keeps hairlines sharp. */
    private static double crisp(double coordinate, double low, double high) {
        return Math.max(low, Math.min(high - 1, Math.floor(coordinate))) + 0.5;
    }

    private void line(double x1, double y1, double x2, double y2, Stroke stroke) {
        marks.add(new Mark.Polyline(Points.of(x1, y1, x2, y2), stroke));
    }

    private void drawText(String text, double x, double y, Anchor anchor, TextStyle style, Role role) {
        marks.add(new Mark.Text(text, x, y, anchor, style, role, false));
    }
}
