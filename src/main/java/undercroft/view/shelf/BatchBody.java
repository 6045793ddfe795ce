package undercroft.view.shelf;

import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.HBox;
import javafx.scene.layout.Priority;
import javafx.scene.layout.Region;
import javafx.scene.layout.StackPane;
import javafx.scene.layout.VBox;
import undercroft.view.kit.Widths;

/**
 * What is to be said of a batch in a column that scrolls, its lists beside it; in a narrow window the lists stand in the
 * column, above the plots.
 */
final class BatchBody extends HBox {
    private static final double WIDE = 820;
    private static final double LIST_SHARE = 0.3;
    private static final double LEAST_LIST = 280;
    private static final double MOST_LIST = 380;
    private static final double LIST_HEIGHT = 240;

    private final VBox page = new VBox();
    private final ScrollPane scroll = new ScrollPane(page);
    private final VBox above;
    private final Region lists;
    private final Node plots;
    private boolean wide;

    BatchBody(VBox above, Region lists, Node plotStack) {
        this.above = above;
        this.lists = lists;
        this.plots = new StackPane(plotStack);
        getStyleClass().add("batch-body");
        setMinWidth(0);
        scroll.setMinWidth(0);
        plots.getStyleClass().addAll("plot-card", "card");
        page.getStyleClass().add("batch-page");
        page.setId("batch-page");
        above.getStyleClass().add("batch-above");
        VBox.setVgrow(plots, Priority.ALWAYS);
        scroll.setId("batch-scroll");
        scroll.setFitToWidth(true);
        scroll.setFitToHeight(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setFocusTraversable(false);
        HBox.setHgrow(scroll, Priority.ALWAYS);
        Widths.follow(this, width -> {
            boolean now = width >= WIDE;
            if (now != wide) {
                wide = now;
                arrange();
            }
            lists.setPrefWidth(Math.max(LEAST_LIST, Math.min(MOST_LIST, width * LIST_SHARE)));
        });
        arrange();
    }

    private void arrange() {
        if (wide) {
            page.getChildren().setAll(above, plots);
            lists.setMinWidth(USE_COMPUTED_SIZE);
            lists.setMinHeight(0);
            lists.setPrefHeight(USE_COMPUTED_SIZE);
            getChildren().setAll(scroll, lists);
        } else {
            lists.setMinWidth(0);
            lists.setMinHeight(LIST_HEIGHT);
            lists.setPrefHeight(LIST_HEIGHT);
            getChildren().setAll(scroll);
            page.getChildren().setAll(above, lists, plots);
        }
    }

    void toTop() {
        scroll.setVvalue(0);
    }
}
