package undercroft.app.pours;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import undercroft.app.Texts;
import undercroft.app.Workspace;
import undercroft.app.form.OccasionForm;
import undercroft.cellar.Cellar;
import undercroft.cellar.Pour;
import undercroft.outlook.Alert;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.PourChoice;
import undercroft.outlook.PourChoices;
import undercroft.outlook.PourPlan;
import undercroft.outlook.Wording;

/** The pours to come, one of them chosen, and the batches that might be poured on an occasion. */
public final class PoursViewModel {
    private final Workspace workspace;
    private final ObservableValue<CellarOutlook> outlook;
    private final ReadOnlyObjectWrapper<List<Line>> lines = new ReadOnlyObjectWrapper<>(this, "lines", List.of());
    private final ReadOnlyObjectWrapper<Optional<PourPage>> page =
            new ReadOnlyObjectWrapper<>(this, "page", Optional.empty());
    private String chosenId = "";

    /** A pour in the list. */
    public record Line(Pour pour, Alert alert, String what, String when, String chill, boolean chosen) {}

    public PoursViewModel(Workspace workspace, ObservableValue<CellarOutlook> outlook) {
        this.workspace = workspace;
        this.outlook = outlook;
        outlook.addListener((property, before, after) -> write());
        write();
    }

    public ReadOnlyObjectProperty<List<Line>> linesProperty() {
        return lines.getReadOnlyProperty();
    }

    /** The chosen pour; empty while there is none. */
    public ReadOnlyObjectProperty<Optional<PourPage>> pageProperty() {
        return page.getReadOnlyProperty();
    }

    public void choose(String pourId) {
        chosenId = pourId;
        write();
    }

    /** Takes a pour out; undoable. */
    public void remove(Pour pour) {
        Cellar cellar = workspace.getCellar();
        workspace.change(
                Texts.of("undo.pour.deleted", cellar.batch(pour.batchId()).name()),
                current -> current.withPours(current.pours().stream()
                        .filter(each -> !each.id().equals(pour.id()))
                        .toList()));
    }

    /** Batches for an occasion, best first. */
    public List<PourChoice> choices(OccasionForm.Occasion occasion) {
        CellarOutlook shown = outlook.getValue();
        return shown == null ? List.of() : PourChoices.of(shown, occasion.at(), occasion.bottles());
    }

    private void write() {
        CellarOutlook shown = outlook.getValue();
        if (shown == null) {
            return;
        }
        Wording words = Wording.of(shown);
        List<PourPlan> plans = shown.pours();
        Optional<PourPlan> chosen = plans.stream()
                .filter(plan -> plan.pour().id().equals(chosenId))
                .findFirst()
                .or(() -> plans.stream().findFirst());
        lines.set(plans.stream()
                .map(plan -> line(plan, shown, words, chosen.map(plan::equals).orElse(false)))
                .toList());
        page.set(chosen.map(plan -> PourPage.of(plan, shown)));
    }

    private static Line line(PourPlan plan, CellarOutlook outlook, Wording words, boolean chosen) {
        String name = outlook.cellar().batch(plan.pour().batchId()).name();
        String chill = plan.chillFrom()
                .map(from -> from.isBefore(outlook.at())
                        ? Texts.of("pours.line.there")
                        : Texts.of("pours.line.chill", words.moment(from)))
                .orElseGet(() -> Texts.of("pours.line.too-late"));
        return new Line(
                plan.pour(),
                plan.alert(),
                Texts.of("pours.line.what", plan.pour().bottles(), name),
                words.moment(plan.pour().at()),
                chill,
                chosen);
    }
}
