package undercroft.view;

import atlantafx.base.controls.Popover;
import javafx.scene.Node;
import javafx.scene.layout.StackPane;

/** Popovers in the window's looks. */
final class Popovers {
    private Popovers() {}

    static Popover show(Node owner, Node content, boolean dark) {
        StackPane pane = new StackPane(content);
        pane.getStyleClass().add("popover-pane");
        Looks.mark(pane, dark);
        Popover popover = new Popover(pane);
        popover.setHeaderAlwaysVisible(false);
        popover.setDetachable(false);
        popover.setAutoHide(true);
        popover.setAnimated(false);
        popover.setArrowLocation(Popover.ArrowLocation.TOP_CENTER);
        popover.show(owner);
        Looks.mark(popover.getScene().getRoot(), dark);
        return popover;
    }
}
