package undercroft.app.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.property.SimpleObjectProperty;
import javafx.beans.value.ObservableValue;
import undercroft.outlook.CellarOutlook;
import undercroft.wording.Messages;

/** The drawn shelf and what is chosen on it. */
public final class ShelfViewModel {
    private final Messages messages;
    private final ObservableValue<CellarOutlook> outlook;
    private final ObjectProperty<ShelfPlan.Order> order =
            new SimpleObjectProperty<>(this, "order", ShelfPlan.Order.ATTENTION);
    private final BooleanProperty showsGone = new SimpleBooleanProperty(this, "showsGone");
    private final BooleanProperty batchOpen = new SimpleBooleanProperty(this, "batchOpen");
    private final ReadOnlyObjectWrapper<ShelfPlan> plan = new ReadOnlyObjectWrapper<>(this, "plan");
    private final ReadOnlyObjectWrapper<ShelfPlan.Crate> chosen = new ReadOnlyObjectWrapper<>(this, "chosen");

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
        showsGone.addListener((property, before, after) -> draw());
        draw();
    }

    public ObjectProperty<ShelfPlan.Order> orderProperty() {
        return order;
    }

    /** Whether batches without bottles stand on the shelf too. */
    public BooleanProperty showsGoneProperty() {
        return showsGone;
    }

    /** Whether the page of the chosen batch is shown in place of the season. */
    public BooleanProperty batchOpenProperty() {
        return batchOpen;
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
        chosen.set(crate);
    }

    /** Chooses the crate of the batch that wants most attention, for a task that names only the batch. */
    public void chooseBatch(String batchId) {
        ShelfPlan shown = plan.get();
        if (shown == null) {
            return;
        }
        Optional<ShelfPlan.Crate> crate = crates(shown).stream()
                .filter(each -> each.batchId().equals(batchId))
                .findFirst();
        if (crate.isPresent()) {
            choose(crate.get());
        } else if (shown.gone().stream().anyMatch(each -> each.batchId().equals(batchId))) {
            showsGone.set(true);
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
        ShelfPlan drawn = ShelfPlan.of(outlook.getValue(), order.get(), messages);
        plan.set(drawn);
        List<ShelfPlan.Crate> all = crates(drawn);
        ShelfPlan.Crate before = chosen.get();
        chosen.set(all.stream()
                .filter(crate -> before != null && crate.key().equals(before.key()))
                .findFirst()
                .or(() -> all.stream()
                        .filter(crate -> before != null && crate.batchId().equals(before.batchId()))
                        .findFirst())
                .or(() -> all.stream().findFirst())
                .orElse(null));
    }
}
