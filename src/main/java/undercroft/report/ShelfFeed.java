package undercroft.report;

import java.io.StringReader;
import java.nio.charset.StandardCharsets;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.HashSet;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.UUID;
import javax.xml.stream.XMLInputFactory;
import javax.xml.stream.XMLStreamException;
import javax.xml.stream.XMLStreamReader;
import undercroft.markup.Markup;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.wording.Headlines;
import undercroft.wording.ShelfWords;

/**
 * What wants doing at once as an Atom feed (RFC 4287), one entry a batch, so that a reader on a phone tells of it. An entry
 * keeps its id while nothing new is found. The feed is also the memory of what was told: it is read again after a restart.
 */
public final class ShelfFeed {
    public static final String FILE = "atom.xml";

    private static final String ATOM = "http://www.w3.org/2005/Atom";

    private ShelfFeed() {}

    /**
     * The feed of a shelf.
     *
     * @param address of the page the entries lead to, absolute or beside the feed
     */
    public static String of(ShelfWords words, Acts acts, String address) {
        Markup feed = Markup.xml();
        feed.open(
                "feed",
                "xmlns",
                ATOM,
                "xml:lang",
                words.format().messages().locale().getLanguage());
        feed.element("generator", "Undercroft");
        feed.element("id", id(words.outlook().cellar().name()));
        feed.element("title", words.of("feed.title", words.outlook().cellar().name()));
        feed.element("subtitle", words.of("caution.estimate"));
        feed.element("updated", acts.changed().toString());
        feed.open("author").element("name", "Undercroft").close("author");
        feed.empty("link", "rel", "alternate", "type", "text/html", "href", address);
        for (BatchOutlook batch : words.outlook().batches()) {
            if (acts.isNow(batch.id(), words.outlook())) {
                entry(feed, words, batch, acts.byBatch().get(batch.id()), address);
            }
        }
        return feed.close("feed").finished();
    }

    private static void entry(Markup feed, ShelfWords words, BatchOutlook batch, Acts.Act act, String address) {
        feed.open("entry");
        feed.element("id", id(words.outlook().cellar().name() + "/" + batch.id() + "/" + act.since()));
        feed.element("title", words.of("feed.act", batch.batch().name()));
        feed.element("updated", act.since().toString());
        feed.empty("link", "rel", "alternate", "type", "text/html", "href", address + "#batch-" + batch.id());
        act.causes().stream().sorted().forEach(cause -> feed.empty("category", "term", batch.id() + "/" + cause));
        feed.element("summary", new Headlines(words).of(batch));
        feed.close("entry");
    }

    /** From names and the time it was found alone, so that it stays when numbers change. */
    private static String id(String whole) {
        return "urn:uuid:" + UUID.nameUUIDFromBytes(whole.getBytes(StandardCharsets.UTF_8));
    }

    /** What a feed of ours tells, seen as of {@code now}; nothing when it is none, or damaged. */
    public static Optional<Acts> read(String feed, Instant now) {
        XMLInputFactory readers = XMLInputFactory.newDefaultFactory();
        readers.setProperty(XMLInputFactory.SUPPORT_DTD, false);
        readers.setProperty(XMLInputFactory.IS_SUPPORTING_EXTERNAL_ENTITIES, false);
        try {
            XMLStreamReader xml = readers.createXMLStreamReader(new StringReader(feed));
            Instant changed = null;
            Map<String, Acts.Act> all = new TreeMap<>();
            while (xml.hasNext()) {
                xml.next();
                if (xml.isStartElement() && xml.getLocalName().equals("entry")) {
                    readEntry(xml, now, all);
                } else if (xml.isStartElement() && xml.getLocalName().equals("updated")) {
                    changed = Instant.parse(xml.getElementText());
                }
            }
            return Optional.ofNullable(changed).map(at -> new Acts(at, all));
        } catch (XMLStreamException | DateTimeException damaged) {
            return Optional.empty();
        }
    }

    private static void readEntry(XMLStreamReader xml, Instant now, Map<String, Acts.Act> all)
            throws XMLStreamException {
        Set<String> causes = new HashSet<>();
        String batchId = "";
        Instant since = Instant.EPOCH;
        while (!(xml.isEndElement() && xml.getLocalName().equals("entry"))) {
            xml.next();
            if (xml.isStartElement() && xml.getLocalName().equals("updated")) {
                since = Instant.parse(xml.getElementText());
            } else if (xml.isStartElement() && xml.getLocalName().equals("category")) {
                String[] parts =
                        String.valueOf(xml.getAttributeValue(null, "term")).split("/", 2);
                batchId = parts[0];
                causes.add(parts[parts.length - 1]);
            }
        }
        all.put(batchId, new Acts.Act(causes, since, now));
    }
}
