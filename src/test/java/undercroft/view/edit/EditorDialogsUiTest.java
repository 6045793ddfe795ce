package undercroft.view.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Label;
import javafx.scene.control.PasswordField;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.Pane;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import undercroft.app.form.FormSamples;
import undercroft.app.form.place.ImportForm;
import undercroft.cellar.Batch;
import undercroft.cellar.Lot;
import undercroft.outlook.OutlookSamples;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.Cause;
import undercroft.outlook.lot.LotOutlook;
import undercroft.session.BackgroundTasks;
import undercroft.session.Forecasts;
import undercroft.session.Workspace;
import undercroft.store.Broker;
import undercroft.view.NoBroker;
import undercroft.view.kit.Looks;
import undercroft.view.kit.form.FormDialogs;
import undercroft.wording.Messages;

@ExtendWith(ApplicationExtension.class)
class EditorDialogsUiTest {
    private final BackgroundTasks atOnce = new BackgroundTasks(Runnable::run, Runnable::run);
    private final SimpleBooleanProperty dark = new SimpleBooleanProperty(false);
    private Stage main;
    private Workspace workspace;
    private Forecasts forecasts;
    private EditorDialogs editors;

    @TempDir
    Path folder;

    private final NoBroker brokers = new NoBroker();

    @Start
    void open(Stage stage) {
        main = stage;
        Looks.loadFonts();
        stage.setScene(new Scene(new Pane(), 1000, 700));
        stage.show();
        workspace = FormSamples.workspace(FormSamples.CELLAR);
        Clock clock = Clock.fixed(FormSamples.NOW, ZoneOffset.UTC);
        forecasts = new Forecasts(
                workspace, (cellar, logs, at) -> OutlookSamples.outlook(cellar, at), atOnce, clock, fault -> {});
        forecasts.refresh();
        editors = new EditorDialogs(
                Messages.english(), workspace, forecasts, atOnce, clock, brokers, dark, new FixedFiles(), () -> main);
    }

    @AfterEach
    void close() {
        fx(() -> List.copyOf(Window.getWindows()).forEach(Window::hide));
    }

    private static void fx(Runnable step) {
        WaitForAsyncUtils.waitForAsyncFx(10_000, step);
        WaitForAsyncUtils.waitForFxEvents();
    }

    /** The dialog on top, or none. */
    private Optional<Stage> dialog() {
        Stage top = null;
        for (Window window : List.copyOf(Window.getWindows())) {
            if (window instanceof Stage stage && stage != main) {
                top = stage;
            }
        }
        return Optional.ofNullable(top);
    }

    private Node node(String id) {
        return dialog().orElseThrow().getScene().lookup("#" + id);
    }

    private void press(String id) {
        fx(((Button) node(id))::fire);
    }

    private List<String> faults() {
        return dialog().orElseThrow().getScene().getRoot().lookupAll(".form-fault").stream()
                .filter(Node::isVisible)
                .map(node -> ((Label) node).getText())
                .toList();
    }

    @Test
    void aPlaceIsTypedRefusedCorrectedSavedAndUndone(FxRobot robot) {
        fx(editors::addPlace);
        assertTrue(node("place-name").isFocused());
        robot.targetWindow(dialog().orElseThrow()).write("Attic");
        robot.push(KeyCode.TAB).push(KeyCode.TAB);
        assertTrue(node("place-guess").isFocused());
        robot.push(KeyCode.CONTROL, KeyCode.A).write("warm").push(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();

        assertEquals(List.of("“warm” cannot be read; write a temperature like 20C or 68F."), faults());
        assertEquals(FormSamples.CELLAR, workspace.getCellar());

        robot.push(KeyCode.CONTROL, KeyCode.A).write("19,5").push(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();

        assertTrue(dialog().isEmpty());
        assertEquals("Attic", workspace.getCellar().place("attic").name());
        assertEquals("Add place Attic", workspace.undoTextProperty().get());
        fx(workspace::undo);
        assertEquals(FormSamples.CELLAR, workspace.getCellar());
    }

    @Test
    void escapeAsksBeforeItDropsWhatWasTypedAndLeavesEverythingAsItWas(FxRobot robot) {
        fx(() -> editors.editPlace(FormSamples.CELLAR.places().get(0)));
        robot.targetWindow(dialog().orElseThrow()).push(KeyCode.ESCAPE);
        WaitForAsyncUtils.waitForFxEvents();
        assertTrue(dialog().isEmpty(), "nothing was typed, so nothing is asked");

        fx(() -> editors.editPlace(FormSamples.CELLAR.places().get(0)));
        robot.targetWindow(dialog().orElseThrow()).write("Another name").push(KeyCode.ESCAPE);
        WaitForAsyncUtils.waitForFxEvents();
        assertTrue(node("form-stay").isFocused());
        press("form-stay");
        assertEquals("Another name", ((TextField) node("place-name")).getText());
        press("form-cancel");
        press("form-drop");

        assertTrue(dialog().isEmpty());
        assertEquals(FormSamples.CELLAR, workspace.getCellar());
    }

    @Test
    void aPlaceInUseIsNotDeletedButABatchIsOnceConfirmed() {
        fx(() -> editors.editPlace(
                FormSamples.CELLAR.place(FormSamples.lot().stays().get(0).placeId())));
        press("place-delete");
        assertTrue(((Label) node("question-sentence")).getText().contains("cannot go"));
        press("form-cancel");
        press("form-cancel");

        Batch batch = FormSamples.batch();
        fx(() -> editors.editBatch(batch));
        press("batch-delete");
        assertEquals(FormSamples.CELLAR, workspace.getCellar());
        press("form-save");

        assertTrue(dialog().isEmpty());
        assertEquals(
                FormSamples.CELLAR.batches().size() - 1,
                workspace.getCellar().batches().size());
    }

    @Test
    void bottlesOverTheirLimitComeWithACaution() {
        LotOutlook over = forecasts.outlookProperty().get().batches().stream()
                .flatMap(batch -> batch.lots().stream())
                .filter(lot -> lot.verdict().alert(Cause.Topic.PRESSURE) == Alert.ACT)
                .findFirst()
                .orElseThrow();
        Batch batch = FormSamples.CELLAR.batches().stream()
                .filter(each -> each.lots().contains(over.lot()))
                .findFirst()
                .orElseThrow();
        fx(() -> editors.draw(batch, over.lot()));

        Node caution = node("caution");
        assertTrue(caution.lookupAll(".label").stream()
                .anyMatch(label -> ((Label) label).getText().contains("Eye protection")));
    }

    @Test
    void moreBottlesThanAreLeftAreRefusedAndTheRightNumberTaken() {
        Batch batch = FormSamples.batch();
        Lot lot = FormSamples.lot();
        fx(() -> editors.draw(batch, lot));
        fx(() -> ((TextField) node("draw-count")).setText("9000"));
        press("form-save");
        assertEquals(List.of("9000 is too many; give at most " + lot.left() + "."), faults());
        assertTrue(node("draw-count").isFocused());

        fx(() -> ((TextField) node("draw-count")).setText("2"));
        press("form-save");

        assertEquals(
                lot.left() - 2,
                workspace.getCellar().batch(batch.id()).lot(lot.id()).left());
    }

    @Test
    void rowsOfBottlesAndSugarsComeAndGo() {
        fx(editors::addBatch);
        int before = dialog().orElseThrow()
                .getScene()
                .getRoot()
                .lookupAll(".form-row")
                .size();
        press("lot-add");
        press("sugar-add");

        assertEquals(2, before);
        assertEquals(
                4,
                dialog().orElseThrow()
                        .getScene()
                        .getRoot()
                        .lookupAll(".form-row")
                        .size());
    }

    @Test
    void anOwnBottleIsAddedThroughTheSettings() {
        fx(editors::editSettings);
        press("settings-bottles-add");
        fx(() -> {
            ((TextField) node("bottle-name")).setText("Tall flask");
            ((TextField) node("bottle-fill")).setText("600");
            ((TextField) node("bottle-brimful")).setText("590");
            ((TextField) node("bottle-weight")).setText("410");
            ((TextField) node("bottle-diameter")).setText("74");
        });
        press("form-save");
        assertTrue(faults().get(0).contains("leave some headspace"), faults()::toString);
        fx(() -> ((TextField) node("bottle-brimful")).setText("625"));
        press("form-save");
        assertEquals(List.of(), workspace.getCellar().ownBottles());
        press("form-save");

        assertEquals("tall-flask", workspace.getCellar().ownBottles().get(0).id());
    }

    @Test
    void aBrokerIsNamedWithAPasswordThatIsNotShown() {
        fx(editors::editBroker);
        assertTrue(node("broker-password") instanceof PasswordField);
        fx(() -> {
            ((TextField) node("broker-address")).setText("broker home");
            ((TextField) node("broker-user")).setText("cellar");
            ((TextField) node("broker-password")).setText("a pass word");
        });
        press("form-save");
        assertEquals(1, faults().size(), faults()::toString);
        fx(() -> ((TextField) node("broker-address")).setText("broker.home"));
        press("form-save");
        assertEquals(Optional.empty(), dialog());
        assertEquals(
                Optional.of(
                        new Broker("broker.home", 8883, true, Optional.empty(), Optional.of("cellar"), "a pass word")),
                brokers.named());
        fx(editors::editBroker);
        fx(() -> ((TextField) node("broker-address")).setText(""));
        press("form-save");
        assertEquals(Optional.empty(), brokers.named());
    }

    @Test
    void aLoggersFileIsShownAndThenImported() throws Exception {
        StringBuilder text = new StringBuilder("Time,Celsius\n");
        for (int i = 0; i < 24; i++) {
            text.append(String.format(Locale.ROOT, "2026-06-14 %02d:00,17.%d%n", i, i % 10));
        }
        Path file = Files.writeString(folder.resolve("attic.csv"), text);
        FormDialogs dialogs = new FormDialogs(Messages.english(), workspace, () -> main, dark);
        var place = FormSamples.CELLAR.places().get(0);
        fx(() -> new ImportDialog(
                        dialogs,
                        place.name(),
                        new ImportForm(Messages.english(), workspace, place, atOnce),
                        new FixedFiles(file))
                .open());
        assertTrue(node("form-save").isDisabled());
        press("import-choose");
        assertFalse(node("form-save").isDisabled());
        assertTrue(node("plots").isVisible());
        press("form-save");

        assertTrue(dialog().isEmpty());
        assertEquals(24, workspace.getState().temperatures().get(place.id()).size());
    }
}
