package undercroft;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assertions.fail;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import java.util.function.BooleanSupplier;
import java.util.function.Supplier;
import javafx.event.Event;
import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.Scene;
import javafx.scene.control.Labeled;
import javafx.scene.control.ListCell;
import javafx.scene.control.ScrollPane;
import javafx.scene.control.TextInputControl;
import javafx.scene.input.KeyCode;
import javafx.scene.input.KeyEvent;
import javafx.scene.input.MouseButton;
import javafx.scene.robot.Robot;
import javafx.stage.PopupWindow;
import javafx.stage.Screen;
import javafx.stage.Window;
import org.testfx.util.WaitForAsyncUtils;

/** A person at the window, with a mouse and a keyboard, who waits until there is something to be seen. */
final class Hand {
    private static final int PATIENCE_SECONDS = 15;
    private static final int MOST_TABS = 90;

    private Robot robot;
    private int clicks;

    /** Made once the toolkit runs. */
    private Robot robot() {
        if (robot == null) {
            robot = new Robot();
        }
        return robot;
    }

    /** How often the mouse was pressed. */
    int clicks() {
        return clicks;
    }

    /** The newest window comes first: a dialog lies over what it was opened from. */
    private static List<Window> windows() {
        List<Window> windows = new ArrayList<>(Window.getWindows());
        Collections.reverse(windows);
        return windows;
    }

    private static Optional<Node> find(String selector) {
        return windows().stream()
                .filter(Window::isShowing)
                .flatMap(window -> window.getScene().getRoot().lookupAll(selector).stream())
                .filter(Hand::isSeen)
                .findFirst();
    }

    private static boolean isSeen(Node node) {
        for (Node each = node; each != null; each = each.getParent()) {
            if (!each.isVisible()) {
                return false;
            }
        }
        return true;
    }

    private static <T> T onWindowThread(Callable<T> ask) {
        return WaitForAsyncUtils.waitForAsyncFx(PATIENCE_SECONDS * 1000L, ask);
    }

    void await(String what, BooleanSupplier isSo) {
        try {
            WaitForAsyncUtils.waitFor(PATIENCE_SECONDS, TimeUnit.SECONDS, () -> onWindowThread(isSo::getAsBoolean));
        } catch (TimeoutException never) {
            fail("never: " + what + "; said: " + onWindowThread(Hand::said), never);
        }
        WaitForAsyncUtils.waitForFxEvents(2);
    }

    /** All that is said at present, for a failure to tell. */
    private static List<String> said() {
        return windows().stream()
                .filter(Window::isShowing)
                .flatMap(window -> window.getScene().getRoot().lookupAll(".label").stream())
                .filter(Hand::isSeen)
                .map(node -> node instanceof Labeled label ? label.getText() : "")
                .filter(words -> words != null && !words.isBlank())
                .toList();
    }

    Node see(String id) {
        await(id + " is seen", () -> find("#" + id).isPresent());
        return onWindowThread(() -> find("#" + id).orElseThrow());
    }

    boolean sees(String id) {
        return onWindowThread(() -> find("#" + id).isPresent());
    }

    void awaitGone(String id) {
        await(id + " is gone", () -> find("#" + id).isEmpty());
    }

    /** What a label, a button or a field says. */
    String read(String id) {
        Node node = see(id);
        return onWindowThread(
                () -> node instanceof TextInputControl typed ? typed.getText() : ((Labeled) node).getText());
    }

    void awaitText(String id, String part) {
        await(
                id + " says " + part,
                () -> find("#" + id)
                        .filter(node ->
                                node instanceof Labeled label && label.getText().contains(part))
                        .isPresent());
    }

    void click(String id) {
        press(id, () -> find("#" + id));
    }

    /** Looks for it anew until it stands still and can be pressed: a page that is written anew has other parts. */
    private void press(String what, Supplier<Optional<Node>> wanted) {
        Bounds[] last = new Bounds[1];
        await(what + " can be pressed", () -> {
            Optional<Node> found = wanted.get().filter(node -> !node.isDisabled());
            found.ifPresent(Hand::scrollTo);
            Bounds now = found.map(node -> node.localToScreen(node.getLayoutBounds()))
                    .orElse(null);
            boolean rests = now != null && now.equals(last[0]);
            last[0] = now;
            return rests;
        });
        Bounds there = last[0];
        boolean onScreen = onWindowThread(
                () -> Screen.getPrimary().getVisualBounds().contains(there.getCenterX(), there.getCenterY()));
        assertTrue(onScreen, what + " is off the screen: " + there);
        clickAt(there);
    }

    private void clickAt(Bounds there) {
        onWindowThread(() -> {
            robot().mouseMove(there.getCenterX(), there.getCenterY());
            robot().mouseClick(MouseButton.PRIMARY);
            return true;
        });
        clicks++;
        WaitForAsyncUtils.waitForFxEvents(3);
    }

    /** As the wheel would, which is no click. */
    private static void scrollTo(Node node) {
        for (Node each = node.getParent(); each != null; each = each.getParent()) {
            if (each instanceof ScrollPane pane && pane.getContent() != null) {
                Node content = pane.getContent();
                Bounds there = content.sceneToLocal(node.localToScene(node.getLayoutBounds()));
                double view = pane.getViewportBounds().getHeight();
                double beyond = content.getLayoutBounds().getHeight() - view;
                double top = pane.getVvalue() * beyond;
                if (beyond > 0 && (there.getMinY() < top || there.getMaxY() > top + view)) {
                    pane.setVvalue(Math.max(0, Math.min(1, (there.getCenterY() - view / 2) / beyond)));
                    pane.layout();
                }
            }
        }
    }

    /** Chooses a line of the menu that is open. */
    void chooseLine(String words) {
        press("the line " + words, () -> menuItem(words));
    }

    private static Optional<Node> menuItem(String words) {
        return windows().stream()
                .filter(Window::isShowing)
                .flatMap(window -> window.getScene().getRoot().lookupAll(".menu-item").stream())
                .filter(Node::isVisible)
                .filter(node -> node.lookup(".label") instanceof Labeled label
                        && label.getText().contains(words))
                .findFirst();
    }

    /** Opens a list of choices and takes the one that says so. */
    void choose(String id, String words) {
        click(id);
        press("the choice " + words, () -> choice(words));
    }

    private static Optional<Node> choice(String words) {
        return windows().stream()
                .filter(Window::isShowing)
                .filter(window -> window instanceof PopupWindow)
                .flatMap(window -> window.getScene().getRoot().lookupAll(".list-cell").stream())
                .filter(node -> node instanceof ListCell<?> cell
                        && cell.isVisible()
                        && cell.getText() != null
                        && cell.getText().contains(words))
                .findFirst();
    }

    /** Clicks into a field and types over what is there. */
    void fill(String id, String text) {
        click(id);
        push(KeyCode.CONTROL, KeyCode.A);
        type(text);
    }

    /** Letter by letter into what has the keyboard. */
    void type(String text) {
        await(
                "a field has the keyboard",
                () -> windows().stream()
                        .filter(Window::isFocused)
                        .findFirst()
                        .filter(window -> window.getScene().getFocusOwner() instanceof TextInputControl)
                        .isPresent());
        onWindowThread(() -> {
            for (String letter : text.codePoints().mapToObj(Character::toString).toList()) {
                Scene scene = windows().stream()
                        .filter(Window::isFocused)
                        .findFirst()
                        .orElseThrow(() -> new AssertionError("no window has the keyboard"))
                        .getScene();
                Node at = scene.getFocusOwner();
                Event.fireEvent(
                        at,
                        new KeyEvent(
                                KeyEvent.KEY_TYPED, letter, letter, KeyCode.UNDEFINED, false, false, false, false));
            }
            return true;
        });
    }

    void push(KeyCode... keys) {
        onWindowThread(() -> {
            for (KeyCode key : keys) {
                robot().keyPress(key);
            }
            for (int i = keys.length - 1; i >= 0; i--) {
                robot().keyRelease(keys[i]);
            }
            return true;
        });
        WaitForAsyncUtils.waitForFxEvents(2);
    }

    /** Waits a little for the keyboard to go on; at an end it stays. */
    private static void awaitStep(String before) {
        long until = System.nanoTime() + TimeUnit.SECONDS.toNanos(1);
        while (focused().equals(before) && System.nanoTime() < until) {
            WaitForAsyncUtils.waitForFxEvents(1);
        }
    }

    /** The keyboard is there, where something else was done. */
    void awaitFocus(String id) {
        await("the keyboard is on " + id, () -> focused().equals(id));
    }

    /** Goes on with the Tab key until the keyboard is there. */
    void tabTo(String id) {
        see(id);
        List<String> passed = new ArrayList<>();
        for (int i = 0; i < MOST_TABS; i++) {
            String at = focused();
            if (at.equals(id)) {
                return;
            }
            passed.add(at);
            push(KeyCode.TAB);
            awaitStep(at);
        }
        fail("Tab never comes to " + id + ", only to " + passed);
    }

    /** The same, then types over what is there. */
    void tabAndType(String id, String text) {
        tabTo(id);
        push(KeyCode.CONTROL, KeyCode.A);
        type(text);
    }

    /** Goes with an arrow key along what stands in a row. */
    void arrowTo(KeyCode arrow, String id) {
        List<String> passed = new ArrayList<>();
        for (int i = 0; i < MOST_TABS; i++) {
            String at = focused();
            if (at.equals(id)) {
                return;
            }
            passed.add(at);
            push(arrow);
            awaitStep(at);
        }
        fail(arrow + " never comes to " + id + ", only to " + passed);
    }

    private static String focused() {
        return onWindowThread(() -> windows().stream()
                .filter(Window::isFocused)
                .map(window -> window.getScene().getFocusOwner())
                .filter(owner -> owner != null)
                .map(owner -> String.valueOf(owner.getId()))
                .findFirst()
                .orElse(""));
    }
}
