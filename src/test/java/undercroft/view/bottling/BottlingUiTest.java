package undercroft.view.bottling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotNull;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.css.PseudoClass;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.ButtonBase;
import javafx.scene.control.Label;
import javafx.scene.control.TextField;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.StackPane;
import javafx.stage.Stage;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.api.io.TempDir;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import undercroft.app.Faults;
import undercroft.app.bottling.PlanSamples;
import undercroft.cellar.Batch;
import undercroft.session.BackgroundTasks;
import undercroft.session.SampleWorkspace;
import undercroft.session.Workspace;
import undercroft.view.kit.Looks;
import undercroft.view.kit.WindowContext;
import undercroft.wording.Messages;

@ExtendWith(ApplicationExtension.class)
class BottlingUiTest {
    private final PlanSamples.HandClock clock = new PlanSamples.HandClock();
    private final List<String> capped = new ArrayList<>();
    private Workspace workspace;
    private Scene scene;

    @TempDir
    private Path scratch;

    @Start
    void start(Stage stage) {
        Looks.loadFonts();
        workspace = SampleWorkspace.of(PlanSamples.cellar());
        scene = new Scene(new StackPane(view()), 1240, 680);
        Looks.dress(scene, false);
        stage.setScene(scene);
        stage.show();
    }

    private BottlingView view() {
        WindowContext window = new WindowContext(
                Messages.english(),
                workspace,
                null,
                new BackgroundTasks(Runnable::run, Runnable::run),
                new Faults(),
                null,
                null,
                clock,
                null,
                null,
                new SimpleBooleanProperty(false));
        return new BottlingView(window, capped::add, (owner, name) -> Optional.of(scratch.resolve(name)));
    }

    private <T extends Node> T find(String id, Class<T> kind) {
        Node node = scene.lookup("#" + id);
        assertNotNull(node, id);
        return kind.cast(node);
    }

    private void onWindowThread(Runnable act) {
        WaitForAsyncUtils.waitFor(WaitForAsyncUtils.asyncFx(act));
        WaitForAsyncUtils.waitForFxEvents();
    }

    private void press(String id) {
        onWindowThread(() -> find(id, ButtonBase.class).fire());
    }

    private void type(String id, String text) {
        onWindowThread(() -> find(id, TextField.class).setText(text));
    }

    private boolean says(String text) {
        return scene.getRoot().lookupAll(".label").stream()
                .anyMatch(node -> node instanceof Label label && label.getText().contains(text));
    }

    private Batch pale() {
        return workspace.getCellar().batch("pale");
    }

    @Test
    void aNewPlanIsCarriedFromStartToShelf() {
        type("new-draft-name", "Second");
        type("new-draft-litres", "11");
        press("draft-start");
        press("turn-on");
        press("stock-add");
        type("stock-0-count", "40");
        press("turn-on");
        press("target-middle");
        press("turn-on");
        assertTrue(find("sugar-weight", Label.class).getText().endsWith("oz)"));
        for (int i = 0; i < 4; i++) {
            press("turn-on");
        }
        press("cap");
        assertEquals(List.of("second"), capped);
        assertTrue(workspace.getCellar().batch("second").leftAt(clock.instant()) > 20);
        assertNotNull(scene.lookup("#new-draft-name"), "the list of drafts is shown again");
    }

    @Test
    void aTargetTooHighIsRefusedInWords() {
        press("draft-pale");
        press("screen-carbonation");
        type("draft-target", "4.5");
        assertTrue(says("the highest target within the limit (estimate) is"));
        press("screen-cap");
        press("cap");
        assertTrue(capped.isEmpty(), "a refused plan is capped only once the person says so");
        press("capping-all-the-same");
        press("cap");
        assertEquals(List.of("pale"), capped);
    }

    @Test
    void aBeerThatStillFermentsIsToldToWait() {
        press("draft-pale");
        press("screen-verdict");
        assertEquals("Go", find("verdict-word", Label.class).getText());
        type("gravity-1-figure", "1.013");
        assertEquals("Wait", find("verdict-word", Label.class).getText());
        assertTrue(says("At stake: about 1.5 vol more"));
    }

    @Test
    void theTimerRunsOnTheClockHandedInAndShowsWhenItIsOver() {
        press("draft-pale");
        press("screen-day");
        press("timer-boil");
        assertEquals("10:00, stop", find("timer-boil", Button.class).getText());
        clock.forward(Duration.ofMinutes(10));
        onWindowThread(() -> ((ChecklistView) find("day", Node.class)).second());
        assertEquals("Time is up, again", find("timer-boil", Button.class).getText());
    }

    @Test
    void stepsAreTickedByKeyAndWideEnoughForWetHands(FxRobot robot) {
        press("draft-pale");
        press("screen-day");
        Node first = find("step-gravity", Node.class);
        onWindowThread(() -> {
            scene.getRoot().applyCss();
            scene.getRoot().layout();
        });
        assertTrue(first.getBoundsInParent().getHeight() >= 48, first.toString());
        onWindowThread(first::requestFocus);
        robot.push(KeyCode.SPACE);
        robot.push(KeyCode.DOWN);
        robot.push(KeyCode.ENTER);
        WaitForAsyncUtils.waitForFxEvents();
        assertEquals(2, pale().plan().orElseThrow().steps().size());
        assertTrue(first.getPseudoClassStates().contains(PseudoClass.getPseudoClass("done")));
    }

    @Test
    void aDraftIsThereAgainWhenThePageIsMadeAnew() {
        press("draft-pale");
        press("screen-carbonation");
        type("draft-target", "2.4");
        onWindowThread(() -> {
            scene.setRoot(new StackPane(view()));
            Looks.dress(scene, false);
        });
        press("draft-pale");
        press("screen-carbonation");
        assertEquals("2.4", find("draft-target", TextField.class).getText());
    }

    @Test
    void theWorksheetGoesToTheFileThatWasChosen() throws IOException {
        press("draft-pale");
        press("screen-day");
        press("sheet-save");
        assertTrue(Files.readString(scratch.resolve("pale-worksheet.html")).contains("Bottling day"));
        press("screen-cap");
        press("labels-save");
        assertTrue(Files.readString(scratch.resolve("pale-labels.html")).contains("First taste"));
        assertFalse(pale().cappedAt().isPresent(), "labels alone cap nothing");
    }

    @Test
    void aDeletedDraftIsGoneFromTheListAndComesBack() {
        onWindowThread(() -> ((Button) scene.lookup(".draft-row .quiet")).fire());
        assertNull(scene.lookup("#draft-pale"));
        onWindowThread(workspace::undo);
        assertNotNull(scene.lookup("#draft-pale"));
    }
}
