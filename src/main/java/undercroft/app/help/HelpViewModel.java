package undercroft.app.help;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.Predicate;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;

/** Which page of the help is read, and what is looked for in it. For the window's thread. */
public final class HelpViewModel {
    private final List<HelpTopic> all;
    private final Locale locale;
    private final StringProperty search = new SimpleStringProperty(this, "search", "");
    private final ReadOnlyObjectWrapper<List<HelpTopic>> found;
    private final ReadOnlyObjectWrapper<HelpTopic> chosen;

    /** All pages; the first is read at first. */
    public HelpViewModel(List<HelpTopic> all, Locale locale) {
        this.all = List.copyOf(all);
        this.locale = locale;
        found = new ReadOnlyObjectWrapper<>(this, "found", this.all);
        chosen = new ReadOnlyObjectWrapper<>(this, "chosen", this.all.get(0));
        search.addListener((property, before, after) -> look());
    }

    /** Words, all of which have to stand in a part of a page. */
    public StringProperty searchProperty() {
        return search;
    }

    /** The pages that hold what is looked for, cut down to it; all of them while nothing is looked for. */
    public ReadOnlyObjectProperty<List<HelpTopic>> foundProperty() {
        return found.getReadOnlyProperty();
    }

    /** The page that is read; null while none holds what is looked for. */
    public ReadOnlyObjectProperty<HelpTopic> chosenProperty() {
        return chosen.getReadOnlyProperty();
    }

    /** Turns to a page of those that are found. */
    public void choose(HelpTopic topic) {
        chosen.set(topic);
    }

    /** Turns to a whole page, and looks for nothing any more. */
    public void open(String id) {
        search.set("");
        all.stream().filter(topic -> topic.id().equals(id)).findFirst().ifPresent(chosen::set);
    }

    private void look() {
        String[] words = search.get().strip().toLowerCase(locale).split("\\s+");
        Predicate<String> wanted = text -> Arrays.stream(words).allMatch(text.toLowerCase(locale)::contains);
        String before = chosen.get() == null ? "" : chosen.get().id();
        List<HelpTopic> now = search.get().isBlank()
                ? all
                : all.stream().flatMap(topic -> topic.holding(wanted).stream()).toList();
        found.set(now);
        chosen.set(now.stream()
                .filter(topic -> topic.id().equals(before))
                .findFirst()
                .orElse(now.isEmpty() ? null : now.get(0)));
    }
}
