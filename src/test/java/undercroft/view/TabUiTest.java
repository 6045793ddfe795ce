package undercroft.view;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import javafx.geometry.Bounds;
import javafx.geometry.Rectangle2D;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.SnapshotParameters;
import javafx.scene.control.Button;
import javafx.scene.control.ContextMenu;
import javafx.scene.control.Control;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.ToggleButton;
import javafx.scene.image.PixelReader;
import javafx.scene.image.WritableImage;
import javafx.scene.input.ContextMenuEvent;
import javafx.scene.input.KeyCode;
import javafx.stage.Stage;
import javafx.stage.Window;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.ExtendWith;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.testfx.api.FxRobot;
import org.testfx.framework.junit5.ApplicationExtension;
import org.testfx.framework.junit5.Start;
import org.testfx.util.WaitForAsyncUtils;
import undercroft.outlook.OutlookSamples;
import undercroft.view.kit.Looks;

/** Whoever has no mouse comes with the Tab key to all that can be used, and sees where the keyboard is. */
@ExtendWith(ApplicationExtension.class)
class TabUiTest {
    private static final int MOST_STOPS = 150;
    private static final double RING = 4;

    private MainWindow window;

    @Start
    void start(Stage stage) {
        Looks.loadFonts();
        SampleContext.fill(stage);
        window = new MainWindow(new SampleContext(OutlookSamples.cellar()).context);
        window.show(stage);
    }

    private void onWindowThread(Runnable act) {
        WaitForAsyncUtils.waitForAsyncFx(30_000, act);
        WaitForAsyncUtils.waitForFxEvents(1);
    }

    private Node find(String id) {
        return window.scene().lookup("#" + id);
    }

    private static void walk(Node node, Set<Node> stops) {
        if (!node.isVisible() || node.isDisabled()) {
            return;
        }
        // Of toggles that belong together one is a stop; the arrow keys lead to the others.
        boolean byArrow =
                node instanceof ToggleButton toggle && toggle.getToggleGroup() != null && !toggle.isSelected();
        if (node.isFocusTraversable() && !(node instanceof ScrollPane) && !byArrow) {
            stops.add(node);
        }
        if (node instanceof Parent parent && !(node instanceof Control && !(node instanceof ScrollPane))) {
            parent.getChildrenUnmodifiable().forEach(child -> walk(child, stops));
        }
    }

    private static String shown(Node node) {
        return node.getClass().getSimpleName() + "#" + node.getId() + "." + node.getStyleClass();
    }

    private WritableImage picture(Node node) {
        Bounds at = node.localToScene(node.getLayoutBounds());
        SnapshotParameters part = new SnapshotParameters();
        part.setViewport(new Rectangle2D(
                Math.max(0, at.getMinX() - RING),
                Math.max(0, at.getMinY() - RING),
                at.getWidth() + 2 * RING,
                at.getHeight() + 2 * RING));
        return window.scene().getRoot().snapshot(part, null);
    }

    private static boolean differ(WritableImage one, WritableImage other) {
        if (one.getWidth() != other.getWidth() || one.getHeight() != other.getHeight()) {
            return true;
        }
        PixelReader first = one.getPixelReader();
        PixelReader second = other.getPixelReader();
        int different = 0;
        for (int y = 0; y < one.getHeight(); y++) {
            for (int x = 0; x < one.getWidth(); x++) {
                if (first.getArgb(x, y) != second.getArgb(x, y)) {
                    different++;
                }
            }
        }
        return different > 8;
    }

    private void turnTo(String page) {
        switch (page) {
            case "shelf" -> {}
            case "batch" -> onWindowThread(((Button) find("open-batch"))::fire);
            default -> onWindowThread(((ToggleButton) find("page-" + page))::fire);
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"shelf", "batch", "bottling-day", "warm-spells", "servings"})
    void tabComesToAllThatCanBeUsedAndTheFocusIsSeen(String page, FxRobot robot) {
        turnTo(page);
        // A page that gives way to another lets go of its buttons when it is laid out.
        WaitForAsyncUtils.waitForFxEvents(5);
        Set<Node> wanted = Collections.newSetFromMap(new IdentityHashMap<>());
        onWindowThread(() -> walk(window.scene().getRoot(), wanted));
        Set<Node> visited = Collections.newSetFromMap(new IdentityHashMap<>());
        List<String> unseen = new ArrayList<>();
        for (int i = 0; i < MOST_STOPS && !visited.containsAll(wanted); i++) {
            robot.push(KeyCode.TAB);
            onWindowThread(() -> {
                Node at = window.scene().getFocusOwner();
                // What is focused because another control went away was not reached by key; it comes round again.
                if (at.isFocusVisible() && visited.add(at) && wanted.contains(at)) {
                    WritableImage with = picture(at);
                    window.scene().getRoot().requestFocus();
                    window.scene().getRoot().applyCss();
                    WritableImage without = picture(at);
                    at.requestFocus();
                    if (!differ(with, without)) {
                        unseen.add(shown(at));
                    }
                }
            });
        }
        wanted.removeAll(visited);
        Set<Node> there = Collections.newSetFromMap(new IdentityHashMap<>());
        onWindowThread(() -> walk(window.scene().getRoot(), there));
        wanted.retainAll(there);
        assertEquals(List.of(), wanted.stream().map(TabUiTest::shown).toList(), "never reached on " + page);
        assertEquals(List.of(), unseen, "focus not seen on " + page);
    }

    private static Optional<ContextMenu> menu() {
        return Window.getWindows().stream()
                .filter(ContextMenu.class::isInstance)
                .map(ContextMenu.class::cast)
                .filter(Window::isShowing)
                .findFirst();
    }

    @Test
    void aHeadingOpensItsPlaceByClickByEnterAndByTheRightButton(FxRobot robot) {
        Node heading = find("place-loft");
        List<Runnable> ways = List.of(
                () -> robot.clickOn(heading),
                () -> {
                    onWindowThread(heading::requestFocus);
                    robot.push(KeyCode.ENTER);
                },
                () -> onWindowThread(() -> heading.fireEvent(
                        new ContextMenuEvent(ContextMenuEvent.CONTEXT_MENU_REQUESTED, 10, 10, 300, 300, false, null))));
        for (Runnable way : ways) {
            way.run();
            WaitForAsyncUtils.waitForFxEvents();
            ContextMenu menu = menu().orElseThrow();
            assertTrue(
                    menu.getItems().stream().anyMatch(item -> item.getText().contains("Change this place")),
                    menu.getItems().toString());
            onWindowThread(menu::hide);
        }
    }
}
