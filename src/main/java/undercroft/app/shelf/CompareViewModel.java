package undercroft.app.shelf;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.BooleanProperty;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.property.SimpleBooleanProperty;
import javafx.beans.value.ObservableValue;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.wording.Messages;

/** Up to three batches on the same plots. */
public final class CompareViewModel {
    private static final int MOST = 3;

    private final ObservableValue<CellarOutlook> outlook;
    private final Messages messages;
    private final ReadOnlyObjectWrapper<List<String>> chosen = new ReadOnlyObjectWrapper<>(this, "chosen", List.of());
    private final ReadOnlyObjectWrapper<ComparePage> page = new ReadOnlyObjectWrapper<>(this, "page");
    private final BooleanProperty fromCapping = new SimpleBooleanProperty(this, "fromCapping", true);

    /** A batch that can be chosen. */
    public record Choice(String batchId, String name) {}

    public CompareViewModel(ObservableValue<CellarOutlook> outlook, Messages messages) {
        this.outlook = outlook;
        this.messages = messages;
        outlook.addListener((property, before, after) -> write());
        fromCapping.addListener((property, before, after) -> write());
    }

    /** Null while nothing is compared. */
    public ReadOnlyObjectProperty<ComparePage> pageProperty() {
        return page.getReadOnlyProperty();
    }

    /** The batches compared, by id; none while nothing is. */
    public ReadOnlyObjectProperty<List<String>> chosenProperty() {
        return chosen.getReadOnlyProperty();
    }

    /** Whether days since capping lie over each other, or dates. */
    public BooleanProperty fromCappingProperty() {
        return fromCapping;
    }

    /** Every capped batch, those with bottles left first. */
    public List<Choice> choices() {
        List<BatchOutlook> capped = outlook.getValue().batches().stream()
                .filter(BatchOutlook::isCapped)
                .toList();
        List<Choice> all = new ArrayList<>();
        capped.stream().filter(batch -> batch.bottlesLeft() > 0).forEach(batch -> all.add(choice(batch)));
        capped.stream().filter(batch -> batch.bottlesLeft() == 0).forEach(batch -> all.add(choice(batch)));
        return all;
    }

    private static Choice choice(BatchOutlook batch) {
        return new Choice(batch.id(), batch.batch().name());
    }

    /** Compares these; a lone one with the batch most like it, of the same style where there is one. */
    public void compare(List<String> batchIds) {
        List<String> ids =
                new ArrayList<>(batchIds.stream().distinct().limit(MOST).toList());
        if (ids.size() == 1) {
            partner(ids.get(0)).ifPresent(ids::add);
        }
        chosen.set(List.copyOf(ids));
        write();
    }

    /** Puts another batch in one of the places; an empty one takes it out. */
    public void choose(int index, Optional<String> batchId) {
        List<String> ids = new ArrayList<>(chosen.get());
        if (index < ids.size()) {
            ids.remove(index);
        }
        batchId.filter(id -> !ids.contains(id)).ifPresent(id -> ids.add(Math.min(index, ids.size()), id));
        chosen.set(List.copyOf(ids));
        write();
    }

    public void stop() {
        chosen.set(List.of());
        write();
    }

    private Optional<String> partner(String batchId) {
        CellarOutlook shown = outlook.getValue();
        BatchOutlook one = shown.batch(batchId);
        List<BatchOutlook> others = shown.batches().stream()
                .filter(batch -> batch.isCapped() && !batch.id().equals(batchId))
                .toList();
        return others.stream()
                .filter(batch ->
                        batch.batch().beer().kind() == one.batch().beer().kind())
                .findFirst()
                .or(() -> others.stream().findFirst())
                .map(BatchOutlook::id);
    }

    private void write() {
        page.set(
                chosen.get().isEmpty() || outlook.getValue() == null
                        ? null
                        : ComparePage.of(outlook.getValue(), chosen.get(), fromCapping.get(), messages));
    }
}
