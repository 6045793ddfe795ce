package undercroft.app.shelf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import javafx.beans.property.ObjectProperty;
import javafx.beans.property.SimpleObjectProperty;
import org.junit.jupiter.api.Test;
import undercroft.cellar.TaskNote;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.OutlookSamples;
import undercroft.outlook.lot.Alert;
import undercroft.session.SampleWorkspace;
import undercroft.session.Workspace;
import undercroft.wording.Messages;

class ToDoViewModelTest {
    private final Workspace workspace = SampleWorkspace.of(OutlookSamples.cellar());
    private final ObjectProperty<CellarOutlook> outlook =
            new SimpleObjectProperty<>(OutlookSamples.outlook(OutlookSamples.cellar(), OutlookSamples.NOW));
    private final ToDoViewModel model = new ToDoViewModel(Messages.english(), workspace, outlook);
    private final List<ToDoViewModel.Line> lines = model.linesProperty().get();

    private TaskNote noted() {
        return workspace.getCellar().taskNotes().get(0);
    }

    @Test
    void theMostUrgentComesFirst() {
        assertEquals(
                List.of(Alert.ACT, Alert.WATCH, Alert.WATCH, Alert.WATCH, Alert.WATCH, Alert.CLEAR, Alert.CLEAR),
                lines.stream().map(ToDoViewModel.Line::alert).toList());
        assertEquals("beacon", lines.get(0).batchId());
    }

    @Test
    void onlyWhatIsForLaterSaysWhen() {
        assertEquals("", lines.get(0).when());
        assertEquals("tomorrow 16:03", lines.get(3).when());
    }

    @Test
    void aLinePutOffIsShownAgainInTheMorningOfThatDay() {
        model.postpone(lines.get(4), 1);
        assertEquals(TaskNote.What.POSTPONED, noted().what());
        assertEquals(lines.get(4).task().key(), noted().taskKey());
        assertEquals(Optional.of(Instant.parse("2026-11-26T07:00:00Z")), noted().until());
    }

    @Test
    void aDismissedLineStaysAwayUnlessItSaysActNow() {
        model.dismiss(lines.get(0));
        assertEquals(Optional.of(OutlookSamples.NOW.plus(Duration.ofDays(7))), noted().until());
        workspace.undo();
        model.dismiss(lines.get(2));
        assertEquals(Optional.empty(), noted().until());
    }

    @Test
    void whatWasSaidCanBeUndoneOrBroughtBack() {
        model.done(lines.get(1));
        assertFalse(workspace.getCellar().taskNotes().isEmpty());
        workspace.undo();
        assertTrue(workspace.getCellar().taskNotes().isEmpty());
        model.done(lines.get(1));
        model.bringBack();
        assertTrue(workspace.getCellar().taskNotes().isEmpty());
    }
}
