package undercroft.view;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.file.Path;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;
import javafx.scene.control.Button;
import javafx.scene.control.Control;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.text.Text;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import undercroft.app.Faults;
import undercroft.app.LastView;
import undercroft.app.Pages.Page;
import undercroft.view.kit.Looks;
import undercroft.wording.Language;

/**
 * Nothing that is written in a small window is cut off without being said in full elsewhere, and nothing lies where no
 * scrolling leads: the demo in each language, page by page.
 */
@ExtendWith(ApplicationExtension.class)
class TextFitsUiTest {
    private static final double ROUNDING = 3;

    private Stage stage;

    @Start
    void start(Stage shown) {
        Looks.loadFonts();
        stage = shown;
    }

    @AfterEach
    void closeWhatWasOpened() {
        onWindowThread(() -> List.copyOf(Window.getWindows()).stream()
                .filter(window -> window != stage)
                .forEach(Window::hide));
    }

    static Stream<Arguments> windows() {
        return Stream.of(
                Arguments.of(Language.ENGLISH, 1024, 700),
                Arguments.of(Language.GERMAN, 1024, 700),
                Arguments.of(Language.ENGLISH, 960, 540),
                Arguments.of(Language.GERMAN, 960, 540));
    }

    private static void onWindowThread(Runnable act) {
        WaitForAsyncUtils.waitFor(WaitForAsyncUtils.asyncFx(act));
        WaitForAsyncUtils.waitForFxEvents();
    }

    private static void settle(Scene scene) {
        for (int i = 0; i < 4; i++) {
            onWindowThread(() -> {
                scene.getRoot().applyCss();
                scene.getRoot().layout();
            });
        }
    }

    private static void press(Scene scene, String id) {
        onWindowThread(() -> {
            Node node = scene.lookup("#" + id);
            if (node instanceof ToggleButton link) {
                link.fire();
            } else {
                ((Button) node).fire();
            }
        });
        settle(scene);
    }

    private void size(double width, double height) {
        stage.setX(0);
        stage.setY(0);
        stage.setWidth(width);
        stage.setHeight(height);
    }

    private static void look(String page, Scene scene, Set<String> faults) {
        settle(scene);
        walk(page, scene.getRoot(), scene, faults);
    }

    private static void walk(String page, Node node, Scene scene, Set<String> faults) {
        if (!node.isVisible() || (node.getParent() != null && !node.isManaged() && node instanceof Labeled)) {
            return;
        }
        if (node instanceof Labeled labeled && isCut(labeled) && !isSaidInFull(labeled)) {
            faults.add(page + ": cut off: " + labeled.getText() + " " + labeled.getId() + labeled.getStyleClass());
        }
        if (node instanceof Control && !(node instanceof ScrollPane) && !isReached(node, scene)) {
            faults.add(page + ": out of reach: " + words(node) + " " + node.getId() + node.getStyleClass() + " at "
                    + node.localToScene(node.getLayoutBounds()));
        }
        if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> walk(page, child, scene, faults));
        }
    }

    private static String words(Node node) {
        return node instanceof Labeled labeled ? labeled.getText() : node.getAccessibleText();
    }

    /** The node that a control writes with has another text where some is left out. */
    private static boolean isCut(Labeled labeled) {
        String words = labeled.getText() == null ? "" : labeled.getText();
        String wanted = labeled.isMnemonicParsing() ? words.replace("_", "") : words;
        return !wanted.isBlank()
                && labeled.getChildrenUnmodifiable().stream()
                        .filter(Text.class::isInstance)
                        .map(Text.class::cast)
                        .anyMatch(text -> !text.getText().equals(wanted));
    }

    private static boolean isSaidInFull(Node node) {
        for (Node above = node; above != null; above = above.getParent()) {
            if (above instanceof Control control && control.getTooltip() != null) {
                return control.getTooltip().getText().contains(((Labeled) node).getText());
            }
        }
        return false;
    }

    /** Inside of every viewport it stands in, or where scrolling leads; inside of the window at last. */
    private static boolean isReached(Node node, Scene scene) {
        Bounds bounds = node.localToScene(node.getLayoutBounds());
        boolean scrollsDown = false;
        for (Node above = node.getParent(); above != null; above = above.getParent()) {
            if (above instanceof ScrollPane scroll) {
                Bounds room = scroll.localToScene(scroll.getLayoutBounds());
                boolean across =
                        bounds.getMinX() >= room.getMinX() - ROUNDING && bounds.getMaxX() <= room.getMaxX() + ROUNDING;
                if (!across && scroll.getHbarPolicy() == ScrollPane.ScrollBarPolicy.NEVER) {
                    return false;
                }
                if (!across) {
                    return true;
                }
                scrollsDown = scrollsDown || scroll.getVbarPolicy() != ScrollPane.ScrollBarPolicy.NEVER;
            }
        }
        boolean across = bounds.getMinX() >= -ROUNDING && bounds.getMaxX() <= scene.getWidth() + ROUNDING;
        boolean down = bounds.getMinY() >= -ROUNDING && bounds.getMaxY() <= scene.getHeight() + ROUNDING;
        return across && (down || scrollsDown);
    }

    @ParameterizedTest
    @MethodSource("windows")
    void everyPageOfTheDemoFits(Language language, int width, int height) {
        MainWindow[] window = new MainWindow[1];
        onWindowThread(() -> {
            size(width, height);
            window[0] = new MainWindow(SampleContext.ofTheDemo(language.messages(Locale.ROOT)).context);
            window[0].show(stage);
        });
        Scene scene = window[0].scene();
        Set<String> faults = new TreeSet<>();
        look("shelf", scene, faults);
        for (String batch : List.of("millrace-saison", "quarry-porter", "lantern-stout")) {
            onWindowThread(() -> window[0].turnTo(new LastView(Page.SHELF, batch)));
            settle(scene);
            look("inspector", scene, faults);
            press(scene, "open-batch");
            look("batch " + batch, scene, faults);
            press(scene, "back");
        }
        for (String page : List.of("bottling-day", "warm-spells", "servings")) {
            press(scene, "page-" + page);
            look(page, scene, faults);
        }
        press(scene, "page-warm-spells");
        press(scene, "tab-what-if");
        look("what if", scene, faults);
        press(scene, "page-bottling-day");
        press(scene, "draft-lantern-stout");
        for (String screen : List.of("beer", "bottles", "carbonation", "sugar", "verdict", "clean", "day", "cap")) {
            press(scene, "screen-" + screen);
            look("bottling " + screen, scene, faults);
        }
        press(scene, "help-button");
        Scene help = Window.getWindows().stream()
                .map(Window::getScene)
                .filter(each -> each != null && each.lookup("#help") != null)
                .findFirst()
                .orElseThrow();
        look("help", help, faults);
        for (String topic : List.of("numbers", "glossary", "keys", "about", "guide-shelf")) {
            press(help, "help-" + topic);
            look("help " + topic, help, faults);
        }
        assertEquals("", String.join("\n", faults));
    }

    @ParameterizedTest
    @MethodSource("windows")
    void theFirstPageFits(Language language, int width, int height) {
        SampleContext sample = SampleContext.ofTheDemo(language.messages(Locale.ROOT));
        onWindowThread(() -> {
            size(width, height);
            new StartWindow(
                            sample.context.messages(),
                            sample.context.chooser(),
                            new Faults(),
                            sample.context.workspace().getCellar().zone(),
                            Path.of("Documents"),
                            sample.context.tasks(),
                            sample.context.dark())
                    .show(stage);
        });
        Set<String> faults = new TreeSet<>();
        look("start", stage.getScene(), faults);
        assertEquals("", String.join("\n", faults));
    }
}
