package undercroft;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Path;
import java.time.DayOfWeek;
import java.time.ZoneOffset;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import undercroft.cellar.Batch;
import undercroft.cellar.Serving;

/**
 * What a person does of an evening: real mouse and keys, real dialogs, a folder on the disk. {@code -P window} runs them on a
 * real window.
 */
@Tag("window")
@ExtendWith(ApplicationExtension.class)
class JourneysUiTest extends Evening {
    @Start
    void start(Stage shown) {
        take(shown);
    }

    @Test
    void fromTheFirstRunToTheFirstBatchInAtMostFifteenClicks() throws IOException {
        begin(Locale.UK);
        hand.see("start-name");
        hand.type("Mill Lane");
        hand.click("start-create");
        hand.click("empty-add-batch");
        hand.see("batch-name");
        hand.type("First Ale");
        hand.fill("batch-abv", "5");
        hand.fill("batch-litres", "19");
        hand.fill("sugar-0-weight", "110");
        hand.fill("lot-1-count", "54");
        hand.click("form-save");
        hand.awaitGone("form-save");
        hand.awaitText("inspector-name", "First Ale");
        hand.awaitText("inspector-headline", "arbonating");
        assertTrue(hand.clicks() <= 15, "clicks: " + hand.clicks());
        Batch made = onDisk(onlyFolder()).batches().get(0);
        assertEquals("First Ale", made.name());
        assertEquals(54, made.leftAt(NOW));
    }

    @Test
    void theSameByKeyboardAlone() throws IOException {
        begin(Locale.UK);
        hand.see("start-name");
        hand.type("Mill Lane");
        hand.push(KeyCode.ENTER);
        hand.tabTo("empty-add-batch");
        hand.push(KeyCode.SPACE);
        hand.see("batch-name");
        hand.type("First Ale");
        hand.tabAndType("batch-abv", "5");
        hand.tabAndType("batch-litres", "19");
        hand.tabAndType("sugar-0-weight", "110");
        hand.tabAndType("lot-1-count", "54");
        hand.push(KeyCode.ENTER);
        hand.awaitGone("form-save");
        hand.awaitText("inspector-name", "First Ale");
        hand.tabTo("planks");
        hand.push(KeyCode.ENTER);
        hand.awaitText("batch-title", "First Ale");
        hand.awaitFocus("planks");
        hand.tabTo("batch-draw");
        hand.push(KeyCode.SPACE);
        hand.tabAndType("draw-count", "2");
        hand.push(KeyCode.ENTER);
        hand.awaitGone("form-save");
        hand.awaitFocus("batch-draw");
        hand.push(KeyCode.ESCAPE);
        hand.see("inspector-name");
        hand.tabTo("page-shelf");
        hand.arrowTo(KeyCode.RIGHT, "page-servings");
        hand.push(KeyCode.SPACE);
        hand.tabTo("serving-add");
        hand.push(KeyCode.SPACE);
        hand.see("serving-at");
        hand.push(KeyCode.ESCAPE);
        hand.awaitGone("serving-at");
        hand.push(KeyCode.CONTROL, KeyCode.Z);
        assertEquals(0, hand.clicks());
        assertEquals(54, onDisk(onlyFolder()).batches().get(0).leftAt(NOW), "the two bottles are back");
    }

    @Test
    void germanWithADecimalComma() throws IOException {
        begin(Locale.GERMANY);
        hand.see("start-name");
        hand.type("Keller");
        hand.click("start-create");
        hand.click("empty-add-batch");
        hand.see("batch-name");
        hand.type("Erster Sud");
        hand.fill("batch-abv", "5,2");
        hand.fill("batch-litres", "18,5");
        hand.fill("sugar-0-weight", "110,5 g");
        hand.fill("lot-1-count", "54");
        hand.click("form-save");
        hand.awaitGone("form-save");
        hand.awaitText("inspector-name", "Erster Sud");
        hand.click("open-batch");
        hand.awaitText("batch-title", "Erster Sud");
        hand.awaitText("headline", "arbonisi");
        Batch made = onDisk(onlyFolder()).batches().get(0);
        assertEquals(18.5, made.priming().beerLitres());
        assertEquals(110.5, made.priming().doses().get(0).grams());
        assertEquals(5.2, made.beer().abvPercent());
    }

    @Test
    void aForeignLogIsImportedAndItsSpellReviewed() throws IOException {
        foreignLog();
        Path folder = folder(JourneyCellars.cupboard(NOW));
        begin(Locale.UK, folder.toString());
        hand.click("place-cupboard");
        hand.chooseLine("Bring in temperatures");
        hand.click("import-choose");
        hand.see("import-lines");
        hand.click("form-save");
        hand.awaitGone("form-save");
        hand.awaitText("news-sentence", "readings into Cupboard");
        hand.click("page-warm-spells");
        hand.awaitText("spell-title", "Cupboard");
        assertTrue(hand.read("spell-title").contains("arm"), hand.read("spell-title"));
        hand.click("open-ale");
        hand.awaitText("batch-title", "Ale");
    }

    @Test
    void aBottlingDayIsPlannedAndCappedIntoTwoPlaces() {
        Path folder = folder(JourneyCellars.planned());
        begin(Locale.UK, folder.toString());
        hand.click("page-bottling-day");
        hand.click("draft-pale");
        hand.click("screen-carbonation");
        hand.fill("draft-target", "2.3");
        hand.click("screen-verdict");
        hand.awaitText("verdict-word", "Go");
        hand.click("screen-cap");
        hand.click("capping-split");
        hand.fill("elsewhere-1-count", "20");
        hand.choose("elsewhere-1-place", "Shed");
        hand.click("cap");
        hand.awaitText("batch-title", "Pale");
        Batch capped = onDisk(folder).batch("pale");
        assertEquals(
                Map.of("cupboard", 37, "shed", 20),
                Map.of(
                        capped.lots().get(0).stays().get(0).placeId(),
                        capped.lots().get(0).count(),
                        capped.lots().get(1).stays().get(0).placeId(),
                        capped.lots().get(1).count()));
    }

    @Test
    void aReadingABurstAQuestionAndAServingOfOneEvening() {
        Path folder = folder(JourneyCellars.cupboard(NOW));
        begin(Locale.UK, folder.toString());
        hand.awaitText("inspector-name", "Ale");
        hand.click("open-batch");

        hand.click("batch-read");
        hand.fill("reading-pressure", "2.2");
        hand.click("form-save");
        hand.awaitText("news-sentence", "narrower");
        assertTrue(hand.read("news-sentence").contains("%"), hand.read("news-sentence"));

        String before = hand.read("headline");
        hand.click("batch-draw");
        hand.choose("draw-fate", "burst");
        hand.click("form-save");
        hand.awaitText("headline", "1 bottle burst");
        hand.see("burst-question");
        hand.click("undo");
        hand.awaitText("headline", before);
        hand.awaitGone("burst-question");

        hand.click("page-warm-spells");
        hand.click("tab-what-if");
        hand.fill("whatif-kelvin", "15");
        hand.click("what-if-ask");
        hand.see("what-if-headline");
        hand.fill("whatif-kelvin", "3");
        hand.awaitGone("what-if-headline");

        hand.click("page-servings");
        hand.click("serving-add");
        hand.fill("serving-at", "Saturday 18:00");
        hand.fill("serving-bottles", "4");
        hand.click("form-save");
        hand.awaitText("serving-title", "4 bottles of Ale");
        Serving serving = onDisk(folder).servings().get(0);
        assertEquals(Optional.empty(), serving.placeId(), "a kitchen fridge is no place of the cellar");
        assertEquals(DayOfWeek.SATURDAY, serving.at().atZone(ZoneOffset.UTC).getDayOfWeek());
    }

    @Test
    void allIsThereAgainTheNextEvening() {
        Path folder = folder(JourneyCellars.cupboard(NOW));
        begin(Locale.UK, folder.toString());
        hand.awaitText("inspector-name", "Ale");
        hand.click("open-batch");
        hand.click("batch-read");
        hand.fill("reading-pressure", "1.9");
        hand.click("form-save");
        hand.awaitGone("form-save");
        hand.awaitText("news-sentence", "Ale");
        hand.click("page-servings");
        WaitForAsyncUtils.waitForAsyncFx(10_000, () -> {
            stage.setWidth(1100);
            stage.setHeight(700);
        });
        WaitForAsyncUtils.waitForFxEvents();
        leave();
        begin(Locale.UK);
        hand.see("serving-add");
        assertEquals(1100, stage.getWidth());
        assertEquals(700, stage.getHeight());
        hand.click("page-shelf");
        hand.awaitText("inspector-name", "Ale");
        hand.click("open-batch");
        hand.awaitText("tab-readings", "1");
        assertEquals(1, onDisk(folder).batch("ale").readings().size());
    }
}
