package undercroft.report.sheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.w3c.dom.Document;
import org.w3c.dom.Element;
import undercroft.cellar.Batch;
import undercroft.cellar.Lot;
import undercroft.cellar.PrintedLabel;
import undercroft.cellar.Reading;
import undercroft.cellar.Settings;
import undercroft.demo.DemoShelf;
import undercroft.markup.ParsedPages;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.Outlooks;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.UnitSystem;
import undercroft.report.Shelves;
import undercroft.wording.English;
import undercroft.wording.QuantityFormat;

final class CrateLabelsTest {
    private static final Instant MADE = Instant.parse("2026-11-24T12:00:00Z");
    private static final QuantityFormat WORDS = English.in(UnitSystem.METRIC);

    private static CellarOutlook atCapping(String batchId) {
        return atCapping(batchId, Optional.empty());
    }

    private static CellarOutlook atCapping(String batchId, Optional<String> address) {
        Batch batch = DemoShelf.cellar().batch(batchId);
        Instant capped = batch.cappedAt().orElseThrow();
        return Outlooks.of(
                DemoShelf.cellar()
                        .withSettings(new Settings(UnitSystem.METRIC, 0, address, Optional.empty()))
                        .withServings(List.of())
                        .withBatches(List.of(batch)),
                DemoShelf.temperatures(),
                capped);
    }

    private static String page(String batchId, int bottlesInCrate, LabelPaper paper, Optional<String> address) {
        return page(atCapping(batchId, address), batchId, bottlesInCrate, paper);
    }

    private static String page(CellarOutlook atCapping, String batchId, int bottlesInCrate, LabelPaper paper) {
        return CrateLabels.of(atCapping, Optional.empty(), batchId, bottlesInCrate, paper, MADE, WORDS)
                .page();
    }

    private static List<Element> ofClass(Document page, String element, String cssClass) {
        return ParsedPages.elements(page, element).stream()
                .filter(one -> one.getAttribute("class").equals(cssClass))
                .toList();
    }

    @ParameterizedTest
    @EnumSource(LabelPaper.class)
    void everyCrateGetsALabelAndEverySheetAsManyAsItHolds(LabelPaper paper) {
        Document page = ParsedPages.parsed(page("bramble-wheat", 10, paper, Optional.empty()));
        int crates = atCapping("bramble-wheat").batch("bramble-wheat").lots().stream()
                .mapToInt(lot -> (lot.left() + 9) / 10)
                .sum();
        assertEquals(crates, ofClass(page, "section", "label").size());
        assertEquals(
                (crates + paper.labels() - 1) / paper.labels(),
                ofClass(page, "div", "sheet").size());
    }

    @Test
    void eachBottleHasABoxAndAboveSixtyALine() {
        Document boxes = ParsedPages.parsed(page("bramble-wheat", 60, LabelPaper.A6, Optional.empty()));
        int bottles = atCapping("bramble-wheat").batch("bramble-wheat").lots().stream()
                .mapToInt(lot -> lot.left())
                .sum();
        assertEquals(bottles, ParsedPages.elements(boxes, "li").size());
        assertEquals(0, ParsedPages.elements(boxes, "i").size());
        Document lines = ParsedPages.parsed(page(sixtyThree(), "lock-gate-bitter", 100, LabelPaper.A6));
        assertEquals(63, ParsedPages.elements(lines, "i").size());
        assertEquals(13, ParsedPages.elements(lines, "li").size());
    }

    private static CellarOutlook sixtyThree() {
        Batch batch = DemoShelf.cellar().batch("lock-gate-bitter");
        Lot lot = batch.lots().get(0);
        Lot many = new Lot(
                lot.id(),
                lot.bottleTypeId(),
                lot.colour(),
                63,
                lot.fillMillilitres(),
                lot.scuffed(),
                lot.stays(),
                List.of());
        return Outlooks.of(
                DemoShelf.cellar().withServings(List.of()).withBatches(List.of(batch.withLots(List.of(many)))),
                Map.of(),
                batch.cappedAt().orElseThrow());
    }

    /** Paper outlives the day: what it says must hold then, and no more than that day's limit. */
    @Test
    void aLabelTellsOfTheDayOfCappingAndGivesNoAllClear() {
        String text = ParsedPages.plain(ParsedPages.parsed(page("millrace-saison", 24, LabelPaper.A4, Optional.empty()))
                .getDocumentElement());
        double limit = atCapping("millrace-saison")
                .batch("millrace-saison")
                .heatLimitLot()
                .pressure()
                .heatLimitCelsius();
        assertTrue(text.contains("Heat limit (estimate)" + (int) Math.floor(limit) + " °Cof capping day"), text);
        assertTrue(text.contains("made 24 Nov 2026"), text);
        assertTrue(text.contains("Estimate only:"), text);
        for (Alert alert : List.of(Alert.WATCH, Alert.ACT)) {
            assertFalse(text.contains(WORDS.messages().nameOf(alert)), alert.name());
        }
        assertFalse(text.matches(".*\\b(OK|safe|all well)\\b.*"), text);
    }

    /** A reading has shown less room for heat since: paper made then must not say more. */
    @Test
    void aLimitThatHasFallenSinceIsTheOneOnTheLabelAndSaysOfWhichDay() {
        CellarOutlook capped = atCapping("millrace-saison");
        BatchOutlook batch = capped.batch("millrace-saison");
        double limit = batch.heatLimitLot().pressure().heatLimitCelsius();
        Lot lot = batch.heatLimitLot().lot();
        Batch read = batch.batch()
                .withReadings(List.of(new Reading.Gauge(
                        batch.batch().cappedAt().orElseThrow().plus(Duration.ofDays(20)), lot.id(), "gauge", 7)));
        BatchOutlook today = Outlooks.of(capped.cellar().withBatches(List.of(read)), DemoShelf.temperatures(), MADE)
                .batch(read.id());
        double now = today.heatLimitLot().pressure().heatLimitCelsius();
        assertTrue(now < limit - 2, now + " against " + limit);
        CrateLabels.Sheets sheets =
                CrateLabels.of(capped, Optional.of(today), read.id(), 24, LabelPaper.A4, MADE, WORDS);
        assertEquals(new PrintedLabel(MADE, now), sheets.printed());
        String text = ParsedPages.plain(ParsedPages.parsed(sheets.page()).getDocumentElement());
        assertTrue(text.contains("Heat limit (estimate)" + WORDS.heatLimit(now) + "of 24 Nov 2026"), text);
        assertEquals(
                limit,
                CrateLabels.of(capped, Optional.of(batch), read.id(), 24, LabelPaper.A4, MADE, WORDS)
                        .printed()
                        .heatLimitCelsius());
    }

    @Test
    void theCodeLeadsToTheBatchAndWithoutAnAddressThereIsRoomForNotes() {
        Document coded =
                ParsedPages.parsed(page("larch-honey-ale", 24, LabelPaper.A4, Optional.of("https://cellar.example/")));
        List<Element> codes = ofClass(coded, "svg", "code");
        assertFalse(codes.isEmpty());
        assertEquals(
                "https://cellar.example/#batch-larch-honey-ale",
                codes.get(0).getElementsByTagName("desc").item(0).getTextContent());
        assertEquals(0, ofClass(coded, "div", "notes").size());
        Document plain = ParsedPages.parsed(page("larch-honey-ale", 24, LabelPaper.A4, Optional.empty()));
        assertEquals(
                ofClass(plain, "section", "label").size(),
                ofClass(plain, "div", "notes").size());
    }

    @Test
    void namesCannotBreakOutOfThePage() {
        String id = Shelves.HOSTILE.batches().get(0).id();
        String page = page(Shelves.HOSTILE, id, 24, LabelPaper.A4);
        ParsedPages.parsed(page);
        assertFalse(page.contains("<script"));
    }

    @Test
    void aCrateTakesFromOneToAHundredBottles() {
        assertThrows(InvalidInput.class, () -> page("larch-honey-ale", 0, LabelPaper.A4, Optional.empty()));
        assertThrows(InvalidInput.class, () -> page("larch-honey-ale", 101, LabelPaper.A4, Optional.empty()));
    }
}
