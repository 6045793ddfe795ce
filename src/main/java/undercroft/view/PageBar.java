package undercroft.view;

import java.util.Locale;
import java.util.Set;
import javafx.geometry.Pos;
import javafx.scene.control.ToggleButton;
import javafx.scene.control.ToggleGroup;
import javafx.scene.layout.HBox;
import undercroft.app.Pages;
import undercroft.app.Pages.Page;
import undercroft.wording.Messages;

/** The names of the pages in the bar, the shown one marked. */
final class PageBar extends HBox {
    PageBar(Messages messages, Pages pages, Set<Page> all) {
        getStyleClass().add("page-links");
        setAlignment(Pos.CENTER_LEFT);
        ToggleGroup group = new ToggleGroup();
        for (Page page : all) {
            ToggleButton link = new ToggleButton(page.title(messages));
            link.setId("page-" + page.name().toLowerCase(Locale.ROOT).replace('_', '-'));
            link.setToggleGroup(group);
            link.setMinWidth(USE_PREF_SIZE);
            link.getStyleClass().add("page-link");
            link.setSelected(page == pages.shownProperty().get());
            link.setOnAction(event -> {
                link.setSelected(true);
                pages.show(page);
            });
            pages.shownProperty().addListener((property, before, after) -> link.setSelected(after == page));
            getChildren().add(link);
        }
    }
}
