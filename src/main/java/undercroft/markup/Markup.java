package undercroft.markup;

import java.io.IOException;
import java.io.StringWriter;
import java.io.UncheckedIOException;
import java.io.Writer;
import java.util.ArrayDeque;
import java.util.Deque;
import javax.xml.stream.XMLOutputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamWriter;

/**
 * Grows a page or a drawing piece by piece, well-formed as XML and as HTML. Text and values of attributes are escaped;
 * there is no way to put markup in as text. Characters that XML 1.0 does not allow become U+FFFD, and marks that turn the
 * direction of all that follows are left out, so that no name can rearrange a page.
 */
public final class Markup {
    /** The JDK's own, whatever other writers lie on the class path. */
    private static final XMLOutputFactory WRITERS = XMLOutputFactory.newDefaultFactory();

    private final Writer written;
    private final Deque<String> open = new ArrayDeque<>();
    private final XMLStreamWriter xml;

    private Markup(Writer written) {
        this.written = written;
        try {
            xml = WRITERS.createXMLStreamWriter(written);
        } catch (XMLStreamException impossible) {
            throw new IllegalStateException(impossible);
        }
    }

    /** A page for a browser, read as HTML: begins with its document type. */
    public static Markup html() {
        return html(inMemory());
    }

    /** A page that goes out as it grows, and is closed with {@link #end}. */
    public static Markup html(Writer to) {
        Markup page = new Markup(to);
        page.around("<!DOCTYPE html>\n");
        return page;
    }

    private static Writer inMemory() {
        return new StringWriter(1 << 16);
    }

    /** An XML file, such as a drawing by itself. */
    public static Markup xml() {
        Markup file = new Markup(inMemory());
        file.around("<?xml version=\"1.0\" encoding=\"UTF-8\"?>\n");
        return file;
    }

    /** A piece to be looked at by itself, without a head. */
    public static Markup piece() {
        return new Markup(inMemory());
    }

    /** Opens an element; attributes come as name and value by turns. */
    public Markup open(String element, String... attributes) {
        return told(() -> {
            xml.writeStartElement(element);
            open.push(element);
            attributes(attributes);
        });
    }

    /** Closes the element opened last, which must be the one named. */
    public Markup close(String element) {
        return closeInline(element).line();
    }

    /** As {@link #close}, with nothing between it and what follows. */
    public Markup closeInline(String element) {
        if (!element.equals(open.peek())) {
            throw new IllegalStateException(element + " is closed where " + open.peek() + " is open");
        }
        open.pop();
        return told(xml::writeEndElement);
    }

    /** An element that holds nothing but a text. */
    public Markup element(String element, String text, String... attributes) {
        return open(element, attributes).text(text).close(element);
    }

    /** An element that never has content. */
    public Markup empty(String element, String... attributes) {
        return told(() -> {
                    xml.writeEmptyElement(element);
                    attributes(attributes);
                })
                .line();
    }

    /** A name that a person gave: kept from turning the words around it when it is written from right to left. */
    public Markup name(String name) {
        return open("bdi").text(name).closeInline("bdi");
    }

    /** A text; a number and its unit stay on one line. */
    public Markup text(String text) {
        return verbatim(NoBreak.units(text));
    }

    /** A text with its spaces as they are. */
    public Markup verbatim(String text) {
        return told(() -> xml.writeCharacters(clean(text)));
    }

    /** A style sheet of ours: browsers read it unescaped, so it may hold neither {@code <} nor {@code &}. */
    public Markup style(String css) {
        if (css.indexOf('<') >= 0 || css.indexOf('&') >= 0) {
            throw new IllegalArgumentException("a style sheet cannot hold < or &");
        }
        open("style");
        return told(() -> {
                    // Ends the start tag; what follows goes around the writer, which would escape its child selectors.
                    xml.writeCharacters("\n");
                    xml.flush();
                    around(css);
                })
                .close("style");
    }

    /** What was written into memory; every element must be closed. */
    public String finished() {
        end();
        return written.toString();
    }

    /** Ends a page that went out as it grew; every element must be closed. */
    public void end() {
        if (!open.isEmpty()) {
            throw new IllegalStateException(open.peek() + " is left open");
        }
        told(xml::flush);
    }

    /** Writes around the XML writer. */
    private void around(String text) {
        try {
            written.write(text);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    private Markup line() {
        return told(() -> xml.writeCharacters("\n"));
    }

    private void attributes(String... attributes) throws XMLStreamException {
        if (attributes.length % 2 != 0) {
            throw new IllegalArgumentException("attributes come as name and value");
        }
        for (int i = 0; i < attributes.length; i += 2) {
            xml.writeAttribute(attributes[i], clean(attributes[i + 1]));
        }
    }

    private interface Writing {
        void run() throws XMLStreamException;
    }

    private Markup told(Writing writing) {
        try {
            writing.run();
        } catch (XMLStreamException failure) {
            if (failure.getCause() instanceof IOException io) {
                throw new UncheckedIOException(io);
            }
            throw new IllegalStateException(failure);
        }
        return this;
    }

    private static String clean(String text) {
        if (text.chars().allMatch(c -> (c >= 0x20 && c < 0x7F) || c == '\n')) {
            return text;
        }
        StringBuilder clean = new StringBuilder(text.length());
        text.codePoints()
                .filter(c -> !isDirectionMark(c))
                .forEach(c -> clean.appendCodePoint(isAllowed(c) ? c : 0xFFFD));
        return clean.toString();
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
