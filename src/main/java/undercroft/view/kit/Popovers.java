package undercroft.view.kit;

import java.util.function.Function;
import javafx.application.ConditionalFeature;
import javafx.application.Platform;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.StackPane;
import javafx.scene.paint.Color;
import org.controlsfx.control.PopOver;
import undercroft.plot.mark.Role;

/** Popovers in the window's looks. The base theme's own popover keeps the program alive after its window is closed. */
public final class Popovers {
    private static final double LEAST_HEIGHT = 220;
    private static final double ROOM_AROUND = 64;

    private Popovers() {}

    /** A popover whose content can close it. */
    public static void show(Node owner, Function<Runnable, Node> content, PopOver.ArrowLocation arrow, boolean dark) {
        Node[] shown = new Node[1];
        shown[0] = content.apply(() -> shown[0].getScene().getWindow().hide());
        show(owner, shown[0], arrow, dark);
    }

    public static void show(Node owner, Node content, PopOver.ArrowLocation arrow, boolean dark) {
        ScrollPane scroll = new ScrollPane(content);
        scroll.setFitToWidth(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        double below = owner.getScene().getHeight()
                - owner.localToScene(owner.getBoundsInLocal()).getMaxY();
        scroll.setMaxHeight(Math.max(LEAST_HEIGHT, below - ROOM_AROUND));
        StackPane pane = new StackPane(scroll);
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
