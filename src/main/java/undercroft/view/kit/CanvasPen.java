package undercroft.view.kit;

import javafx.geometry.VPos;
import javafx.scene.canvas.GraphicsContext;
import javafx.scene.paint.Color;
import javafx.scene.shape.StrokeLineCap;
import javafx.scene.shape.StrokeLineJoin;
import javafx.scene.text.TextAlignment;
import undercroft.plot.mark.Dash;
import undercroft.plot.mark.Frame;
import undercroft.plot.mark.Mark;
import undercroft.plot.mark.MarkerShape;
import undercroft.plot.mark.Palette;
import undercroft.plot.mark.Pen;
import undercroft.plot.mark.Points;
import undercroft.plot.mark.Role;

/** Draws marks on a canvas. */
public final class CanvasPen implements Pen {
    private final GraphicsContext canvas;
    private final Palette palette;

    public CanvasPen(GraphicsContext canvas, Palette palette) {
        this.canvas = canvas;
        this.palette = palette;
    }

    private Color colour(Role role, double opacity) {
        return Color.web(palette.hex(role), opacity);
    }

    @Override
    public void polyline(Mark.Polyline line) {
        canvas.setStroke(colour(line.stroke().role(), line.stroke().opacity()));
        canvas.setLineWidth(line.stroke().width());
        Dash dash = line.stroke().dash();
        if (dash == Dash.SOLID) {
            canvas.setLineDashes();
        } else {
            canvas.setLineDashes(dash.on(), dash.off());
        }
        canvas.setLineCap(StrokeLineCap.BUTT);
        canvas.setLineJoin(StrokeLineJoin.ROUND);
        Points points = line.points();
        canvas.strokePolyline(xs(points), ys(points), points.size());
        canvas.setLineDashes();
    }

    @Override
    public void polygon(Mark.Polygon area) {
        canvas.setFill(colour(area.role(), area.opacity()));
        canvas.fillPolygon(xs(area.points()), ys(area.points()), area.points().size());
    }

    @Override
    public void rect(Mark.Rect rect) {
        canvas.setFill(colour(rect.role(), rect.opacity()));
        Frame frame = rect.frame();
        double arc = 2 * rect.cornerRadius();
        if (arc > 0) {
            canvas.fillRoundRect(frame.x(), frame.y(), frame.width(), frame.height(), arc, arc);
        } else {
            canvas.fillRect(frame.x(), frame.y(), frame.width(), frame.height());
        }
    }

    @Override
    public void marker(Mark.Marker marker) {
        canvas.setFill(colour(marker.fill(), 1));
        canvas.setStroke(colour(marker.outline(), 1));
        canvas.setLineWidth(Mark.Marker.OUTLINE_WIDTH);
        canvas.setLineDashes();
        if (marker.shape() == MarkerShape.CIRCLE) {
            double left = marker.x() - marker.radius();
            double top = marker.y() - marker.radius();
            double size = 2 * marker.radius();
            canvas.fillOval(left, top, size, size);
            canvas.strokeOval(left, top, size, size);
        } else {
            Points corners = marker.corners();
            canvas.fillPolygon(xs(corners), ys(corners), corners.size());
            canvas.strokePolygon(xs(corners), ys(corners), corners.size());
        }
    }

    @Override
    public void text(Mark.Text text) {
        canvas.setFont(Looks.font(text.style()));
        canvas.setTextBaseline(VPos.BASELINE);
        canvas.setTextAlign(
                switch (text.anchor()) {
                    case START -> TextAlignment.LEFT;
                    case MIDDLE -> TextAlignment.CENTER;
                    case END -> TextAlignment.RIGHT;
                });
        if (text.halo()) {
            canvas.setStroke(colour(Role.PAPER, 1));
            canvas.setLineWidth(Mark.Text.HALO_WIDTH);
            canvas.setLineJoin(StrokeLineJoin.ROUND);
            canvas.strokeText(text.text(), text.x(), text.y());
        }
        canvas.setFill(Color.web(palette.textHex(text.role())));
        canvas.fillText(text.text(), text.x(), text.y());
    }

    @Override
    public void beginClip(Frame frame) {
        canvas.save();
        canvas.beginPath();
        canvas.rect(frame.x(), frame.y(), frame.width(), frame.height());
        canvas.clip();
    }

    @Override
    public void endClip() {
        canvas.restore();
    }

    private static double[] xs(Points points) {
        double[] xs = new double[points.size()];
        for (int i = 0; i < xs.length; i++) {
            xs[i] = points.x(i);
        }
        return xs;
    }

    private static double[] ys(Points points) {
        double[] ys = new double[points.size()];
        for (int i = 0; i < ys.length; i++) {
            ys[i] = points.y(i);
        }
        return ys;
    }
}
