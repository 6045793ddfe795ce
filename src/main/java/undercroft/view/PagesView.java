package undercroft.view;

import java.util.EnumMap;
import java.util.Map;
import java.util.Set;
import java.util.function.Supplier;
import javafx.scene.Node;
import javafx.scene.control.ScrollPane;
import javafx.scene.layout.StackPane;
import undercroft.app.Pages;
import undercroft.app.Pages.Page;

/** The pages of the window, one on top; each is made when it is first looked at. */
final class PagesView extends StackPane {
    private final Map<Page, Supplier<Node>> makers = new EnumMap<>(Page.class);
    private final Map<Page, Node> made = new EnumMap<>(Page.class);
    private final Pages pages;

    PagesView(Pages pages) {
        this.pages = pages;
        getStyleClass().add("page-deck");
        setMinWidth(0);
        pages.shownProperty().addListener((property, before, after) -> turnTo(after));
    }

    PagesView with(Page page, Supplier<Node> maker) {
        makers.put(page, maker);
        if (page == pages.shownProperty().get()) {
            turnTo(page);
        }
        return this;
    }

    /** The pages there are, in the order of the bar. */
    Set<Page> pages() {
        return makers.keySet();
    }

    private void turnTo(Page page) {
        getChildren()
                .setAll(made.computeIfAbsent(
                        page, wanted -> scrolling(makers.get(wanted).get())));
    }

    /** A page that needs more height than there is scrolls, so that it pushes nothing out of the window. */
    private static Node scrolling(Node page) {
        ScrollPane scroll = new ScrollPane(page);
        scroll.setFitToWidth(true);
        scroll.setFitToHeight(true);
        scroll.setHbarPolicy(ScrollPane.ScrollBarPolicy.NEVER);
        scroll.setFocusTraversable(false);
        scroll.getStyleClass().add("page-scroll");
        return scroll;
    }
}
