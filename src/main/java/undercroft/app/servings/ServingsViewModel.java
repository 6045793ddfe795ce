package undercroft.app.servings;

import java.util.List;
import java.util.Optional;
import java.util.concurrent.Callable;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import undercroft.cellar.Cellar;
import undercroft.cellar.Serving;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.serving.ServingChoice;
import undercroft.outlook.serving.ServingPlan;
import undercroft.session.Workspace;
import undercroft.wording.Messages;
import undercroft.wording.ServingWords;
import undercroft.wording.ShelfWords;

/** The servings to come, one of them chosen, and the batches that might be served on an occasion. */
public final class ServingsViewModel {
    private final Messages messages;
    private final Workspace workspace;
    private final ObservableValue<CellarOutlook> outlook;
    private final ReadOnlyObjectWrapper<List<Line>> lines = new ReadOnlyObjectWrapper<>(this, "lines", List.of());
    private final ReadOnlyObjectWrapper<Optional<ServingPage>> page =
            new ReadOnlyObjectWrapper<>(this, "page", Optional.empty());
    private String chosenId = "";

    /** A pour in the list. */
    public record Line(Serving serving, Alert alert, String what, String when, String chill, boolean chosen) {}

    public ServingsViewModel(Messages messages, Workspace workspace, ObservableValue<CellarOutlook> outlook) {
        this.messages = messages;
        this.workspace = workspace;
        this.outlook = outlook;
        outlook.addListener((property, before, after) -> write());
        write();
    }

    public ReadOnlyObjectProperty<List<Line>> linesProperty() {
        return lines.getReadOnlyProperty();
    }

    /** The chosen pour; empty while there is none. */
    public ReadOnlyObjectProperty<Optional<ServingPage>> pageProperty() {
        return page.getReadOnlyProperty();
    }

    public void choose(String servingId) {
        chosenId = servingId;
        write();
    }

    /** Takes a pour out; undoable. */
    public void remove(Serving serving) {
        Cellar cellar = workspace.getCellar();
        workspace.change(
                messages.of(
                        "undo.serving.deleted", cellar.batch(serving.batchId()).name()),
                current -> current.withServings(current.servings().stream()
                        .filter(each -> !each.id().equals(serving.id()))
                        .toList()));
    }

    /** Batches for an occasion, best first; worked out, of the shelf as it is now, in whatever thread asks for them. */
    public Callable<List<ServingChoice>> choices(OccasionForm.Occasion occasion) {
        CellarOutlook shown = outlook.getValue();
        return () -> shown == null ? List.of() : shown.choices(occasion.at(), occasion.bottles());
    }

    public String nameOf(ServingChoice choice) {
        return outlook.getValue().cellar().batch(choice.batchId()).name();
    }

    /** What speaks for a choice and against it. */
    public List<String> reasons(ServingChoice choice) {
        return new ServingWords(ShelfWords.of(outlook.getValue(), messages)).reasons(choice);
    }

    private void write() {
        CellarOutlook shown = outlook.getValue();
        if (shown == null) {
            return;
        }
        ShelfWords words = ShelfWords.of(shown, messages);
        List<ServingPlan> plans = shown.servings();
        Optional<ServingPlan> chosen = plans.stream()
                .filter(plan -> plan.serving().id().equals(chosenId))
                .findFirst()
                .or(() -> plans.stream().findFirst());
        lines.set(plans.stream()
                .map(plan -> line(plan, shown, words, chosen.map(plan::equals).orElse(false)))
                .toList());
        page.set(chosen.map(plan -> ServingPage.of(plan, words)));
    }

    private Line line(ServingPlan plan, CellarOutlook outlook, ShelfWords words, boolean chosen) {
        String name = outlook.cellar().batch(plan.serving().batchId()).name();
        String chill = plan.chillFrom()
                .map(from -> from.isBefore(outlook.at())
                        ? messages.of("servings.line.there")
                        : messages.of("servings.line.chill", words.format().weekdayAndTime(from)))
                .orElseGet(() -> messages.of("servings.line.too-late"));
        return new Line(
                plan.serving(),
                plan.alert(),
                messages.of("servings.line.what", plan.serving().bottles(), name),
                words.format().weekdayAndTime(plan.serving().at()),
                chill,
                chosen);
    }
}
