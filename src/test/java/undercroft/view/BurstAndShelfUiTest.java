package undercroft.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.scene.Node;
import javafx.scene.control.Button;
import javafx.scene.control.ComboBox;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import undercroft.app.Faults;
import undercroft.cellar.BurstCause;
import undercroft.cellar.Cellar;
import undercroft.outlook.OutlookSamples;
import undercroft.session.BackgroundTasks;
import undercroft.session.Forecasts;
import undercroft.session.SampleWorkspace;
import undercroft.session.Sensors;
import undercroft.session.Workspace;
import undercroft.view.edit.EditorDialogs;
import undercroft.view.edit.FixedFiles;
import undercroft.view.kit.Looks;
import undercroft.view.kit.WindowContext;
import undercroft.wording.Messages;

/** A burst with its question, and the shelf by keyboard, with the real dialogs. */
@ExtendWith(ApplicationExtension.class)
class BurstAndShelfUiTest {
    private final Messages messages = Messages.english();
    private Stage main;
    private Workspace workspace;
    private MainWindow window;

    /** Three beers in the cupboard, and no fridge anywhere. */
    private static Cellar cellar() {
        Cellar whole = OutlookSamples.cellar();
        List<String> kept = List.of("quarry", "hedge", "gable");
        return whole.withServings(List.of())
                .withBatches(whole.batches().stream()
                        .filter(batch -> kept.contains(batch.id()))
                        .toList())
                .withPlaces(whole.places().stream()
                        .filter(place -> !place.id().equals("fridge"))
                        .toList());
    }

    @Start
    void start(Stage stage) {
        Looks.loadFonts();
        SampleContext.fill(stage);
        main = stage;
        BackgroundTasks atOnce = new BackgroundTasks(Runnable::run, Runnable::run);
        Clock clock = Clock.fixed(OutlookSamples.NOW, ZoneOffset.UTC);
        Faults faults = new Faults();
        workspace = SampleWorkspace.of(cellar());
        Forecasts forecasts = new Forecasts(
                workspace, (shown, logs, at) -> OutlookSamples.outlook(shown, at), atOnce, clock, faults::show);
        forecasts.refresh();
        SimpleBooleanProperty dark = new SimpleBooleanProperty(false);
        EditorDialogs editors = new EditorDialogs(
                messages, workspace, forecasts, atOnce, clock, new NoBroker(), dark, new FixedFiles(), () -> main);
        window = new MainWindow(new WindowContext(
                messages,
                workspace,
                forecasts,
                atOnce,
                faults,
                editors,
                new SampleContext(cellar()).context.chooser(),
                clock,
                new SimpleObjectProperty<>(OutlookSamples.NOW),
                new SimpleObjectProperty<>(Sensors.State.NOTHING),
                dark));
        window.show(stage);
    }

    @AfterEach
    void close() {
        fx(() -> List.copyOf(Window.getWindows()).forEach(Window::hide));
    }

    private static void fx(Runnable step) {
        WaitForAsyncUtils.waitForAsyncFx(30_000, step);
        WaitForAsyncUtils.waitForFxEvents();
    }

    private Stage dialog() {
        Stage top = null;
        for (Window each : List.copyOf(Window.getWindows())) {
            if (each instanceof Stage stage && stage != main) {
                top = stage;
            }
        }
        assertNotNull(top, "a dialog is open");
        return top;
    }

    private Node asked(String id) {
        return dialog().getScene().lookup("#" + id);
    }

    private void fire(String id) {
        Node node = window.scene().lookup("#" + id);
        fx(() -> {
            if (node instanceof ToggleButton toggle) {
                toggle.fire();
            } else {
                ((Button) node).fire();
            }
        });
    }

    private String text(String id) {
        return ((Label) window.scene().lookup("#" + id)).getText();
    }

    private void save() {
        fx(((Button) asked("form-save"))::fire);
    }

    private void openBatch(String search) {
        fx(() -> ((TextField) window.scene().lookup("#shelf-find")).setText(search));
        fire("open-batch");
    }

    @Test
    void aBottleBurstsThePageChangesAndUndoTakesItBack() {
        openBatch("hedge");
        String before = text("headline");
        fire("batch-draw");
        fx(() -> ((ComboBox<?>) asked("draw-fate")).getSelectionModel().select(3));
        save();
        assertTrue(text("headline").contains("burst"), text("headline"));
        assertTrue(window.scene().lookup("#verdict").getStyleClass().contains("alert-act"));
        assertNotNull(window.scene().lookup("#burst-question"), "the page asks why");
        fire("burst-chipped");
        assertEquals(
                Optional.of(BurstCause.CHIPPED),
                workspace
                        .getCellar()
                        .batch("hedge")
                        .lots()
                        .get(0)
                        .draws()
                        .get(0)
                        .cause());
        assertFalse(
                window.scene().lookup("#verdict").getStyleClass().contains("alert-clear"), "an answer clears nothing");
        fire("burst-change");
        fire("burst-unfinished");
        assertEquals(
                Optional.of(BurstCause.UNFINISHED),
                workspace
                        .getCellar()
                        .batch("hedge")
                        .lots()
                        .get(0)
                        .draws()
                        .get(0)
                        .cause());
        fire("undo");
        fire("undo");
        fire("undo");
        assertEquals(before, text("headline"));
        assertNull(window.scene().lookup("#burst-question"));
    }

    @Test
    void theShelfIsWalkedOpenedAndLeftByKeyboardAlone(FxRobot robot) {
        fx(() -> window.scene().lookup("#planks").requestFocus());
        String first = text("inspector-name");
        robot.push(KeyCode.DOWN);
        WaitForAsyncUtils.waitForFxEvents();
        assertFalse(first.equals(text("inspector-name")));
        robot.push(KeyCode.SPACE);
        WaitForAsyncUtils.waitForFxEvents();
        assertTrue(window.scene().lookup("#marks-bar").isVisible());
        robot.push(KeyCode.ESCAPE);
        WaitForAsyncUtils.waitForFxEvents();
        assertFalse(window.scene().lookup("#marks-bar").isVisible());
        String second = text("inspector-name");
        robot.push(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
        assertEquals(second, text("batch-title"));
        robot.push(KeyCode.ESCAPE);
        WaitForAsyncUtils.waitForFxEvents();
        assertEquals(second, text("inspector-name"));
    }
}
