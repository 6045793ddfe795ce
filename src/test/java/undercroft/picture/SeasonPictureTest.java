package undercroft.picture;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.lot.LotOutlook;
import undercroft.outlook.lot.Stage;
import undercroft.plot.mark.Dash;
import undercroft.plot.mark.Frame;
import undercroft.plot.mark.Mark;
import undercroft.plot.mark.Picture;
import undercroft.plot.mark.Role;
import undercroft.plot.mark.TextMeasure;
import undercroft.report.Shelves;
import undercroft.wording.Messages;
import undercroft.wording.ShelfWords;

/** Read as geometry: what stands where, without a toolkit. */
final class SeasonPictureTest {
    private static final TextMeasure MEASURE = TextMeasure.rough();
    private static final CellarOutlook DEMO = Shelves.DEMO;
    private static final ShelfWords WORDS = ShelfWords.of(DEMO, Messages.english());
    private static final Season SEASON = Season.of(WORDS, DEMO.at());
    private static final SeasonPicture PICTURE = laidOut(920, SeasonPicture.Sizes.USUAL);

    private static SeasonPicture laidOut(double width, SeasonPicture.Sizes sizes) {
        return SeasonPicture.of(SEASON, SEASON.usualFrom(), SEASON.usualUntil(), width, sizes, MEASURE, WORDS);
    }

    private static List<SeasonRow> rows() {
        return SEASON.lanes().stream().flatMap(lane -> lane.rows().stream()).toList();
    }

    private static SeasonRow row(String batchId) {
        return rows().stream()
                .filter(row -> row.batchId().equals(batchId))
                .findFirst()
                .orElseThrow();
    }

    private static Stream<Mark> flat(Picture picture) {
        return picture.marks().stream()
                .flatMap(mark -> mark instanceof Mark.Clipped clipped ? clipped.marks().stream() : Stream.of(mark));
    }

    private static <M extends Mark> List<M> inRow(String batchId, Class<M> kind) {
        Frame frame = PICTURE.frameOf(batchId, row(batchId).lotId()).orElseThrow();
        return PICTURE.picture().marks().stream()
                .filter(mark ->
                        mark instanceof Mark.Clipped clipped && clipped.frame().y() == frame.y())
                .flatMap(mark -> ((Mark.Clipped) mark).marks().stream())
                .filter(kind::isInstance)
                .map(kind::cast)
                .toList();
    }

    @Test
    void everyLotWithBottlesLeftHasARowInTheLaneOfItsPlace() {
        Set<String> expected = new HashSet<>();
        DEMO.batches()
                .forEach(batch -> batch.lots().stream()
                        .filter(lot -> lot.left() > 0)
                        .forEach(lot -> expected.add(lot.place().id() + "/" + batch.id() + "/" + lot.id())));
        Set<String> shown = new HashSet<>();
        SEASON.lanes()
                .forEach(lane -> lane.rows()
                        .forEach(row -> shown.add(lane.placeId() + "/" + row.batchId() + "/" + row.lotId())));
        assertEquals(expected, shown);
    }

    @Test
    void theGravestComesFirstInItsPlace() {
        for (Season.Lane lane : SEASON.lanes()) {
            for (int i = 1; i < lane.rows().size(); i++) {
                assertTrue(lane.rows()
                                .get(i - 1)
                                .alert()
                                .compareTo(lane.rows().get(i).alert())
                        >= 0);
            }
        }
    }

    @Test
    void phasesFollowEachOtherAndNowLiesInTheOneTheStageSays() {
        for (SeasonRow row : rows()) {
            LotOutlook lot = DEMO.batch(row.batchId()).lot(row.lotId());
            long ready = row.ready().orElse(Long.MAX_VALUE);
            assertTrue(row.capped() <= row.carbonated() && row.carbonated() <= ready, row.name());
            boolean carbonating = SEASON.now() < row.carbonated() || lot.stage() == Stage.CARBONATING;
            assertEquals(lot.stage() == Stage.CARBONATING, carbonating, row.name());
            if (lot.stage() == Stage.READY) {
                assertTrue(ready <= SEASON.now(), row.name());
            }
            if (lot.stage() == Stage.PAST_BEST_BEFORE) {
                assertTrue(row.bestBefore().getAsLong() <= SEASON.now(), row.name());
            }
        }
    }

    @Test
    void theReadyBlockRunsFromItsDateToItsBestBeforeAndIsFainterAhead() {
        SeasonRow row = row("quarry-porter");
        List<Mark.Rect> ready = inRow("quarry-porter", Mark.Rect.class).stream()
                .filter(rect -> rect.role() == Role.READY)
                .toList();
        Picture picture = PICTURE.picture();
        double now = picture.time().xAt(SEASON.now());
        assertEquals(2, ready.size(), "what was and what will be");
        assertEquals(
                picture.time().xAt(row.ready().getAsLong()),
                ready.get(0).frame().x(),
                1);
        assertEquals(now, ready.get(0).frame().right(), 1);
        assertEquals(now, ready.get(1).frame().x(), 1);
        assertEquals(
                picture.time().xAt(row.bestBefore().getAsLong()),
                ready.get(1).frame().right(),
                1);
        assertTrue(ready.get(1).opacity() < ready.get(0).opacity());
        List<Dash> edges = inRow("quarry-porter", Mark.Polyline.class).stream()
                .filter(line -> line.stroke().role() == Role.READY)
                .map(line -> line.stroke().dash())
                .toList();
        assertEquals(List.of(Dash.SOLID, Dash.LONG), edges);
    }

    @Test
    void theWedgeIsAsHighAsTheShareOfItsCarbonation() {
        SeasonRow row = row("gable-strong");
        List<Mark.Polygon> wedge = inRow("gable-strong", Mark.Polygon.class);
        double foot = wedge.get(0).points().y(wedge.get(0).points().size() - 1);
        Frame frame = PICTURE.frameOf("gable-strong", row.lotId()).orElseThrow();
        double full = Math.round(0.36 * frame.height());
        int checked = 0;
        for (int i = 0; i < row.fraction().size(); i++) {
            double x = PICTURE.picture().time().xAt(row.fraction().timeAt(i));
            for (int k = 0; k < wedge.get(0).points().size() - 2; k++) {
                if (Math.abs(wedge.get(0).points().x(k) - x) < 1e-6) {
                    double share = (foot - wedge.get(0).points().y(k)) / full;
                    assertEquals(row.fraction().valueAt(i), share, 1e-6);
                    checked++;
                }
            }
        }
        assertTrue(checked > 10, checked + " points");
    }

    @Test
    void theStockEndsAtNowAsHighAsTheBottlesThatAreLeft() {
        SeasonRow row = row("first-cut-pale");
        LotOutlook lot = DEMO.batch("first-cut-pale").lot(row.lotId());
        List<Mark.Rect> stock = inRow("first-cut-pale", Mark.Rect.class).stream()
                .filter(rect -> rect.role() == Role.AGE && rect.opacity() == 0.4)
                .toList();
        Mark.Rect last = stock.get(stock.size() - 1);
        assertEquals(PICTURE.picture().time().xAt(SEASON.now()), last.frame().right(), 1);
        double share = (double) lot.left() / lot.lot().count();
        assertEquals(share, last.frame().height() / stock.get(0).frame().height(), 1e-6, "the first is the full crate");
    }

    @Test
    void aWordOfExplanationStandsOnce() {
        for (String key :
                List.of("season.carbonating", "season.clearing", "season.ready", "season.left", "season.ready-date")) {
            long times = flat(PICTURE.picture())
                    .filter(mark ->
                            mark instanceof Mark.Text text && text.text().equals(WORDS.of(key)))
                    .count();
            assertTrue(times <= 1, key);
        }
        assertTrue(flat(PICTURE.picture())
                .anyMatch(mark -> mark instanceof Mark.Text text && text.text().equals(WORDS.of("season.ready"))));
    }

    @Property(tries = 60, seed = "20260104")
    void everyTextLiesOnThePictureAndOnNoOtherAtEveryWidth(
            @ForAll @IntRange(min = 360, max = 1900) int width, @ForAll @IntRange(min = 0, max = 1) int named) {
        SeasonPicture.Sizes sizes = named == 1 ? SeasonPicture.Sizes.USUAL : new SeasonPicture.Sizes(0, 30, 24, 40);
        Picture picture = laidOut(width, sizes).picture();
        List<Frame> boxes = flat(picture)
                .filter(Mark.Text.class::isInstance)
                .map(mark -> box((Mark.Text) mark))
                .toList();
        for (int i = 0; i < boxes.size(); i++) {
            Frame box = boxes.get(i);
            assertTrue(box.x() >= -4 && box.right() <= width + 0.5 && box.bottom() <= picture.height(), box.toString());
            for (int j = 0; j < i; j++) {
                assertFalse(box.overlaps(boxes.get(j)), box + " on " + boxes.get(j));
            }
        }
    }

    private static Frame box(Mark.Text text) {
        double width = MEASURE.width(text.text(), text.style());
        double size = text.style().sizePixels();
        return new Frame(text.anchor().leftOf(text.x(), width), text.y() - 0.75 * size, width, 0.85 * size);
    }

    @Test
    void theRowUnderAPointIsFoundWhereItsFrameIs() {
        for (SeasonRow row : rows()) {
            Frame frame = PICTURE.frameOf(row.batchId(), row.lotId()).orElseThrow();
            assertEquals(
                    row,
                    PICTURE.at(frame.x() + 300, frame.y() + frame.height() / 2).orElseThrow());
        }
        assertTrue(PICTURE.at(300, 5).isEmpty(), "the axis is no row");
    }

    @Test
    void nowIsNamedByItsDateOnlyWhenAnotherDayIsLookedAt() {
        assertEquals("now", SEASON.nowLabel());
        Instant later = DEMO.at().plus(Duration.ofDays(30));
        assertEquals("21 November", Season.of(WORDS, later).nowLabel());
        Instant sameEvening = DEMO.at().plus(Duration.ofHours(2));
        assertEquals("now", Season.of(WORDS, sameEvening).nowLabel());
    }

    @Test
    void aShelfWithoutBottlesHasNoLane() {
        ShelfWords words = ShelfWords.of(Shelves.EMPTY, Messages.english());
        Season season = Season.of(words, Shelves.EMPTY.at());
        assertTrue(season.isEmpty());
        Picture picture = SeasonPicture.of(
                        season, season.usualFrom(), season.usualUntil(), 600, SeasonPicture.Sizes.USUAL, MEASURE, words)
                .picture();
        assertEquals(SeasonPicture.Sizes.USUAL.axis(), picture.height());
    }
}
