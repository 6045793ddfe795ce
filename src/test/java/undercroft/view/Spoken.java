package undercroft.view;

import java.util.ArrayList;
import java.util.List;
import javafx.scene.AccessibleRole;
import javafx.scene.Node;
import javafx.scene.Parent;
import javafx.scene.canvas.Canvas;
import javafx.scene.control.Control;
import javafx.scene.control.Labeled;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.Region;

/** What a program that speaks for the screen has to say of each part of a scene. */
public final class Spoken {
    private Spoken() {}

    /** Parts that can be focused, and pictures, of which nothing is said. */
    public static List<String> nameless(Node root) {
        List<String> nameless = new ArrayList<>();
        walk(root, nameless);
        return nameless;
    }

    private static String name(Node node) {
        if (node.getAccessibleText() != null && !node.getAccessibleText().isBlank()) {
            return node.getAccessibleText();
        }
        return node instanceof Labeled labeled && labeled.getText() != null ? labeled.getText() : "";
    }

    private static String shown(Node node) {
        return node.getClass().getSimpleName() + "#" + node.getId() + "." + node.getStyleClass();
    }

    private static void walk(Node node, List<String> nameless) {
        if (!node.isVisible()) {
            return;
        }
        boolean reached = node.isFocusTraversable() && !(node instanceof ScrollPane);
        if (reached && node instanceof Control && name(node).isBlank()) {
            nameless.add("no name: " + shown(node));
        }
        if (reached && node instanceof Region && !(node instanceof Control)) {
            boolean told = node.getAccessibleRole() != AccessibleRole.NODE
                    && node.getAccessibleRole() != AccessibleRole.PARENT;
            if (!told || name(node).isBlank()) {
                nameless.add("no name or role: " + shown(node));
            }
        }
        if (node instanceof Canvas && !isTold(node)) {
            nameless.add("a picture nobody tells of: " + shown(node.getParent()));
        }
        if (node instanceof Parent parent) {
            parent.getChildrenUnmodifiable().forEach(child -> walk(child, nameless));
        }
    }

    private static boolean isTold(Node canvas) {
        Node above = canvas;
        for (int i = 0; i < 4 && above != null; i++) {
            if (above.getAccessibleText() != null && !above.getAccessibleText().isBlank()) {
                return true;
            }
            above = above.getParent();
        }
        return false;
    }
}
