package undercroft.app.shelf;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyBooleanProperty;
import javafx.beans.property.ReadOnlyBooleanWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.property.SimpleStringProperty;
import javafx.beans.property.StringProperty;
import javafx.beans.value.ObservableValue;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.Stage;
import undercroft.wording.Messages;

/** The drawn shelf and what is chosen on it. */
public final class ShelfViewModel {
    private final Messages messages;
    private final ObservableValue<CellarOutlook> outlook;
    private final ObjectProperty<ShelfPlan.Order> order =
            new SimpleObjectProperty<>(this, "order", ShelfPlan.Order.ATTENTION);
    private final StringProperty search = new SimpleStringProperty(this, "search", "");
    private final ObjectProperty<Show> show = new SimpleObjectProperty<>(this, "show", Show.ALL);
    private final ReadOnlyObjectWrapper<Set<String>> marked = new ReadOnlyObjectWrapper<>(this, "marked", Set.of());
    private final ReadOnlyBooleanWrapper showsGone = new ReadOnlyBooleanWrapper(this, "showsGone");
    private final BooleanProperty batchOpen = new SimpleBooleanProperty(this, "batchOpen");
    private final ReadOnlyObjectWrapper<ShelfPlan> plan = new ReadOnlyObjectWrapper<>(this, "plan");
    /** Chosen before the shelf was known; empty once it is. */
    private String wish = "";

    private final ReadOnlyObjectWrapper<ShelfPlan.Crate> chosen = new ReadOnlyObjectWrapper<>(this, "chosen");
    private ShelfPlan whole;

    /** While batches are still being worked out, the first crate is chosen anew, as what wants attention first is not known yet. */
    private boolean followsFirst = true;

    /** Which crates are shown. */
    public enum Show {
        ALL,
        ATTENTION,
        CARBONATING,
        READY,
        FINISHED;

        private boolean shows(ShelfPlan.Crate crate) {
            return this == ALL || (!crate.pending() && isOf(crate));
        }

        private boolean isOf(ShelfPlan.Crate crate) {
            return switch (this) {
                case ALL -> true;
                case ATTENTION -> crate.alert() != Alert.CLEAR;
                case CARBONATING -> crate.stage() == Stage.CARBONATING || crate.stage() == Stage.CLEARING;
                case READY -> crate.stage() == Stage.READY || crate.stage() == Stage.PAST_BEST_BEFORE;
                case FINISHED -> crate.stage() == Stage.EMPTY;
            };
        }
    }

    /** Steps of the keyboard over the shelf. */
    public enum Step {
        PREVIOUS,
        NEXT,
        PLANK_UP,
        PLANK_DOWN,
        FIRST,
        LAST
    }

    public ShelfViewModel(Messages messages, ObservableValue<CellarOutlook> outlook) {
        this.messages = messages;
        this.outlook = outlook;
        outlook.addListener((property, before, after) -> draw());
        order.addListener((property, before, after) -> draw());
        showsGone.bind(show.isEqualTo(Show.FINISHED).or(search.isNotEmpty()));
        search.addListener((property, before, after) -> draw());
        show.addListener((property, before, after) -> draw());
        draw();
    }

    public ObjectProperty<ShelfPlan.Order> orderProperty() {
        return order;
    }

    /** Words that must all be found in a crate, its place or its notes; finished batches are searched too. */
    public StringProperty searchProperty() {
        return search;
    }

    public ObjectProperty<Show> showProperty() {
        return show;
    }

    /** How many crates a choice would show. */
    public long count(Show of) {
        return whole == null ? 0 : whole.crates().stream().filter(of::shows).count();
    }

    /** Whether batches without bottles are listed too. */
    public ReadOnlyBooleanProperty showsGoneProperty() {
        return showsGone.getReadOnlyProperty();
    }

    /** Keys of the crates marked, to do one thing with all of them. */
    public ReadOnlyObjectProperty<Set<String>> markedProperty() {
        return marked.getReadOnlyProperty();
    }

    /** The crates that are marked, in reading order. */
    public List<ShelfPlan.Crate> markedCrates() {
        return whole == null
                ? List.of()
                : whole.crates().stream()
                        .filter(crate -> marked.get().contains(crate.key()))
                        .toList();
    }

    /** Marks a crate, or takes its mark away. */
    public void mark(ShelfPlan.Crate crate) {
        Set<String> changed = new LinkedHashSet<>(marked.get());
        if (!changed.remove(crate.key())) {
            changed.add(crate.key());
        }
        marked.set(Set.copyOf(changed));
    }

    /** Marks all crates from the chosen one to this one. */
    public void markUpTo(ShelfPlan.Crate crate) {
        ShelfPlan shown = plan.get();
        if (shown == null) {
            return;
        }
        List<ShelfPlan.Crate> all = crates(shown);
        int here = indexOf(all, crate);
        int there = Math.max(0, indexOf(all, chosen.get()));
        Set<String> changed = new LinkedHashSet<>(marked.get());
        all.subList(Math.min(here, there), Math.max(here, there) + 1).forEach(each -> changed.add(each.key()));
        marked.set(Set.copyOf(changed));
    }

    public void unmarkAll() {
        marked.set(Set.of());
    }

    /** Whether the page of the chosen batch is shown in place of the season. */
    public BooleanProperty batchOpenProperty() {
        return batchOpen;
    }

    /** What the plan was drawn from; perhaps a shelf that is only known in part. Null like the plan. */
    public CellarOutlook outlook() {
        return outlook.getValue();
    }

    /** Null until there is an outlook. */
    public ReadOnlyObjectProperty<ShelfPlan> planProperty() {
        return plan.getReadOnlyProperty();
    }

    /** Null while there is no batch. */
    public ReadOnlyObjectProperty<ShelfPlan.Crate> chosenProperty() {
        return chosen.getReadOnlyProperty();
    }

    public void choose(ShelfPlan.Crate crate) {
        followsFirst = false;
        chosen.set(crate);
    }

    /** Chooses the crate of the batch that wants most attention, for a task that names only the batch. */
    public void chooseBatch(String batchId) {
        ShelfPlan shown = plan.get();
        if (shown == null) {
            wish = batchId;
            return;
        }
        if (whole.crates().stream().anyMatch(each -> each.batchId().equals(batchId))
                && crates(shown).stream().noneMatch(each -> each.batchId().equals(batchId))) {
            // What was asked for by name is not to be hidden by a filter.
            search.set("");
            show.set(Show.ALL);
            shown = plan.get();
        }
        Optional<ShelfPlan.Crate> crate = crates(shown).stream()
                .filter(each -> each.batchId().equals(batchId))
                .findFirst();
        if (crate.isPresent()) {
            choose(crate.get());
        } else if (shown.gone().stream().anyMatch(each -> each.batchId().equals(batchId))) {
            show.set(Show.FINISHED);
            chooseBatch(batchId);
        }
    }

    /** Chooses the batch and turns to its page. */
    public void openBatch(String batchId) {
        chooseBatch(batchId);
        batchOpen.set(true);
    }

    /** Moves the choice; at an end it stays. */
    public void move(Step step) {
        ShelfPlan shown = plan.get();
        if (shown == null || crates(shown).isEmpty()) {
            return;
        }
        List<ShelfPlan.Crate> all = crates(shown);
        int at = Math.max(0, indexOf(all, chosen.get()));
        switch (step) {
            case PREVIOUS -> choose(all.get(Math.max(0, at - 1)));
            case NEXT -> choose(all.get(Math.min(all.size() - 1, at + 1)));
            case FIRST -> choose(all.get(0));
            case LAST -> choose(all.get(all.size() - 1));
            case PLANK_UP -> movePlank(shown, all.get(at), -1);
            case PLANK_DOWN -> movePlank(shown, all.get(at), 1);
        }
    }

    private void movePlank(ShelfPlan shown, ShelfPlan.Crate from, int step) {
        List<List<ShelfPlan.Crate>> rows = rows(shown);
        for (int row = 0; row < rows.size(); row++) {
            int column = indexOf(rows.get(row), from);
            int target = row + step;
            if (column >= 0 && target >= 0 && target < rows.size()) {
                choose(rows.get(target).get(Math.min(column, rows.get(target).size() - 1)));
                return;
            }
        }
    }

    private List<List<ShelfPlan.Crate>> rows(ShelfPlan shown) {
        List<List<ShelfPlan.Crate>> rows = new ArrayList<>();
        shown.planks().forEach(plank -> rows.add(plank.crates()));
        rows.add(shown.planned());
        rows.add(showsGone.get() ? shown.gone() : List.of());
        rows.removeIf(List::isEmpty);
        return rows;
    }

    private List<ShelfPlan.Crate> crates(ShelfPlan shown) {
        return rows(shown).stream().flatMap(List::stream).toList();
    }

    private static int indexOf(List<ShelfPlan.Crate> crates, ShelfPlan.Crate crate) {
        for (int i = 0; i < crates.size(); i++) {
            if (crate != null && crates.get(i).key().equals(crate.key())) {
                return i;
            }
        }
        return -1;
    }

    private void draw() {
        if (outlook.getValue() == null) {
            return;
        }
        whole = ShelfPlan.of(outlook.getValue(), order.get(), messages);
        Set<String> keys = whole.crates().stream().map(ShelfPlan.Crate::key).collect(Collectors.toSet());
        marked.set(marked.get().stream().filter(keys::contains).collect(Collectors.toUnmodifiableSet()));
        boolean all = show.get() == Show.ALL && search.get().isBlank();
        ShelfPlan drawn = all ? whole : whole.only(crate -> show.get().shows(crate) && crate.isFoundBy(search.get()));
        plan.set(drawn);
        List<ShelfPlan.Crate> seen = crates(drawn);
        ShelfPlan.Crate before = followsFirst ? null : chosen.get();
        followsFirst &= !outlook.getValue().pending().isEmpty();
        chosen.set(seen.stream()
                .filter(crate -> before != null && crate.key().equals(before.key()))
                .findFirst()
                .or(() -> seen.stream()
                        .filter(crate -> before != null && crate.batchId().equals(before.batchId()))
                        .findFirst())
                .or(() -> seen.stream().findFirst())
                .orElse(null));
        if (!wish.isEmpty()) {
            String wished = wish;
            wish = "";
            chooseBatch(wished);
        }
    }
}
