package undercroft.view.kit;

import javafx.geometry.Bounds;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;

/** Scrolling that follows what is chosen. */
public final class Scrolls {
    private Scrolls() {}

    /** Scrolls just so far that the node is seen. */
    public static void intoView(ScrollPane pane, Node node) {
        Node content = pane.getContent();
        double height = content.getBoundsInLocal().getHeight();
        double view = pane.getViewportBounds().getHeight();
        if (view <= 0 || height <= view) {
            return;
        }
        Bounds bounds = content.sceneToLocal(node.localToScene(node.getBoundsInLocal()));
        double top = pane.getVvalue() * (height - view);
        if (bounds.getMinY() < top) {
            pane.setVvalue(Math.max(0, bounds.getMinY() / (height - view)));
        } else if (bounds.getMaxY() > top + view) {
            pane.setVvalue(Math.min(1, (bounds.getMaxY() - view) / (height - view)));
        }
    }
}
