package undercroft.view.kit.keys;

import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.Scene;

/** Keeps the keyboard where it is while what is shown is made anew: else the window would put it anywhere. */
public final class KeptFocus {
    private KeptFocus() {}

    /** Makes the content of a pane anew; what had the keyboard in it has it again, known by its id. */
    public static void within(Parent pane, Runnable fill) {
        Scene scene = pane.getScene();
        Node before = scene == null ? null : scene.getFocusOwner();
        String id = before != null && isIn(pane, before) ? before.getId() : null;
        fill.run();
        if (id != null && before.getScene() != scene) {
            Node same = pane.lookup("#" + id);
            if (same != null) {
                same.requestFocus();
            }
        }
    }

    private static boolean isIn(Parent pane, Node node) {
        for (Node each = node; each != null; each = each.getParent()) {
            if (each == pane) {
                return true;
            }
        }
        return false;
    }
}
