package undercroft.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.MenuButton;
import javafx.scene.control.MenuItem;
import javafx.scene.control.Slider;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.input.MouseButton;
import javafx.scene.input.MouseEvent;
import javafx.scene.input.ScrollEvent;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import undercroft.outlook.OutlookSamples;
import undercroft.plot.PlotStack;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.UnitSystem;
import undercroft.view.kit.Looks;
import undercroft.view.kit.PlotsView;
import undercroft.view.shelf.CrateView;

@ExtendWith(ApplicationExtension.class)
class MainWindowUiTest {
    private SampleContext sample;
    private MainWindow window;

    @Start
    void start(Stage stage) {
        Looks.loadFonts();
        SampleContext.fill(stage);
        sample = new SampleContext(OutlookSamples.cellar());
        window = new MainWindow(sample.context);
        window.show(stage);
    }

    private <T extends Node> T find(String id, Class<T> kind) {
        return kind.cast(window.scene().lookup("#" + id));
    }

    private String text(String id) {
        return find(id, Label.class).getText();
    }

    private void onWindowThread(Runnable act) {
        WaitForAsyncUtils.waitFor(WaitForAsyncUtils.asyncFx(act));
        WaitForAsyncUtils.waitForFxEvents();
    }

    private MenuItem item(String id) {
        return find("view-menu", MenuButton.class).getItems().stream()
                .filter(each -> id.equals(each.getId()))
                .findFirst()
                .orElseThrow();
    }

    private void openBatch(String crateKey, FxRobot robot) {
        robot.clickOn(crate(crateKey).lookup(".crate-name"));
        onWindowThread(() -> find("open-batch", Button.class).fire());
    }

    private CrateView crate(String key) {
        return find("crate-" + key, CrateView.class);
    }

    @Test
    void theShelfShowsACrateForEachBatchInEachPlace() {
        for (String key : List.of(
                "beacon@loft",
                "larch@loft",
                "quarry@cupboard",
                "hedge@cupboard",
                "gable@cupboard",
                "winter@fridge",
                "fenland@sill",
                "summer@fridge",
                "heron@cupboard",
                "heron@fridge",
                "plastic@cupboard",
                "lantern")) {
            assertNotNull(crate(key), key);
            assertTrue(crate(key).getWidth() > 100, key);
        }
        assertEquals(null, crate("orchard@cupboard"), "what is all gone is put away");
        onWindowThread(find("show-finished", ToggleButton.class)::fire);
        assertNotNull(crate("orchard@cupboard"));
    }

    @Test
    void aClickOnACrateTurnsToItsPage(FxRobot robot) {
        robot.clickOn(crate("fenland@sill").lookup(".crate-name"));
        assertEquals("Fenland Wheat", text("inspector-name"));
        assertTrue(crate("fenland@sill").isChosen());
        assertFalse(crate("beacon@loft").isChosen());
    }

    @Test
    void theArrowsMoveTheChoice(FxRobot robot) {
        assertEquals("Beacon Tripel", text("inspector-name"));
        robot.press(KeyCode.DOWN).release(KeyCode.DOWN);
        assertEquals("Larch Honey Ale", text("inspector-name"));
        robot.press(KeyCode.PAGE_DOWN).release(KeyCode.PAGE_DOWN);
        assertEquals("Fenland Wheat", text("inspector-name"));
        robot.press(KeyCode.ENTER).release(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
        assertEquals("Fenland Wheat", text("batch-title"));
        robot.press(KeyCode.ESCAPE).release(KeyCode.ESCAPE);
        assertEquals("Fenland Wheat", text("inspector-name"));
    }

    @Test
    void theSliderAsksForTheShelfOfAnotherDay() {
        onWindowThread(() -> find("as-of", Slider.class).setValue(-8));
        Instant last = sample.asked.get(sample.asked.size() - 1);
        assertEquals(Instant.parse("2026-11-17T12:00:00Z"), last);
        assertEquals("17 November, 8 days ago", text("as-of-label"));
        onWindowThread(find("today", Button.class)::fire);
        assertEquals(OutlookSamples.NOW, sample.asked.get(sample.asked.size() - 1));
    }

    @Test
    void theCursorReadsAllFourPlots(FxRobot robot) {
        openBatch("fenland@sill", robot);
        PlotsView plots = find("plots", PlotsView.class);
        robot.moveTo(plots);
        WaitForAsyncUtils.waitForFxEvents();
        String readout = plots.readoutProperty().get();
        for (String subject : List.of("Carbonation", "Pressure", "Temperature", "Light")) {
            assertTrue(readout.contains(subject), readout);
        }
        assertTrue(readout.contains("bar") && readout.contains("°C"), readout);
        robot.moveTo(crate("larch@loft"));
        WaitForAsyncUtils.waitForFxEvents();
        assertEquals("", plots.readoutProperty().get());
    }

    /** What is shown once the forecast of the whole shelf is there: until then the plots are drawn anew. */
    private static PlotStack settled(PlotsView plots) {
        PlotStack shown = plots.shown();
        for (int still = 0; still < 10; still++) {
            WaitForAsyncUtils.waitForFxEvents(3);
            if (!plots.shown().equals(shown)) {
                shown = plots.shown();
                still = 0;
            }
        }
        return shown;
    }

    @Test
    void theWheelWithCtrlZoomsAboutThePointerAndADoubleClickShowsAll(FxRobot robot) {
        openBatch("beacon@loft", robot);
        PlotsView plots = find("plots", PlotsView.class);
        PlotStack whole = settled(plots);
        Bounds bounds = plots.localToScene(plots.getBoundsInLocal());
        long before = plots.picture().time().epochAt(bounds.getWidth() * 0.6);
        double x = bounds.getMinX() + bounds.getWidth() * 0.6;
        onWindowThread(() -> plots.fireEvent(wheelUp(x, bounds.getMinY() + 60, false)));
        assertEquals(whole.until(), plots.shown().until(), "the wheel alone scrolls the page");
        onWindowThread(() -> plots.fireEvent(wheelUp(x, bounds.getMinY() + 60, true)));
        PlotStack zoomed = plots.shown();
        assertTrue(zoomed.until() - zoomed.from() < (whole.until() - whole.from()) * 0.9);
        double after = plots.picture().time().xAt(before);
        assertEquals(bounds.getWidth() * 0.6, after, 3, "the instant under the pointer stays there");
        onWindowThread(() -> plots.fireEvent(press(false, 2)));
        assertEquals(whole.from(), plots.shown().from());
        assertEquals(whole.until(), plots.shown().until());
    }

    private static ScrollEvent wheelUp(double x, double y, boolean withCtrl) {
        return new ScrollEvent(
                ScrollEvent.SCROLL,
                x,
                y,
                x,
                y,
                false,
                withCtrl,
                false,
                false,
                false,
                false,
                0,
                40,
                0,
                40,
                ScrollEvent.HorizontalTextScrollUnits.NONE,
                0,
                ScrollEvent.VerticalTextScrollUnits.NONE,
                0,
                0,
                null);
    }

    @Test
    void theKeysZoomAndPanWithoutLeavingWhatIsKnown(FxRobot robot) {
        openBatch("beacon@loft", robot);
        PlotsView plots = find("plots", PlotsView.class);
        PlotStack whole = plots.shown();
        onWindowThread(plots::requestFocus);
        robot.press(KeyCode.LEFT).release(KeyCode.LEFT);
        assertEquals(whole.from(), plots.shown().from(), "nothing is known before the first day");
        robot.press(KeyCode.PLUS).release(KeyCode.PLUS);
        WaitForAsyncUtils.waitForFxEvents();
        long from = plots.shown().from();
        robot.press(KeyCode.RIGHT).release(KeyCode.RIGHT);
        WaitForAsyncUtils.waitForFxEvents();
        assertTrue(plots.shown().from() > from);
        robot.press(KeyCode.HOME).release(KeyCode.HOME);
        WaitForAsyncUtils.waitForFxEvents();
        assertEquals(whole.until(), plots.shown().until());
    }

    @Test
    void aTaskTurnsToItsBatch(FxRobot robot) {
        robot.clickOn("Cover Fenland Wheat from light");
        assertFalse(window.scene().lookup("#to-do").isVisible(), "what to do stands on the page of the batch");
        assertEquals("Fenland Wheat", text("batch-title"));
    }

    @Test
    void darkColoursReachTheWholeWindow() {
        Node name = window.scene().lookup(".app-name");
        Object light = ((Label) name).getTextFill();
        onWindowThread(item("theme")::fire);
        onWindowThread(() -> window.scene().getRoot().applyCss());
        assertTrue(sample.context.dark().get());
        assertNotEquals(light, ((Label) name).getTextFill());
    }

    @Test
    void unitsAreChangedFromTheViewMenuAndUndoHasNothingToDoWithIt() {
        onWindowThread(item("units")::fire);
        assertEquals(
                UnitSystem.US, sample.context.workspace().getCellar().settings().units());
        assertTrue(find("undo", Button.class).isDisabled());
        onWindowThread(item("units")::fire);
        assertEquals(
                UnitSystem.METRIC,
                sample.context.workspace().getCellar().settings().units());
    }

    @Test
    void whatWasDoneIsSaidWithTheWayBack() {
        Node news = window.scene().lookup("#news");
        assertFalse(news.isVisible());
        onWindowThread(() -> sample.context.workspace().change("another name", cellar -> cellar.withName("Barn")));
        assertTrue(news.isVisible());
        assertEquals("Done: another name", text("news-sentence"));
        onWindowThread(find("news-undo", Button.class)::fire);
        assertEquals("Hillside cellar", sample.context.workspace().getCellar().name());
        assertEquals("Undone: another name", text("news-sentence"));
        onWindowThread(find("news-close", Button.class)::fire);
        assertFalse(news.isVisible());
        onWindowThread(item("units")::fire);
        assertFalse(news.isVisible(), "how things are shown is no news");
    }

    @Test
    void aSearchLeavesWhatIsLookedFor(FxRobot robot) {
        robot.push(KeyCode.CONTROL, KeyCode.F).write("honey");
        WaitForAsyncUtils.waitForFxEvents();
        assertNotNull(crate("larch@loft"));
        assertEquals(null, crate("beacon@loft"));
        assertEquals("Larch Honey Ale", text("inspector-name"));
    }

    @Test
    void severalMarkedCratesGoToAnotherPlaceInOneStep() {
        onWindowThread(() -> crate("winter@fridge").fireEvent(press(true, 1)));
        onWindowThread(() -> crate("hedge@cupboard").fireEvent(press(true, 1)));
        MenuButton move = find("marks-move", MenuButton.class);
        onWindowThread(() -> move.getItems().get(0).fire());
        assertEquals(
                "Move 2 crates to Loft",
                sample.context.workspace().undoTextProperty().get());
    }

    private static MouseEvent press(boolean withCtrl, int clicks) {
        return new MouseEvent(
                MouseEvent.MOUSE_PRESSED,
                5,
                5,
                5,
                5,
                MouseButton.PRIMARY,
                clicks,
                false,
                withCtrl,
                false,
                false,
                true,
                false,
                false,
                false,
                false,
                true,
                null);
    }

    @Test
    void theFigureTellsWhereItComesFrom(FxRobot robot) {
        openBatch("beacon@loft", robot);
        onWindowThread(find("figure-carbonation", Button.class)::fire);
        assertEquals(1, robot.lookup("#why").queryAll().size());
        assertTrue(robot.lookup(
                        "Weiss 1974, Mar. Chem. 2:203 (solubility); Rosso et al. 1993, J. Theor. Biol. 162:447 (temperature); sugar stoichiometry")
                .tryQuery()
                .isPresent());
    }

    @Test
    void aFaultIsSaidInOneLineUntilItIsPutAway() {
        Node bar = window.scene().lookup("#fault-bar");
        assertFalse(bar.isVisible());
        onWindowThread(
                () -> sample.context.faults().show(new InvalidInput("draws[2].count", "takes too many; lower it")));
        assertTrue(bar.isVisible());
        assertEquals("draws[2].count: takes too many; lower it", text("fault-sentence"));
        onWindowThread(() -> sample.context.faults().putAway());
        assertFalse(bar.isVisible());
    }

    @Test
    void theButtonsOfThePageAskForTheRightDialog(FxRobot robot) {
        openBatch("beacon@loft", robot);
        robot.clickOn("Take bottles…").clickOn("Move…").clickOn("#batch-more").clickOn("Change…");
        assertEquals(List.of("draw beacon/lot-1", "move beacon/lot-1", "edit batch beacon"), sample.editors.asked);
    }

    @Test
    void everyPageSaysOnceThatItsFiguresAreEstimates() {
        for (String page : List.of("page-shelf", "page-bottling-day", "page-warm-spells", "page-servings")) {
            onWindowThread(() -> find(page, ToggleButton.class).fire());
            assertTrue(text("estimate").startsWith("Estimate only"), page);
            assertTrue(find("estimate", Label.class).isVisible(), page);
        }
    }

    @Test
    void anEmptyCellarSaysWhatToDoFirst(FxRobot robot) {
        onWindowThread(() -> sample.context
                .workspace()
                .change("emptied", cellar -> cellar.withServings(List.of()).withBatches(List.of())));
        assertNotNull(window.scene().lookup("#empty-shelf"));
        robot.clickOn("Add a batch");
        assertEquals(List.of("add batch"), sample.editors.asked);
    }

    @Test
    void theServingsPageShowsWhatIsPromisedAndWhichBatchSuits() {
        onWindowThread(() -> find("page-servings", ToggleButton.class).fire());
        assertEquals("6 bottles of Quarry Porter", text("serving-title"));
        assertTrue(text("serving-how").contains("leave the last 10 to 20 mL"));
        onWindowThread(() -> find("serving-add", Button.class).fire());
        onWindowThread(() -> find("plan-heron", Button.class).fire());
        assertEquals(List.of("add pour of any batch", "add pour heron"), sample.editors.asked);
    }
}
