package undercroft.view.edit;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.time.Clock;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.layout.Pane;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import undercroft.app.servings.ServingForm;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Lot;
import undercroft.outlook.OutlookSamples;
import undercroft.session.BackgroundTasks;
import undercroft.session.Forecasts;
import undercroft.session.SampleWorkspace;
import undercroft.session.Workspace;
import undercroft.view.NoBroker;
import undercroft.view.Spoken;
import undercroft.view.kit.Looks;
import undercroft.wording.Language;
import undercroft.wording.Messages;

/**
 * No dialog cuts what it says, in either language: the one sentence that matters is often the longest. And whoever does not
 * see it hears what each of its fields is.
 */
@ExtendWith(ApplicationExtension.class)
class WholeSentencesUiTest {
    private Stage main;

    @Start
    void open(Stage stage) {
        Looks.loadFonts();
        main = stage;
        stage.setScene(new Scene(new Pane(), 960, 540));
        stage.show();
    }

    @AfterEach
    void close() {
        fx(() -> List.copyOf(Window.getWindows()).forEach(Window::hide));
    }

    private static void fx(Runnable step) {
        WaitForAsyncUtils.waitForAsyncFx(30_000, step);
        WaitForAsyncUtils.waitForFxEvents();
    }

    private static void cut(Node node, List<String> cut) {
        if (!node.isVisible()) {
            return;
        }
        if (node instanceof Labeled labeled && labeled.getText() != null) {
            for (Node part : labeled.getChildrenUnmodifiable()) {
                if (part instanceof Text text
                        && !labeled.isMnemonicParsing()
                        && !text.getText().equals(labeled.getText())) {
                    cut.add(labeled.getText() + " is shown as " + text.getText());
                }
            }
        }
        if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> cut(child, cut));
        }
    }

    @ParameterizedTest
    @EnumSource(
            value = Language.class,
            names = {"ENGLISH", "GERMAN"})
    void everyDialogShowsItsSentencesWholeAndNamesItsFields(Language language) {
        Messages messages = language.messages(Locale.UK);
        Workspace workspace = SampleWorkspace.of(OutlookSamples.cellar());
        BackgroundTasks atOnce = new BackgroundTasks(Runnable::run, Runnable::run);
        Clock clock = Clock.fixed(OutlookSamples.NOW, ZoneOffset.UTC);
        Forecasts forecasts = new Forecasts(
                workspace, (shown, logs, at) -> OutlookSamples.outlook(shown, at), atOnce, clock, fault -> {
                    throw fault;
                });
        fx(forecasts::refresh);
        EditorDialogs editors = new EditorDialogs(
                messages,
                workspace,
                forecasts,
                atOnce,
                clock,
                new NoBroker(),
                new SimpleBooleanProperty(false),
                new FixedFiles(),
                () -> main);
        Cellar cellar = workspace.getCellar();
        Batch beacon = cellar.batch("beacon");
        Lot lot = beacon.lots().get(0);
        Map<String, Runnable> dialogs = new TreeMap<>(Map.of(
                "place", () -> editors.editPlace(cellar.places().get(0)),
                "batch", () -> editors.editBatch(beacon),
                "move", () -> editors.move(beacon, lot),
                "draw", () -> editors.draw(beacon, lot),
                "reading", () -> editors.read(beacon, lot),
                "serving", () -> editors.addServing(new ServingForm.Wish(Optional.of("quarry"), 2, Optional.empty())),
                "count", () -> editors.count(beacon),
                "dial", () -> editors.readDial(cellar.places().get(0)),
                "import", () -> editors.importInto(cellar.places().get(0)),
                "settings", editors::editSettings));
        List<String> cut = new ArrayList<>();
        dialogs.forEach((name, open) -> {
            fx(open);
            fx(() -> {
                for (Window each : List.copyOf(Window.getWindows())) {
                    if (each != main) {
                        each.getScene().getRoot().applyCss();
                        each.getScene().getRoot().layout();
                        List<String> here = new ArrayList<>();
                        cut(each.getScene().getRoot(), here);
                        here.addAll(Spoken.nameless(each.getScene().getRoot()));
                        here.forEach(one -> cut.add(name + ": " + one));
                        each.hide();
                    }
                }
            });
        });
        assertEquals(List.of(), cut);
    }
}
