package undercroft.view.start;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import javafx.scene.control.MenuItem;
import javafx.scene.control.RadioMenuItem;
import javafx.scene.control.ToggleGroup;
import undercroft.view.kit.CellarChooser;
import undercroft.wording.Keys;
import undercroft.wording.Language;
import undercroft.wording.Messages;

/** The languages to choose from, each in its own words. */
public final class LanguageMenu {
    private LanguageMenu() {}

    public static List<MenuItem> items(Messages messages, CellarChooser chooser) {
        List<MenuItem> items = new ArrayList<>();
        ToggleGroup one = new ToggleGroup();
        for (Language language : Language.values()) {
            RadioMenuItem item = new RadioMenuItem(messages.of(Keys.of("bar.language", language)));
            item.setId("language-" + language.name().toLowerCase(Locale.ROOT));
            item.setToggleGroup(one);
            item.setSelected(chooser.language() == language);
            item.setOnAction(event -> chooser.speak(language));
            items.add(item);
        }
        return items;
    }
}
