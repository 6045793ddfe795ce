package undercroft.app;

import java.util.Comparator;
import java.util.List;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import undercroft.outlook.Alert;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.Task;

/** The short list of what to do, most urgent first. */
public final class TonightViewModel {
    private final ReadOnlyObjectWrapper<List<Line>> lines = new ReadOnlyObjectWrapper<>(this, "lines", List.of());

    /** One thing to do, and why; {@code when} as a person says it, empty for now. */
    public record Line(Alert alert, String what, String why, String when, String batchId) {}

    public TonightViewModel(ObservableValue<CellarOutlook> outlook) {
        outlook.addListener((property, before, after) -> write(after));
        write(outlook.getValue());
    }

    public ReadOnlyObjectProperty<List<Line>> linesProperty() {
        return lines.getReadOnlyProperty();
    }

    private void write(CellarOutlook outlook) {
        if (outlook == null) {
            return;
        }
        Wording words = Wording.of(outlook);
        lines.set(outlook.tasks().stream()
                .sorted(Comparator.comparing(Task::alert)
                        .reversed()
                        .thenComparing(Task::kind)
                        .thenComparing(Task::when))
                .map(task -> new Line(
                        task.alert(),
                        task.what(),
                        task.why(),
                        task.when().isAfter(outlook.at()) ? words.when(task.when()) : "",
                        task.batchId()))
                .toList());
    }
}
