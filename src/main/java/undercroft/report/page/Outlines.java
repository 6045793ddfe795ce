package undercroft.report.page;

import java.util.ArrayDeque;
import java.util.BitSet;
import java.util.Deque;
import java.util.List;
import undercroft.plot.mark.Mark;
import undercroft.plot.mark.Picture;
import undercroft.plot.mark.Points;

/**
 * A picture with no more corners than the eye needs, which makes a page a third of its size. No line is moved by more than
 * the tolerance (Douglas and Peucker 1973, Cartographica 10:112).
 */
public final class Outlines {
    private static final double TOLERANCE_PIXELS = 0.3;

    private Outlines() {}

    static Picture simplified(Picture picture) {
        return new Picture(
                picture.width(), picture.height(), simplified(picture.marks()), picture.time(), picture.areas());
    }

    private static List<Mark> simplified(List<Mark> marks) {
        return marks.stream().map(Outlines::simplified).toList();
    }

    private static Mark simplified(Mark mark) {
        if (mark instanceof Mark.Polyline line) {
            return new Mark.Polyline(simplified(line.points()), line.stroke());
        }
        if (mark instanceof Mark.Polygon area) {
            return new Mark.Polygon(simplified(area.points()), area.role(), area.opacity());
        }
        if (mark instanceof Mark.Clipped clipped) {
            return new Mark.Clipped(clipped.frame(), simplified(clipped.marks()));
        }
        return mark;
    }

    private record Stretch(int first, int last) {}

    /** The same course with fewer corners; its first and last stay. */
    static Points simplified(Points points) {
        if (points.size() < 3) {
            return points;
        }
        BitSet kept = new BitSet(points.size());
        kept.set(0);
        kept.set(points.size() - 1);
        Deque<Stretch> open = new ArrayDeque<>(List.of(new Stretch(0, points.size() - 1)));
        while (!open.isEmpty()) {
            Stretch stretch = open.pop();
            int furthest = furthest(points, stretch);
            if (furthest >= 0) {
                kept.set(furthest);
                open.push(new Stretch(stretch.first(), furthest));
                open.push(new Stretch(furthest, stretch.last()));
            }
        }
        double[] xy = new double[2 * kept.cardinality()];
        int n = 0;
        for (int i = kept.nextSetBit(0); i >= 0; i = kept.nextSetBit(i + 1)) {
            xy[n++] = points.x(i);
            xy[n++] = points.y(i);
        }
        return Points.of(xy);
    }

    /** Index of the corner furthest from the chord, or −1 when all are within the tolerance. */
    private static int furthest(Points points, Stretch stretch) {
        int found = -1;
        double most = TOLERANCE_PIXELS;
        for (int i = stretch.first() + 1; i < stretch.last(); i++) {
            double distance = distance(points, i, stretch);
            if (distance > most) {
                most = distance;
                found = i;
            }
        }
        return found;
    }

    private static double distance(Points points, int index, Stretch chord) {
        double x = points.x(chord.first());
        double y = points.y(chord.first());
        double dx = points.x(chord.last()) - x;
        double dy = points.y(chord.last()) - y;
        double length = dx * dx + dy * dy;
        double along = length == 0 ? 0 : ((points.x(index) - x) * dx + (points.y(index) - y) * dy) / length;
        double held = Math.max(0, Math.min(1, along));
        return Math.hypot(points.x(index) - x - held * dx, points.y(index) - y - held * dy);
    }
}
