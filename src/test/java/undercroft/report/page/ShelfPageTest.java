package undercroft.report.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.StringWriter;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import undercroft.demo.DemoShelf;
import undercroft.markup.ParsedPages;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.Outlooks;
import undercroft.outlook.ShelfMemory;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.EvidenceCourse;
import undercroft.report.Shelves;
import undercroft.wording.AlertWords;
import undercroft.wording.English;
import undercroft.wording.EvidenceWords;
import undercroft.wording.Headlines;
import undercroft.wording.Messages;
import undercroft.wording.ShelfWords;
import undercroft.wording.TaskWords;

final class ShelfPageTest {
    private static String page(ShelfWords words) {
        StringWriter page = new StringWriter();
        ShelfPage.write(words, Map.of(), page);
        return page.toString();
    }

    private static final Pattern NO_NUMBER = Pattern.compile("NaN|Infinity|-0\\b(?!\\.)|null");

    @ParameterizedTest
    @MethodSource("undercroft.report.Shelves#all")
    void everyPageIsWellFormedAndHasNoBrokenNumber(CellarOutlook outlook) {
        String text = ParsedPages.parsed(page(English.of(outlook)))
                .getDocumentElement()
                .getTextContent();
        assertFalse(NO_NUMBER.matcher(text).find());
        assertFalse(page(English.of(outlook)).contains("NaN"), "not in a drawing either");
    }

    @ParameterizedTest
    @MethodSource("undercroft.report.Shelves#all")
    void nothingIsLoadedAndNothingRuns(CellarOutlook outlook) {
        Document page = ParsedPages.parsed(page(English.of(outlook)));
        for (String element : List.of("script", "link", "img", "iframe", "object", "base", "form")) {
            assertEquals(0, page.getElementsByTagName(element).getLength(), element);
        }
        for (Element element : ParsedPages.elements(page, "*")) {
            for (int i = 0; i < element.getAttributes().getLength(); i++) {
                String name = element.getAttributes().item(i).getNodeName();
                String value = element.getAttributes().item(i).getNodeValue();
                assertFalse(name.startsWith("on"), name);
                boolean points = name.endsWith("href") || name.equals("src");
                assertTrue(!points || value.startsWith("#"), name + "=" + value);
            }
        }
        assertFalse(page.getElementsByTagName("style").item(0).getTextContent().contains("url("));
    }

    /** WCAG 2.2, 1.3.1, 1.1.1 and 4.1.2: headings in order, named tables and pictures, links that lead somewhere. */
    @ParameterizedTest
    @MethodSource("undercroft.report.Shelves#all")
    void thePageCanBeReadWithoutSeeingIt(CellarOutlook outlook) {
        Document page = ParsedPages.parsed(page(English.of(outlook)));
        int level = 0;
        Set<String> ids = new HashSet<>();
        for (Element element : ParsedPages.elements(page, "*")) {
            if (element.getTagName().matches("h[1-6]")) {
                int next = element.getTagName().charAt(1) - '0';
                assertTrue(next <= level + 1, "h" + next + " after h" + level);
                level = next;
            }
            assertTrue(!element.hasAttribute("id") || ids.add(element.getAttribute("id")), "an id is used twice");
        }
        for (Element picture : ParsedPages.elements(page, "svg")) {
            boolean part = picture.getParentNode().getNodeName().equals("svg");
            boolean told = picture.getElementsByTagName("title").getLength() == 1
                    && picture.getElementsByTagName("desc").getLength() == 1;
            assertTrue(part || told || picture.getAttribute("aria-hidden").equals("true"), "a picture without words");
        }
        ParsedPages.elements(page, "th").forEach(head -> assertTrue(head.hasAttribute("scope")));
        ParsedPages.elements(page, "table")
                .forEach(table ->
                        assertEquals(1, table.getElementsByTagName("caption").getLength()));
        ParsedPages.elements(page, "a")
                .forEach(link ->
                        assertTrue(ids.contains(link.getAttribute("href").substring(1)), link.getAttribute("href")));
    }

    @Test
    void everyBatchIsThereWithItsHeadlineAndItsWord() {
        Document page = ParsedPages.parsed(page(English.of(Shelves.DEMO)));
        assertEquals(13, page.getElementsByTagName("article").getLength());
        List<Element> articles = ParsedPages.elements(page, "article");
        for (BatchOutlook batch : Shelves.DEMO.batches()) {
            Element article = articles.stream()
                    .filter(one -> one.getAttribute("id").equals("batch-" + batch.id()))
                    .findFirst()
                    .orElseThrow();
            String text = ParsedPages.plain(article);
            assertTrue(text.contains(batch.batch().name()));
            assertTrue(text.contains(new Headlines(ShelfWords.of(Shelves.DEMO, Messages.english())).of(batch)), text);
            assertTrue(text.contains(new AlertWords(Messages.english()).word(batch.alert())));
            assertEquals(
                    batch.isCapped() && batch.bottlesLeft() > 0,
                    article.getElementsByTagName("figure").getLength() > 0);
        }
        Shelves.DEMO
                .tasks()
                .forEach(task -> assertTrue(ParsedPages.plain(page.getDocumentElement())
                        .contains(new TaskWords(ShelfWords.of(Shelves.DEMO, Messages.english())).why(task))));
    }

    @Test
    void hostileNamesStayText() {
        String page = page(English.of(Shelves.HOSTILE));
        assertFalse(page.contains("<script"), "no element comes from a name");
        assertFalse(page.contains("<img"), "nor from a note");
        assertFalse(page.contains("\u202E"), "nor does a name turn the page around");
        String shown = Shelves.HOSTILE_NAME.replace("\u202E", "");
        List<String> names = new ArrayList<>();
        ParsedPages.elements(ParsedPages.parsed(page), "bdi").forEach(name -> names.add(name.getTextContent()));
        assertTrue(names.contains("millrace-saison" + shown), names.toString());
        assertTrue(names.contains("Cellar </title><b>" + shown), names.toString());
        assertTrue(
                ParsedPages.plain(ParsedPages.parsed(page).getDocumentElement()).contains("onerror=\"steal()\""));
    }

    @Test
    void bottlesUnderPressureComeWithCautions() {
        Document page = ParsedPages.parsed(page(English.of(Shelves.DEMO)));
        String words = ParsedPages.plain(ParsedPages.byId(page, "batch-millrace-saison"));
        for (String caution : List.of(
                "eye or face protection",
                "gloves",
                "long sleeves",
                "Do not carry it: cool the closed box where it stands for a day",
                "No knocks",
                "children")) {
            assertTrue(words.contains(caution), caution);
        }
        assertFalse(
                ParsedPages.plain(ParsedPages.byId(page, "batch-quarry-porter")).contains("gloves"));
        String all = ParsedPages.plain(page.getDocumentElement());
        assertTrue(all.endsWith(
                "Estimate only: the bottle maker’s rating, local codes and licensed practice come first."));
    }

    @Test
    void theSameShelfMakesTheSamePage() {
        CellarOutlook again = Outlooks.of(DemoShelf.cellar(), DemoShelf.temperatures(), DemoShelf.NOW);
        assertEquals(page(English.of(Shelves.DEMO)), page(English.of(again)));
    }

    @Test
    void thirteenBatchesFitInAMegabyteAndAHalf() {
        int bytes = page(English.of(Shelves.DEMO)).getBytes(StandardCharsets.UTF_8).length;
        assertTrue(bytes < 1_500_000, bytes + " bytes");
    }

    @Test
    void theFiguresAreInTheUnitsOfTheCellar() {
        String metric = ParsedPages.plain(
                ParsedPages.byId(ParsedPages.parsed(page(English.of(Shelves.DEMO))), "batch-millrace-saison"));
        String us = ParsedPages.plain(
                ParsedPages.byId(ParsedPages.parsed(page(English.of(Shelves.US))), "batch-millrace-saison"));
        assertTrue(metric.contains("Working pressure3.5 bar"), metric);
        assertTrue(
                us.contains("Working pressure50 psi"),
                "3.5 bar are 50.76 psi (1 bar = 14.5038 psi, NIST SP 811): " + us);
    }

    /** The page says the same of what was seen as the window does: both read one course. */
    @Test
    void whatWasSeenIsToldStepByStep() {
        ShelfWords words = English.of(Shelves.DEMO);
        Map<String, EvidenceCourse> courses =
                Outlooks.courses(Shelves.DEMO.cellar(), DemoShelf.temperatures(), Shelves.DEMO, new ShelfMemory());
        StringWriter page = new StringWriter();
        ShelfPage.write(words, courses, page);
        String text = ParsedPages.parsed(page.toString())
                .getDocumentElement()
                .getTextContent()
                .replace('\u00a0', ' ');
        assertFalse(courses.isEmpty());
        EvidenceWords said = new EvidenceWords(words);
        courses.forEach((id, course) -> {
            assertTrue(Shelves.DEMO.batch(id).bottlesLeft() > 0, id);
            assertTrue(text.contains(said.bands(course).replace('\u00a0', ' ')), id);
            said.seen(course)
                    .forEach(seen -> assertTrue(text.contains(seen.limit().replace('\u00a0', ' ')), id + " " + seen));
        });
        assertFalse(NO_NUMBER.matcher(text).find());
    }
}
