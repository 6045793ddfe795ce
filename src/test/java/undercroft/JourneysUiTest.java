package undercroft;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import undercroft.app.bottling.PlanSamples;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.command.WindowRequest;
import undercroft.store.CellarStore;
import undercroft.view.edit.FixedFiles;
import undercroft.view.kit.Looks;

/** What a person does of an evening with the whole program: real mouse and keys, real dialogs, a folder on the disk. */
@ExtendWith(ApplicationExtension.class)
class JourneysUiTest {
    private static final Instant NOW = PlanSamples.NOW;
    private static final Clock CLOCK = Clock.fixed(NOW, ZoneOffset.UTC);

    @TempDir
    Path home;

    private final Hand hand = new Hand();
    private Stage stage;
    private CellarSwitch cellars;

    @Start
    void start(Stage shown) {
        Looks.loadFonts();
        stage = shown;
        stage.setX(0);
        stage.setY(0);
    }

    @AfterEach
    void close() {
        WaitForAsyncUtils.waitForAsyncFx(30_000, () -> {
            List.copyOf(Window.getWindows()).stream()
                    .filter(window -> window != stage)
                    .forEach(Window::hide);
            cellars.close();
        });
    }

    private void begin(Locale locale, String... arguments) {
        HostEnvironment host = new HostEnvironment(
                Map.of("XDG_CONFIG_HOME", home.resolve("settings").toString()), "Linux", home, home, locale);
        WaitForAsyncUtils.waitForAsyncFx(30_000, () -> {
            cellars = new CellarSwitch(stage, host, CLOCK, new FixedFiles(home.resolve("logger.csv")));
            cellars.begin(WindowRequest.of(List.of(arguments)));
        });
        WaitForAsyncUtils.waitForFxEvents();
    }

    private Path folder(Cellar cellar) {
        Path folder = home.resolve("cellar");
        CellarStore.create(folder, cellar, CLOCK, "test").close();
        return folder;
    }

    /** As it lies on the disk, once the window let go of it. */
    private Cellar onDisk(Path folder) {
        WaitForAsyncUtils.waitForAsyncFx(30_000, cellars::close);
        try (CellarStore store = CellarStore.open(folder, CLOCK, "test")) {
            return store.cellar();
        }
    }

    private Path onlyFolder() throws IOException {
        try (var files = Files.walk(home)) {
            return files.filter(file -> file.endsWith("cellar.json"))
                    .findFirst()
                    .orElseThrow()
                    .getParent();
        }
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
        hand.tabTo("batch-draw");
        hand.push(KeyCode.SPACE);
        hand.tabAndType("draw-count", "2");
        hand.push(KeyCode.ENTER);
        hand.awaitGone("form-save");
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

    /** Semicolons, a decimal comma, the day first: five days of 29 °C in a cupboard of 18 °C. */
    private void foreignLog() throws IOException {
        StringBuilder log = new StringBuilder("Datum;Uhrzeit;Temperatur °C;Feuchte %\n");
        Instant first = NOW.minus(Duration.ofDays(60));
        for (int hour = 0; hour <= 60 * 24; hour++) {
            var local = first.plus(Duration.ofHours(hour)).atZone(ZoneOffset.UTC);
            int day = hour / 24;
            String celsius = day >= 30 && day < 35 ? "29,0" : "18," + hour % 3;
            log.append(String.format(
                    Locale.ROOT,
                    "%02d.%02d.%d;%02d:%02d;%s;61%n",
                    local.getDayOfMonth(),
                    local.getMonthValue(),
                    local.getYear(),
                    local.getHour(),
                    local.getMinute(),
                    celsius));
        }
        Files.writeString(home.resolve("logger.csv"), log);
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
        WaitForAsyncUtils.waitForAsyncFx(30_000, cellars::close);
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
