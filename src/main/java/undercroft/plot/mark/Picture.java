package undercroft.plot.mark;

import java.util.List;
import undercroft.plot.scale.TimeScale;
import undercroft.plot.scale.ValueScale;

/**
 * A laid-out picture: its marks from back to front, and the scales and frames a cursor needs to find its way on it.
 *
 * @param areas one for each plot, from top to bottom
 */
public record Picture(double width, double height, List<Mark> marks, TimeScale time, List<PlotArea> areas) {
    public Picture {
        marks = List.copyOf(marks);
        areas = List.copyOf(areas);
    }

    public void drawWith(Pen pen) {
        marks.forEach(mark -> mark.drawWith(pen));
    }

    /** The room of one plot on the picture. */
    public record PlotArea(String title, Frame frame, ValueScale values) {}
}
