package undercroft.view.evidence;

import javafx.scene.layout.Pane;
import javafx.scene.layout.Region;

/** A chance as a bar, with a mark where it stood before. The words beside it say the same. */
final class ChanceBar extends Pane {
    private static final double WIDTH = 140;
    private static final double HEIGHT = 10;
    private static final double MARK = 2;

    private final Region filled = new Region();
    private final Region mark = new Region();
    private final double before;
    private final double now;

    ChanceBar(double before, double now) {
        this.before = before;
        this.now = now;
        getStyleClass().add("chance-bar");
        filled.getStyleClass().add("chance-now");
        mark.getStyleClass().add("chance-before");
        setMinSize(WIDTH, HEIGHT);
        setPrefSize(WIDTH, HEIGHT);
        setMaxSize(WIDTH, HEIGHT);
        getChildren().addAll(filled, mark);
    }

    @Override
    protected void layoutChildren() {
        filled.resizeRelocate(0, 0, WIDTH * now, HEIGHT);
        mark.resizeRelocate(Math.min(WIDTH - MARK, WIDTH * before), -MARK, MARK, HEIGHT + 2 * MARK);
    }
}
