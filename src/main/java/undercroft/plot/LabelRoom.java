package undercroft.plot;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import undercroft.plot.mark.Anchor;
import undercroft.plot.mark.Frame;
import undercroft.plot.mark.Mark;
import undercroft.plot.mark.Points;
import undercroft.plot.mark.Role;
import undercroft.plot.mark.TextMeasure;
import undercroft.plot.mark.TextStyle;

/**
 * Finds places for labels inside a frame: never on another label, best clear of the data, moved inward at the edges,
 * dropped where there is no room.
 */
final class LabelRoom {
    /** A wished place: base line and anchor. */
    record Spot(double x, double baseline, Anchor anchor) {}

    private static final double GAP = 2;
    private static final double MOST_COVERED = 0.6;
    private static final double[] NUDGES = {0, 14, -14, 28, -28};

    private final Frame frame;
    private final TextMeasure measure;
    private final List<Frame> taken = new ArrayList<>();
    private final List<double[][]> traces = new ArrayList<>();

    LabelRoom(Frame frame, TextMeasure measure) {
        this.frame = frame;
        this.measure = measure;
    }

    /** Keeps labels off an area. */
    void occupy(Frame area) {
        taken.add(area);
    }

    /** Makes labels shun a line, whose x do not fall. */
    void shun(Points line) {
        int columns = (int) Math.ceil(frame.width()) + 1;
        double[] tops = new double[columns];
        double[] bottoms = new double[columns];
        Arrays.fill(tops, Double.POSITIVE_INFINITY);
        Arrays.fill(bottoms, Double.NEGATIVE_INFINITY);
        for (int i = 1; i < line.size(); i++) {
            int first = column(line.x(i - 1));
            int last = Math.min(columns - 1, column(line.x(i)));
            for (int c = Math.max(0, first); c <= last; c++) {
                double share = last == first ? 1 : (double) (c - first) / (last - first);
                double y = line.y(i - 1) + share * (line.y(i) - line.y(i - 1));
                tops[c] = Math.min(tops[c], y);
                bottoms[c] = Math.max(bottoms[c], y);
            }
        }
        traces.add(new double[][] {tops, bottoms});
    }

    /**
     * Places a label on the first spot clear of the data, else on the one that covers least of them. One that would lie
     * on data with most of its length is dropped, unless it names a limit.
     */
    Optional<Mark.Text> place(String text, TextStyle style, Role role, List<Spot> spots) {
        double width = measure.width(text, style);
        if (text.isEmpty() || width + 2 * GAP > frame.width()) {
            return Optional.empty();
        }
        double ascent = style.sizePixels() * 0.8;
        double size = style.sizePixels() + 1;
        Spot best = null;
        Frame bestBox = null;
        int least = Integer.MAX_VALUE;
        for (double nudge : NUDGES) {
            for (Spot spot : spots) {
                double left = spot.anchor().leftOf(spot.x(), width);
                double inward = Math.max(frame.x() + GAP, Math.min(frame.right() - GAP - width, left));
                double baseline = spot.baseline() + nudge;
                Frame box = new Frame(inward, baseline - ascent, width, size);
                int covered = frame.contains(box) && isFree(box) ? covered(box) : Integer.MAX_VALUE;
                if (covered < least) {
                    least = covered;
                    bestBox = box;
                    best = new Spot(spot.x() + inward - left, baseline, spot.anchor());
                }
            }
            if (least == 0) {
                break;
            }
        }
        boolean hidesData = least > MOST_COVERED * width && role != Role.LIMIT;
        if (best == null || hidesData) {
            return Optional.empty();
        }
        occupy(new Frame(bestBox.x() - 2 * GAP, bestBox.y() - 1, bestBox.width() + 4 * GAP, bestBox.height() + 2));
        return Optional.of(new Mark.Text(text, best.x(), best.baseline(), best.anchor(), style, role, true));
    }

    /** Places a label where wished, moved inward at the ends of the frame only, or not at all. */
    Optional<Mark.Text> placeInRow(String text, TextStyle style, Role role, Spot spot) {
        double width = measure.width(text, style);
        double wished = spot.anchor().leftOf(spot.x(), width);
        double left = Math.max(frame.x() + 1, Math.min(frame.right() - 1 - width, wished));
        Frame box = new Frame(left, spot.baseline() - style.sizePixels() * 0.8, width, style.sizePixels() + 1);
        if (!frame.contains(box) || !isFree(box)) {
            return Optional.empty();
        }
        occupy(new Frame(left - 3 * GAP, box.y(), width + 6 * GAP, box.height()));
        return Optional.of(
                new Mark.Text(text, spot.x() + left - wished, spot.baseline(), spot.anchor(), style, role, false));
    }

    private int column(double x) {
        return (int) Math.floor(x - frame.x());
    }

    private boolean isFree(Frame box) {
        return taken.stream().noneMatch(box::overlaps);
    }

    private int covered(Frame box) {
        int covered = 0;
        for (double[][] trace : traces) {
            int last = Math.min(trace[0].length - 1, column(box.right()) + 1);
            for (int c = Math.max(0, column(box.x()) - 1); c <= last; c++) {
                if (trace[0][c] < box.bottom() + 1 && trace[1][c] > box.y() - 1) {
                    covered++;
                }
            }
        }
        return covered;
    }
}
