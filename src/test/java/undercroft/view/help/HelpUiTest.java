package undercroft.view.help;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.time.ZoneOffset;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Labeled;
import javafx.scene.control.TextArea;
import javafx.scene.control.TextField;
import javafx.scene.control.ToggleButton;
import javafx.scene.input.KeyCode;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import undercroft.quantity.UnitSystem;
import undercroft.session.BackgroundTasks;
import undercroft.view.kit.Looks;
import undercroft.view.kit.keys.Shortcut;
import undercroft.wording.Language;

/** The window with the help: opened by key, read, searched, closed. */
@ExtendWith(ApplicationExtension.class)
class HelpUiTest {
    private final SimpleBooleanProperty dark = new SimpleBooleanProperty(false);
    private Scene below;
    private HelpWindow help;

    @Start
    void start(Stage stage) {
        Looks.loadFonts();
        stage.setWidth(1280);
        stage.setHeight(800);
        below = new Scene(new StackPane(new Button("work")));
        stage.setScene(below);
        help = new HelpWindow(
                Language.GERMAN.messages(Locale.GERMANY),
                () -> UnitSystem.METRIC,
                ZoneOffset.UTC,
                new BackgroundTasks(Runnable::run, Runnable::run),
                dark);
        help.listenIn(below);
        stage.show();
    }

    @AfterEach
    void closeTheHelp() {
        onWindowThread(() -> List.copyOf(Window.getWindows()).stream()
                .filter(window -> window.getScene() != below)
                .forEach(Window::hide));
    }

    private static void onWindowThread(Runnable act) {
        WaitForAsyncUtils.waitFor(WaitForAsyncUtils.asyncFx(act));
        WaitForAsyncUtils.waitForFxEvents();
    }

    private List<Window> others() {
        return Window.getWindows().stream()
                .filter(window -> window.isShowing() && window.getScene() != below)
                .toList();
    }

    private Node find(String selector) {
        return others().get(0).getScene().lookup(selector);
    }

    private static String words(Node node) {
        if (node instanceof Labeled labeled) {
            return labeled.getText() + "\n";
        }
        return node instanceof Parent parent
                ? parent.getChildrenUnmodifiable().stream()
                        .map(HelpUiTest::words)
                        .collect(Collectors.joining())
                : "";
    }

    @Test
    void theKeyOpensTheListOfKeysAndEscapeClosesIt(FxRobot robot) {
        robot.press(KeyCode.F1).release(KeyCode.F1);
        WaitForAsyncUtils.waitForFxEvents();
        String words = words(find("#help-page"));
        assertTrue(words.contains("Strg+Z") && words.contains("Strg+Umschalt+Z"), words);
        robot.press(KeyCode.ESCAPE).release(KeyCode.ESCAPE);
        WaitForAsyncUtils.waitForFxEvents();
        assertEquals(List.of(), others());
    }

    @Test
    void itIsReadPageByPageSearchedAndFollowsTheColours() {
        onWindowThread(() -> help.show(below));
        assertTrue(words(find("#help-page")).contains("Der erste Abend"));
        onWindowThread(((ToggleButton) find("#help-numbers"))::fire);
        assertTrue(words(find("#help-page")).contains("Arbeitsdruck"));
        onWindowThread(() -> ((TextField) find("#help-find")).setText("manometer"));
        assertEquals(null, find("#help-guide-servings"));
        assertTrue(((VBox) find("#help-topics")).getChildren().size() > 1);
        onWindowThread(() -> dark.set(true));
        assertTrue(find("#help").getPseudoClassStates().toString().contains("dark"));
    }

    @Test
    void aLicenceIsShownWhereItIsAskedFor() {
        onWindowThread(() -> help.show(below));
        onWindowThread(((ToggleButton) find("#help-about"))::fire);
        Button show =
                (Button) find("#help-page").lookupAll(".button").iterator().next();
        onWindowThread(show::fire);
        String text = ((TextArea) find(".help-licence")).getText();
        assertFalse(text.isBlank());
        onWindowThread(show::fire);
        assertEquals(null, find(".help-licence"));
    }

    /** Else the list in the help would not be the list that holds. */
    @Test
    void keysAreBoundInOnePlace() throws IOException {
        // Enter on a link of the rail is what a button does by itself elsewhere; the help words the names of keys.
        Set<String> allowed = Set.of("Shortcut.java", "KeyWords.java", "RailView.java");
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            assertEquals(
                    List.of(),
                    files.filter(file -> file.toString().endsWith(".java"))
                            .filter(file -> !allowed.contains(file.getFileName().toString()))
                            .filter(file -> (read(file).contains("input.KeyCode")
                                    || read(file).contains("event.getCode()")))
                            .toList(),
                    "bind keys through Shortcut");
        }
        String sources;
        try (Stream<Path> files = Files.walk(Path.of("src/main/java"))) {
            sources = files.filter(file -> file.toString().endsWith("View.java")
                            || file.toString().matches(".*(Window|Dialog|Page|Heading|Control|Controls)\\.java"))
                    .map(HelpUiTest::read)
                    .collect(Collectors.joining());
        }
        for (Shortcut shortcut : Shortcut.values()) {
            boolean isDefault = Set.of(Shortcut.UNMARK_ALL, Shortcut.NO_CURSOR, Shortcut.OPEN_SPELL)
                    .contains(shortcut);
            assertTrue(
                    isDefault
                            || sources.contains("Shortcut." + shortcut)
                            || sources.contains("case " + shortcut + " ->"),
                    shortcut + " is told, but does nothing");
        }
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException fault) {
            throw new UncheckedIOException(fault);
        }
    }
}
