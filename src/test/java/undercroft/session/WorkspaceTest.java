package undercroft.session;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import undercroft.cellar.Cellar;
import undercroft.cellar.Settings;
import undercroft.outlook.OutlookSamples;
import undercroft.quantity.UnitSystem;

class WorkspaceTest {
    private final Workspace workspace = SampleWorkspace.of(OutlookSamples.cellar());

    private void showUs() {
        workspace.changeThroughout(cellar -> cellar.withSettings(
                new Settings(UnitSystem.US, cellar.settings().altitudeMetres())));
    }

    private UnitSystem units() {
        return workspace.getCellar().settings().units();
    }

    @Test
    void aChangeOfUnitsKeepsWhatCanBeDoneAgain() {
        workspace.change("another name", cellar -> cellar.withName("Barn"));
        workspace.undo();
        showUs();
        assertEquals(UnitSystem.US, units());
        assertEquals("another name", workspace.redoTextProperty().get());
        workspace.redo();
        assertEquals("Barn", workspace.getCellar().name());
        assertEquals(UnitSystem.US, units(), "what is done again is shown in the units of now");
    }

    @Test
    void undoDoesNotTakeUnitsBack() {
        Cellar before = workspace.getCellar();
        workspace.change("another name", cellar -> cellar.withName("Barn"));
        showUs();
        workspace.undo();
        assertEquals(before.name(), workspace.getCellar().name());
        assertEquals(UnitSystem.US, units());
        assertEquals("", workspace.undoTextProperty().get());
    }
}
