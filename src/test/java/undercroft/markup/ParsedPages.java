package undercroft.markup;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import javax.xml.parsers.DocumentBuilderFactory;
import javax.xml.parsers.ParserConfigurationException;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import org.w3c.dom.NodeList;
import org.xml.sax.InputSource;
import org.xml.sax.SAXException;

/** ParsedPages read back with the XML parser of the JDK. */
public final class ParsedPages {
    private ParsedPages() {}

    public static Document parsed(String page) {
        try {
            return DocumentBuilderFactory.newInstance()
                    .newDocumentBuilder()
                    .parse(new InputSource(new StringReader(page)));
        } catch (ParserConfigurationException | SAXException | IOException fault) {
            throw new AssertionError("not well-formed", fault);
        }
    }

    public static List<Element> elements(Document page, String name) {
        NodeList found = page.getElementsByTagName(name);
        List<Element> elements = new ArrayList<>();
        for (int i = 0; i < found.getLength(); i++) {
            elements.add((Element) found.item(i));
        }
        return elements;
    }

    public static Element byId(Document page, String id) {
        return elements(page, "*").stream()
                .filter(element -> element.getAttribute("id").equals(id))
                .findFirst()
                .orElseThrow();
    }

    /** The words of an element with ordinary spaces. */
    public static String plain(Element element) {
        return element.getTextContent().replace('\u00A0', ' ').replace("\n", "");
    }
}
