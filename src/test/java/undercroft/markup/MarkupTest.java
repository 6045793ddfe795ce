package undercroft.markup;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.io.StringReader;
import javax.xml.parsers.DocumentBuilderFactory;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.w3c.dom.Element;
import org.xml.sax.InputSource;

/** Read back with the XML parser of the JDK. */
final class MarkupTest {
    private static Element parsed(String markup) throws Exception {
        return DocumentBuilderFactory.newInstance()
                .newDocumentBuilder()
                .parse(new InputSource(new StringReader(markup)))
                .getDocumentElement();
    }

    @Property(tries = 500, seed = "20260104")
    void anyTextStaysTextInAnElementAndInAnAttribute(@ForAll String any) throws Exception {
        Element read = parsed(Markup.piece()
                .open("p", "title", any)
                .verbatim(any)
                .closeInline("p")
                .finished());
        assertEquals(0, read.getElementsByTagName("*").getLength());
        assertEquals(lines(expected(any)), read.getTextContent());
        // XML 1.0, section 3.3.3: a space stands for each tab and end of a line in the value of an attribute.
        assertEquals(lines(expected(any)).replaceAll("[\t\n]", " "), read.getAttribute("title"));
    }

    /** XML 1.0, section 2.2; the controls from 7F on are allowed there, but no use to anyone. */
    private static String expected(String any) {
        StringBuilder kept = new StringBuilder();
        any.codePoints().forEach(c -> {
            boolean turns = (c >= 0x202A && c <= 0x202E) || (c >= 0x2066 && c <= 0x2069);
            boolean low = c == 9 || c == 10 || c == 13 || (c >= 0x20 && c < 0x7F) || (c >= 0xA0 && c < 0xD800);
            boolean xml = low || (c > 0xDFFF && c < 0xFFFE) || c > 0xFFFF;
            if (!turns) {
                kept.appendCodePoint(xml ? c : 0xFFFD);
            }
        });
        return kept.toString();
    }

    /** XML 1.0, section 2.11. */
    private static String lines(String text) {
        return text.replace("\r\n", "\n").replace('\r', '\n');
    }

    @Test
    void anElementIsClosedByItsOwnNameAndNoneIsLeftOpen() {
        Markup page = Markup.piece().open("p").open("b");
        assertThrows(IllegalStateException.class, () -> page.close("p"));
        page.close("b");
        assertThrows(IllegalStateException.class, page::finished);
        assertEquals("<p><b></b>\n</p>\n", page.close("p").finished());
    }

    @Test
    void aNumberKeepsItsUnitOnTheLine() {
        assertEquals(
                "<p>2.4\u00A0bar at 20\u00A0°C, 3 bars</p>\n",
                Markup.piece().element("p", "2.4 bar at 20 °C, 3 bars").finished());
    }

    @Test
    void aStyleSheetIsWrittenAsBrowsersReadIt() {
        assertEquals(
                "<style>\nbody>*{margin:0}</style>\n",
                Markup.piece().style("body>*{margin:0}").finished());
        assertThrows(IllegalArgumentException.class, () -> Markup.piece().style("</style><script>"));
    }
}
