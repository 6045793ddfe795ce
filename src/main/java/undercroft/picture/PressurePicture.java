package undercroft.picture;

import java.util.ArrayList;
import java.util.List;
import undercroft.bottling.BottlePressure;
import undercroft.plot.mark.Anchor;
import undercroft.plot.mark.Dash;
import undercroft.plot.mark.Frame;
import undercroft.plot.mark.Mark;
import undercroft.plot.mark.MarkerShape;
import undercroft.plot.mark.Points;
import undercroft.plot.mark.Role;
import undercroft.plot.mark.Stroke;
import undercroft.plot.mark.TextStyle;
import undercroft.plot.scale.ValueTicks;
import undercroft.quantity.Interval;
import undercroft.wording.QuantityFormat;

/** The pressure a bottle comes to in a fridge, a room, a hot room and an attic, against its working pressure. */
public record PressurePicture(BottlePressure pressure, QuantityFormat words) {
    private static final double LEFT = 52;
    private static final double RIGHT = 14;
    private static final double TOP = 24;
    private static final double BOTTOM = 34;
    private static final double BAND = 18;
    private static final double TEXT_ROOM = 150;

    /** The marks on a ground of this size, from back to front. */
    public List<Mark> marks(double width, double height) {
        Frame frame = new Frame(LEFT, TOP, Math.max(1, width - LEFT - RIGHT), Math.max(1, height - TOP - BOTTOM));
        List<Mark> marks = new ArrayList<>();
        double most = most();
        double limit = x(frame, pressure.limits().workingPressureBar(), most);
        marks.add(new Mark.Rect(
                new Frame(limit, frame.y(), Math.max(0, frame.right() - limit), frame.height()), 0, Role.LIMIT, 0.1));
        axis(frame, most, marks);
        rows(frame, most, marks);
        line(frame, limit, Stroke.of(Role.LIMIT, 2), marks);
        double caution = x(frame, pressure.limits().cautionBar(), most);
        line(frame, caution, Stroke.of(Role.SPELL, 1.5).with(Dash.DASHED), marks);
        marks.add(new Mark.Text(
                words.of(
                        "bottling.picture.limit",
                        words.barLimit(pressure.limits().workingPressureBar())),
                limit + 4,
                frame.y() - 8,
                Anchor.START,
                TextStyle.LABEL,
                Role.LIMIT,
                false));
        if (pressure.limits().cautionBar() < pressure.limits().workingPressureBar()) {
            marks.add(new Mark.Text(
                    words.of(
                            "bottling.picture.caution",
                            words.barLimit(pressure.limits().cautionBar())),
                    caution - 4,
                    frame.y() - 8,
                    Anchor.END,
                    TextStyle.LABEL,
                    Role.SPELL,
                    false));
        }
        return marks;
    }

    private double most() {
        double highest = pressure.warmths().stream()
                .mapToDouble(warmth -> warmth.gaugeBar().high())
                .max()
                .orElse(0);
        return Math.max(1.45 * pressure.limits().workingPressureBar(), 1.05 * highest);
    }

    private void axis(Frame frame, double most, List<Mark> marks) {
        double top = shown(most);
        ValueTicks ticks = ValueTicks.of(0, top, 8);
        for (int i = 0; i < ticks.count(); i++) {
            double x = frame.x() + frame.width() * ticks.at(i) / top;
            line(frame, x, Stroke.of(Role.GRID, 1), marks);
            marks.add(new Mark.Text(
                    ticks.label(i, words.messages().locale()),
                    x,
                    frame.bottom() + 15,
                    Anchor.MIDDLE,
                    TextStyle.TICK,
                    Role.FAINT_INK,
                    false));
        }
        marks.add(new Mark.Text(
                words.of("bottling.picture.axis", words.pressureUnit(), pressure.bottle()),
                frame.right(),
                frame.bottom() + 30,
                Anchor.END,
                TextStyle.TICK,
                Role.FAINT_INK,
                false));
    }

    private void rows(Frame frame, double most, List<Mark> marks) {
        int count = pressure.warmths().size();
        for (int i = 0; i < count; i++) {
            BottlePressure.AtWarmth warmth = pressure.warmths().get(i);
            Interval bar = warmth.gaugeBar();
            double y = frame.y() + frame.height() * (i + 0.5) / count;
            boolean over = bar.high() > pressure.limits().workingPressureBar();
            Role role = over ? Role.LIMIT : Role.PRESSURE;
            double low = x(frame, Math.max(0, bar.low()), most);
            double best = x(frame, Math.max(0, bar.median()), most);
            double high = x(frame, Math.max(0, bar.high()), most);
            marks.add(new Mark.Rect(new Frame(low, y - BAND / 2, high - low, BAND), 4, role, 0.3));
            marks.add(new Mark.Polyline(Points.of(high, y - BAND / 2, high, y + BAND / 2), Stroke.of(role, 2.5)));
            marks.add(new Mark.Marker(over ? MarkerShape.DIAMOND : MarkerShape.CIRCLE, best, y, 5, Role.PAPER, role));
            marks.add(new Mark.Text(
                    words.statedCelsius(warmth.celsius()),
                    frame.x() - 8,
                    y + 4,
                    Anchor.END,
                    TextStyle.TITLE,
                    Role.INK,
                    false));
            boolean room =
                    high + TEXT_ROOM < x(frame, pressure.limits().cautionBar(), most) || low - TEXT_ROOM < frame.x();
            marks.add(new Mark.Text(
                    words.of(
                            over ? "bottling.picture.over" : "bottling.picture.row",
                            words.bar(bar.median()),
                            words.barWorst(bar.high())),
                    room ? high + 8 : low - 8,
                    y + 4,
                    room ? Anchor.START : Anchor.END,
                    TextStyle.NOTE,
                    over ? Role.LIMIT : Role.INK,
                    true));
        }
    }

    private static void line(Frame frame, double x, Stroke stroke, List<Mark> marks) {
        marks.add(new Mark.Polyline(Points.of(x, frame.y(), x, frame.bottom()), stroke));
    }

    private static double x(Frame frame, double bar, double most) {
        return frame.x() + frame.width() * bar / most;
    }

    private double shown(double bar) {
        return words.shownBar(bar);
    }

    /** The picture as a sentence, for those who do not see it. */
    public String sentence() {
        StringBuilder all = new StringBuilder(words.of(
                "bottling.picture.limit", words.barLimit(pressure.limits().workingPressureBar())));
        for (BottlePressure.AtWarmth warmth : pressure.warmths()) {
            all.append("; ")
                    .append(words.of(
                            "bottling.picture.sentence",
                            words.statedCelsius(warmth.celsius()),
                            words.bar(warmth.gaugeBar().median()),
                            words.barWorst(warmth.gaugeBar().high())));
        }
        return all.toString();
    }
}
