package undercroft.plot;

import undercroft.plot.mark.Anchor;
import undercroft.plot.mark.Dash;
import undercroft.plot.mark.Frame;
import undercroft.plot.mark.Mark;
import undercroft.plot.mark.MarkerShape;
import undercroft.plot.mark.Palette;
import undercroft.plot.mark.Pen;
import undercroft.plot.mark.Points;
import undercroft.plot.mark.Role;
import undercroft.plot.mark.Stroke;

/**
 * Writes a picture as one {@code <svg>} element to be put into a page. It holds no colours but classes that
 * {@link Palette#css()} fills, so that one drawing serves light, dark and print. Coordinates are rounded to 0.1 pixel.
 */
public final class SvgPen implements Pen {
    private static final String COLOUR = "currentColor";

    private final StringBuilder svg = new StringBuilder(8192);

    private SvgPen() {}

    /** The element for a page that has the style sheet; title and description are for those who cannot see it. */
    public static String svg(Picture picture, String title, String description) {
        return write(picture, title, description, "");
    }

    /** A whole file that brings its own style sheet. */
    public static String file(Picture picture, String title, String description, String css) {
        return "<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n"
                + write(picture, title, description, "<style>\n" + escaped(css) + "</style>\n");
    }

    private static String write(Picture picture, String title, String description, String style) {
        SvgPen pen = new SvgPen();
        String width = tenths(picture.width());
        String height = tenths(picture.height());
        pen.svg.append("<svg xmlns=\"http://www.w3.org/2000/svg\" class=\"plot\" role=\"img\"");
        pen.attribute("viewBox", "0 0 " + width + " " + height)
                .attribute("width", width)
                .attribute("height", height);
        pen.svg.append(">\n<title>").append(escaped(title)).append("</title>\n<desc>");
        pen.svg.append(escaped(description)).append("</desc>\n").append(style);
        picture.drawWith(pen);
        return pen.svg.append("</svg>\n").toString();
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
        svg.append("/>\n");
    }

    @Override
    public void polygon(Mark.Polygon area) {
        open("polygon", "r-", area.role()).attribute("points", points(area.points()));
        attribute("fill", COLOUR).opacity(area.opacity());
        svg.append("/>\n");
    }

    @Override
    public void rect(Mark.Rect rect) {
        open("rect", "r-", rect.role()).frame(rect.frame());
        if (rect.cornerRadius() > 0) {
            attribute("rx", tenths(rect.cornerRadius()));
        }
        attribute("fill", COLOUR).opacity(rect.opacity());
        svg.append("/>\n");
    }

    @Override
    public void marker(Mark.Marker marker) {
        shape(marker, marker.fill());
        attribute("fill", COLOUR).svg.append("/>\n");
        shape(marker, marker.outline());
        attribute("fill", "none").attribute("stroke", COLOUR);
        attribute("stroke-width", tenths(Mark.Marker.OUTLINE_WIDTH)).svg.append("/>\n");
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
        svg.append("<svg");
        frame(frame).attribute("overflow", "hidden");
        attribute(
                "viewBox",
                tenths(frame.x()) + " " + tenths(frame.y()) + " " + tenths(frame.width()) + " "
                        + tenths(frame.height()));
        svg.append(">\n");
    }

    @Override
    public void endClip() {
        svg.append("</svg>\n");
    }

    private void shape(Mark.Marker marker, Role role) {
        if (marker.shape() == MarkerShape.CIRCLE) {
            open("circle", "r-", role).attribute("cx", tenths(marker.x())).attribute("cy", tenths(marker.y()));
            attribute("r", tenths(marker.radius()));
        } else {
            open("polygon", "r-", role).attribute("points", points(marker.corners()));
        }
    }

    private SvgPen open(String element, String prefix, Role role) {
        svg.append('<').append(element);
        return attribute("class", prefix + role.cssName());
    }

    private SvgPen attribute(String name, String value) {
        svg.append(' ').append(name).append("=\"").append(value).append('"');
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
        svg.append('>').append(escaped(text.text())).append("</text>\n");
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

    /** Escapes for element content and attributes; characters that XML 1.0 does not allow become U+FFFD. */
    private static String escaped(String text) {
        StringBuilder safe = new StringBuilder(text.length() + 16);
        text.codePoints().forEach(c -> {
            switch (c) {
                case '&' -> safe.append("&amp;");
                case '<' -> safe.append("&lt;");
                case '>' -> safe.append("&gt;");
                case '"' -> safe.append("&quot;");
                case '\'' -> safe.append("&#39;");
                default -> safe.appendCodePoint(isAllowed(c) ? c : 0xFFFD);
            }
        });
        return safe.toString();
    }

    private static boolean isAllowed(int c) {
        boolean control = c < 0x20 && c != '\t' && c != '\n' && c != '\r';
        boolean surrogate = c >= 0xD800 && c <= 0xDFFF;
        return !control && !surrogate && c != 0xFFFE && c != 0xFFFF;
    }
}
