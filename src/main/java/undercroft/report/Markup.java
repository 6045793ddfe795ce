package undercroft.report;

import java.util.regex.Pattern;
import undercroft.outlook.lot.Alert;

/**
 * Writes a page piece by piece, well-formed as XML and HTML alike. Everything that is given as text or as the value of an
 * attribute is escaped; only {@link #svg} takes markup.
 */
public final class Markup {
    private static final Pattern BEFORE_UNIT =
            Pattern.compile("(?<=\\d) (?=(?:°[CF]|bar|psi|vol|mL|min|[%Lgh])(?![\\p{L}\\d]))");

    private final StringBuilder page = new StringBuilder(1 << 16);

    /** Opens an element; attributes come as name and value by turns. */
    public Markup open(String element, String... attributes) {
        return start(element, attributes).raw(">");
    }

    public Markup close(String element) {
        return raw("</").raw(element).raw(">\n");
    }

    /** An element that holds nothing but a text. */
    Markup element(String element, String text, String... attributes) {
        return open(element, attributes).text(text).close(element);
    }

    /** An element that never has content. */
    Markup empty(String element, String... attributes) {
        return start(element, attributes).raw("/>\n");
    }

    /** A name that a person gave: kept from turning the words around it when it is written from right to left. */
    public Markup name(String name) {
        return raw("<bdi>").text(name).raw("</bdi>");
    }

    /** A number and its unit stay on one line. */
    public Markup text(String text) {
        return raw(escaped(BEFORE_UNIT.matcher(text).replaceAll("\u00A0")));
    }

    /** A drawing that is markup already. */
    Markup svg(String drawing) {
        return raw(drawing);
    }

    /** The alert as a shape with its word: neither colour nor shape is needed to read it. */
    Markup alert(Alert alert) {
        open("span", "class", "alert " + cssName(alert));
        raw("<svg class=\"sign\" viewBox=\"0 0 16 16\" width=\"16\" height=\"16\" aria-hidden=\"true\">");
        raw(
                switch (alert) {
                    case CLEAR -> "<circle cx=\"8\" cy=\"8\" r=\"5.2\"/>";
                    case WATCH -> "<path d=\"M8 2.2 14.4 13.4H1.6Z\"/>";
                    case ACT -> "<path class=\"full\" d=\"M8 .8 15.2 8 8 15.2.8 8Z\"/>";
                });
        return raw("</svg>").text(alert.label()).raw("</span>");
    }

    static String cssName(Alert alert) {
        return switch (alert) {
            case CLEAR -> "clear";
            case WATCH -> "watch";
            case ACT -> "act";
        };
    }

    @Override
    public String toString() {
        return page.toString();
    }

    private Markup start(String element, String... attributes) {
        if (attributes.length % 2 != 0) {
            throw new IllegalArgumentException("attributes come as name and value");
        }
        raw("<").raw(element);
        for (int i = 0; i < attributes.length; i += 2) {
            raw(" ").raw(attributes[i])
                    .raw("=\"")
                    .raw(escaped(attributes[i + 1]))
                    .raw("\"");
        }
        return this;
    }

    private Markup raw(String markup) {
        page.append(markup);
        return this;
    }

    /**
     * Safe in content and in quoted attributes. Characters that XML 1.0 does not allow become U+FFFD; marks that force a
     * direction on all that follows are left out.
     */
    static String escaped(String text) {
        StringBuilder safe = new StringBuilder(text.length() + 16);
        undirected(text).codePoints().forEach(c -> {
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

    /** The text without marks that force a direction on all that follows. */
    public static String undirected(String text) {
        StringBuilder kept = new StringBuilder(text.length());
        text.codePoints().filter(c -> !isDirectionMark(c)).forEach(kept::appendCodePoint);
        return kept.toString();
    }

    private static boolean isDirectionMark(int c) {
        return (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
    }

    private static boolean isAllowed(int c) {
        boolean control = (c < 0x20 && c != '\t' && c != '\n' && c != '\r') || (c >= 0x7F && c < 0xA0);
        boolean surrogate = c >= 0xD800 && c <= 0xDFFF;
        return !control && !surrogate && c != 0xFFFE && c != 0xFFFF;
    }
}
