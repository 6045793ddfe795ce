package undercroft.app.shelf;

import java.time.Duration;
import java.time.Instant;
import java.time.LocalTime;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ReadOnlyIntegerProperty;
import javafx.beans.property.ReadOnlyIntegerWrapper;
import javafx.beans.property.ReadOnlyObjectProperty;
import javafx.beans.property.ReadOnlyObjectWrapper;
import javafx.beans.value.ObservableValue;
import undercroft.cellar.TaskNote;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.task.Task;
import undercroft.session.Workspace;
import undercroft.wording.Messages;
import undercroft.wording.ShelfWords;
import undercroft.wording.TaskWords;

/** The short list of what to do, most urgent first, without what was put away. */
public final class ToDoViewModel {
    private final Messages messages;
    /** A dismissed line that says "act now" is not gone for good: the bottles may still be dangerous. */
    private static final Duration ACT_STAYS_AWAY = Duration.ofDays(7);

    private static final LocalTime SHOWN_AGAIN = LocalTime.of(7, 0);

    private final Workspace workspace;
    private final ObservableValue<CellarOutlook> outlook;
    private final ReadOnlyObjectWrapper<List<Line>> lines = new ReadOnlyObjectWrapper<>(this, "lines", List.of());
    private final ReadOnlyIntegerWrapper putAway = new ReadOnlyIntegerWrapper(this, "putAway");

    /** One thing to do, and why; {@code when} as a person says it, empty for now. */
    public record Line(Alert alert, String what, String why, String when, String batchId, Task task) {}

    public ToDoViewModel(Messages messages, Workspace workspace, ObservableValue<CellarOutlook> outlook) {
        this.messages = messages;
        this.workspace = workspace;
        this.outlook = outlook;
        outlook.addListener((property, before, after) -> write(after));
        write(outlook.getValue());
    }

    public ReadOnlyObjectProperty<List<Line>> linesProperty() {
        return lines.getReadOnlyProperty();
    }

    /** How many lines were put away and are not due again yet. */
    public ReadOnlyIntegerProperty putAwayProperty() {
        return putAway.getReadOnlyProperty();
    }

    /** It is done; asked for again after a while where it is about a state. */
    public void done(Line line) {
        Instant now = outlook.getValue().at();
        note(line, TaskNote.What.DONE, line.task().kind().restWhenDone().map(now::plus));
    }

    /** Not before the morning some days from now. */
    public void postpone(Line line, int days) {
        CellarOutlook shown = outlook.getValue();
        Instant until = shown.at()
                .atZone(shown.cellar().zone())
                .toLocalDate()
                .plusDays(days)
                .atTime(SHOWN_AGAIN)
                .atZone(shown.cellar().zone())
                .toInstant();
        note(line, TaskNote.What.POSTPONED, Optional.of(until));
    }

    /** Not wanted. */
    public void dismiss(Line line) {
        Optional<Instant> until = line.alert() == Alert.ACT
                ? Optional.of(outlook.getValue().at().plus(ACT_STAYS_AWAY))
                : Optional.empty();
        note(line, TaskNote.What.DISMISSED, until);
    }

    /** Shows everything again that was put away. */
    public void bringBack() {
        workspace.change(messages.of("undo.todo.back"), cellar -> cellar.withTaskNotes(List.of()));
    }

    private void note(Line line, TaskNote.What what, Optional<Instant> until) {
        Instant now = outlook.getValue().at();
        TaskNote note = new TaskNote(line.task().key(), what, until);
        workspace.change(messages.of("undo.todo.noted", line.what(), what), cellar -> cellar.withTaskNote(note, now));
    }

    private void write(CellarOutlook shown) {
        if (shown == null) {
            return;
        }
        ShelfWords words = ShelfWords.of(shown, messages);
        TaskWords said = new TaskWords(words);
        putAway.set((int) shown.cellar().taskNotes().stream()
                .filter(note -> note.holdsAt(shown.at()))
                .count());
        lines.set(shown.tasks().stream()
                .sorted(Comparator.comparing(Task::alert)
                        .reversed()
                        .thenComparing(Task::kind)
                        .thenComparing(Task::when))
                .map(task -> new Line(
                        task.alert(),
                        said.what(task),
                        said.why(task),
                        task.when().isAfter(shown.at()) ? words.when(task.when()) : "",
                        task.batchId(),
                        task))
                .toList());
    }
}
