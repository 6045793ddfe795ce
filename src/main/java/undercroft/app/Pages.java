package undercroft.app;

import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import undercroft.wording.Messages;

/** Which page of the window is shown. For the window's thread. */
public final class Pages {
    private final ReadOnlyObjectWrapper<Page> shown = new ReadOnlyObjectWrapper<>(this, "shown", Page.SHELF);

    /** The pages, in the order of the bar. */
    public enum Page {
        SHELF("page.shelf.button"),
        BOTTLING_DAY("page.bottling.button"),
        WARM_SPELLS("page.spells.button"),
        SERVINGS("page.servings.button");

        private final String key;

        Page(String key) {
            this.key = key;
        }

        /** Its name in the bar. */
        public String title(Messages messages) {
            return messages.of(key);
        }
    }

    public ReadOnlyObjectProperty<Page> shownProperty() {
        return shown.getReadOnlyProperty();
    }

    public void show(Page page) {
        shown.set(page);
    }
}
