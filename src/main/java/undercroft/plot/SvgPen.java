package undercroft.plot;

import java.util.ArrayList;
import java.util.List;
import undercroft.markup.Markup;
import undercroft.plot.mark.Anchor;
import undercroft.plot.mark.Dash;
import undercroft.plot.mark.Frame;
import undercroft.plot.mark.Mark;
import undercroft.plot.mark.MarkerShape;
import undercroft.plot.mark.Palette;
import undercroft.plot.mark.Pen;
import undercroft.plot.mark.Picture;
import undercroft.plot.mark.Points;
import undercroft.plot.mark.Role;
import undercroft.plot.mark.Stroke;

/**
 * Writes a picture as one {@code <svg>} element to be put into a page. It holds no colours but classes that
 * {@link Palette#css()} fills, so that one drawing serves light, dark and print. Coordinates are rounded to 0.1 pixel.
 */
public final class SvgPen implements Pen {
    private static final String COLOUR = "currentColor";

    private final Markup svg;
    private final List<String> attributes = new ArrayList<>();
    private String element = "";

    private SvgPen(Markup svg) {
        this.svg = svg;
    }

    /**
     * Draws a picture into a page that has the style sheet; title and description are for those who cannot see it.
     *
     * @param page open where the drawing is to stand
     */
    public static void draw(Markup page, Picture picture, String title, String description) {
        new SvgPen(page).write(picture, title, description, "");
    }

    /** A whole file that brings its own style sheet, on a ground of paper, so that it reads on any. */
    public static String file(Picture picture, String title, String description, String css) {
        Markup file = Markup.xml();
        new SvgPen(file).write(picture, title, description, css);
        return file.finished();
    }

    private void write(Picture picture, String title, String description, String css) {
        String width = tenths(picture.width());
        String height = tenths(picture.height());
        svg.open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "class",
                "plot",
                "role",
                "img",
                "viewBox",
                "0 0 " + width + " " + height,
                "width",
                width,
                "height",
                height);
        svg.element("title", title).element("desc", description);
        if (!css.isEmpty()) {
            svg.style(css);
            rect(new Mark.Rect(new Frame(0, 0, picture.width(), picture.height()), 0, Role.PAPER, 1));
        }
        picture.drawWith(this);
        svg.close("svg");
    }

    @Override
    public void polyline(Mark.Polyline line) {
        Stroke stroke = line.stroke();
        open("polyline", "r-", stroke.role()).attribute("points", points(line.points()));
        attribute("fill", "none").attribute("stroke", COLOUR).attribute("stroke-width", tenths(stroke.width()));
        if (stroke.dash() != Dash.SOLID) {
            attribute(
                    "stroke-dasharray",
                    tenths(stroke.dash().on()) + " " + tenths(stroke.dash().off()));
        } else if (line.points().size() > 2) {
            attribute("stroke-linejoin", "round");
        }
        opacity(stroke.opacity());
        end();
    }

    @Override
    public void polygon(Mark.Polygon area) {
        open("polygon", "r-", area.role()).attribute("points", points(area.points()));
        attribute("fill", COLOUR).opacity(area.opacity());
        end();
    }

    @Override
    public void rect(Mark.Rect rect) {
        open("rect", "r-", rect.role()).frame(rect.frame());
        if (rect.cornerRadius() > 0) {
            attribute("rx", tenths(rect.cornerRadius()));
        }
        attribute("fill", COLOUR).opacity(rect.opacity());
        end();
    }

    @Override
    public void marker(Mark.Marker marker) {
        shape(marker, marker.fill());
        attribute("fill", COLOUR).end();
        shape(marker, marker.outline());
        attribute("fill", "none").attribute("stroke", COLOUR);
        attribute("stroke-width", tenths(Mark.Marker.OUTLINE_WIDTH)).end();
    }

    @Override
    public void text(Mark.Text text) {
        if (text.halo()) {
            open("text", "halo r-", Role.PAPER).place(text).attribute("fill", "none");
            attribute("stroke-width", tenths(Mark.Text.HALO_WIDTH)).attribute("stroke-linejoin", "round");
            attribute("aria-hidden", "true").content(text);
        }
        open("text", "t-", text.role()).place(text).attribute("fill", COLOUR).content(text);
    }

    @Override
    public void beginClip(Frame frame) {
        begin("svg").frame(frame).attribute("overflow", "hidden");
        attribute(
                "viewBox",
                tenths(frame.x()) + " " + tenths(frame.y()) + " " + tenths(frame.width()) + " "
                        + tenths(frame.height()));
        svg.open(element, attributes.toArray(String[]::new));
    }

    @Override
    public void endClip() {
        svg.close("svg");
    }

    private void shape(Mark.Marker marker, Role role) {
        if (marker.shape() == MarkerShape.CIRCLE) {
            open("circle", "r-", role).attribute("cx", tenths(marker.x())).attribute("cy", tenths(marker.y()));
            attribute("r", tenths(marker.radius()));
        } else {
            open("polygon", "r-", role).attribute("points", points(marker.corners()));
        }
    }

    private SvgPen open(String name, String prefix, Role role) {
        return begin(name).attribute("class", prefix + role.cssName());
    }

    private SvgPen begin(String name) {
        element = name;
        attributes.clear();
        return this;
    }

    private void end() {
        svg.empty(element, attributes.toArray(String[]::new));
    }

    private SvgPen attribute(String name, String value) {
        attributes.add(name);
        attributes.add(value);
        return this;
    }

    private SvgPen frame(Frame frame) {
        return attribute("x", tenths(frame.x()))
                .attribute("y", tenths(frame.y()))
                .attribute("width", tenths(frame.width()))
                .attribute("height", tenths(frame.height()));
    }

    private SvgPen place(Mark.Text text) {
        attribute("x", tenths(text.x())).attribute("y", tenths(text.y()));
        if (text.anchor() != Anchor.START) {
            attribute("text-anchor", text.anchor() == Anchor.END ? "end" : "middle");
        }
        attribute("font-size", tenths(text.style().sizePixels()));
        return text.style().isStrong() ? attribute("font-weight", "600") : this;
    }

    private void content(Mark.Text text) {
        svg.open(element, attributes.toArray(String[]::new))
                .verbatim(text.text())
                .close("text");
    }

    private void opacity(double opacity) {
        if (opacity < 1) {
            long hundredths = Math.round(opacity * 100);
            attribute("opacity", hundredths == 100 ? "1" : (hundredths < 10 ? "0.0" : "0.") + hundredths);
        }
    }

    private static String points(Points points) {
        StringBuilder text = new StringBuilder(points.size() * 12);
        for (int i = 0; i < points.size(); i++) {
            text.append(i == 0 ? "" : " ").append(tenths(points.x(i))).append(',');
            text.append(tenths(points.y(i)));
        }
        return text.toString();
    }

    private static String tenths(double value) {
        long tenths = Math.round(value * 10);
        long whole = Math.abs(tenths) / 10;
        long rest = Math.abs(tenths) % 10;
        return (tenths < 0 ? "-" : "") + whole + (rest == 0 ? "" : "." + rest);
    }
}
