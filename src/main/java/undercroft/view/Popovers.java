package undercroft.view;

import javafx.application.ConditionalFeature;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.layout.StackPane;
import javafx.scene.paint.Color;
import org.controlsfx.control.PopOver;
import undercroft.plot.Role;

/** Popovers in the window's looks. The base theme's own popover keeps the program alive after its window is closed. */
final class Popovers {
    private Popovers() {}

    static void show(Node owner, Node content, PopOver.ArrowLocation arrow, boolean dark) {
        StackPane pane = new StackPane(content);
        pane.getStyleClass().add("popover-pane");
        PopOver popover = new PopOver(pane);
        popover.getRoot().getStylesheets().addAll(owner.getScene().getStylesheets());
        Looks.mark(popover.getRoot(), dark);
        popover.setHeaderAlwaysVisible(false);
        popover.setDetachable(false);
        popover.setAutoHide(true);
        popover.setAnimated(false);
        popover.setArrowLocation(arrow);
        popover.show(owner);
        if (!Platform.isSupported(ConditionalFeature.TRANSPARENT_WINDOW)) {
            popover.getScene().setFill(Color.web(Looks.palette(dark).hex(Role.PAPER)));
        }
    }
}
