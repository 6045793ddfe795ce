package undercroft.view.bottling;

import javafx.scene.Node;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import undercroft.view.kit.Widths;

/** Two columns of the same width, below each other where they do not fit beside each other. */
final class Columns extends StackPane {
    private static final double GAP = 28;
    private static final double LEAST = 300;

    private final VBox left;
    private final VBox right;
    private boolean stacked;

    Columns(Node left, Node right) {
        this.left = column(left);
        this.right = column(right);
        getStyleClass().add("screen-columns");
        setMinWidth(0);
        arrange();
        Widths.follow(this, width -> {
            boolean now = width < least(this.left) + least(this.right) + GAP;
            if (now != stacked) {
                stacked = now;
                arrange();
            }
        });
    }

    private static VBox column(Node node) {
        VBox column = node instanceof VBox box ? box : new VBox(node);
        HBox.setHgrow(column, Priority.ALWAYS);
        return column;
    }

    private static double least(VBox column) {
        return Math.max(LEAST, column.minWidth(-1));
    }

    private void arrange() {
        // Of the same width beside each other, as wide as there is room below each other.
        for (VBox column : new VBox[] {left, right}) {
            column.setPrefWidth(stacked ? USE_COMPUTED_SIZE : 10);
        }
        getChildren().clear();
        if (stacked) {
            getChildren().setAll(new VBox(GAP / 2, left, right));
        } else {
            getChildren().setAll(new HBox(GAP, left, right));
        }
    }
}
