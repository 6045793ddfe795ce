package undercroft.picture;

import java.util.ArrayList;
import java.util.List;
import undercroft.plot.mark.Anchor;
import undercroft.plot.mark.Frame;
import undercroft.plot.mark.Mark;
import undercroft.plot.mark.Points;
import undercroft.plot.mark.Role;
import undercroft.plot.mark.Stroke;
import undercroft.plot.mark.TextStyle;

/** Grows a picture from back to front. */
final class MarkList {
    private final List<Mark> marks = new ArrayList<>();

    MarkList add(Mark mark) {
        marks.add(mark);
        return this;
    }

    MarkList line(double x1, double y1, double x2, double y2, Stroke stroke) {
        return add(new Mark.Polyline(Points.of(x1, y1, x2, y2), stroke));
    }

    MarkList rect(Frame frame, double radius, Role role, double opacity) {
        return add(new Mark.Rect(frame, radius, role, opacity));
    }

    MarkList outline(Frame frame, Stroke stroke) {
        return add(new Mark.Polyline(
                Points.of(
                        frame.x(),
                        frame.y(),
                        frame.right(),
                        frame.y(),
                        frame.right(),
                        frame.bottom(),
                        frame.x(),
                        frame.bottom(),
                        frame.x(),
                        frame.y()),
                stroke));
    }

    MarkList text(String text, double x, double y, Anchor anchor, TextStyle style, Role role, boolean halo) {
        return add(new Mark.Text(text, x, y, anchor, style, role, halo));
    }

    List<Mark> all() {
        return List.copyOf(marks);
    }
}
