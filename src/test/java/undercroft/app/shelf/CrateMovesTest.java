package undercroft.app.shelf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.time.Clock;
import java.time.ZoneOffset;
import java.util.List;
import org.junit.jupiter.api.Test;
import undercroft.cellar.Cellar;
import undercroft.cellar.Lot;
import undercroft.outlook.OutlookSamples;
import undercroft.quantity.InvalidInput;
import undercroft.session.SampleWorkspace;
import undercroft.session.Workspace;
import undercroft.wording.Messages;

class CrateMovesTest {
    private final Workspace workspace = SampleWorkspace.of(OutlookSamples.cellar());
    private final CrateMoves moves =
            new CrateMoves(workspace, Clock.fixed(OutlookSamples.NOW, ZoneOffset.UTC), Messages.english());
    private final List<ShelfPlan.Crate> crates = ShelfPlan.of(
                    OutlookSamples.outlook(OutlookSamples.cellar(), OutlookSamples.NOW),
                    ShelfPlan.Order.PLACE,
                    Messages.english())
            .crates();

    private ShelfPlan.Crate crate(String key) {
        return crates.stream()
                .filter(crate -> crate.key().equals(key))
                .findFirst()
                .orElseThrow();
    }

    private String place(String batchId, String lotId) {
        Lot lot = workspace.getCellar().batch(batchId).lot(lotId);
        return lot.stayAt(OutlookSamples.NOW).placeId();
    }

    @Test
    void allLotsOfACrateGoTogetherAndComeBackInOneStep() {
        moves.move(List.of(crate("beacon@loft"), crate("hedge@cupboard")), "fridge");
        assertEquals("fridge", place("beacon", "lot-1"));
        assertEquals("fridge", place("beacon", "lot-2"));
        assertEquals("fridge", place("hedge", "lot-1"));
        assertEquals("Move 2 crates to Fridge", workspace.undoTextProperty().get());
        workspace.undo();
        assertEquals("loft", place("beacon", "lot-2"));
        assertEquals("cupboard", place("hedge", "lot-1"));
    }

    @Test
    void bottlesOfTheBatchInAnotherPlaceStayThere() {
        moves.move(List.of(crate("heron@cupboard")), "loft");
        assertEquals("loft", place("heron", "lot-1"));
        assertEquals("fridge", place("heron", "lot-2"));
    }

    @Test
    void whatStandsThereAlreadyAndWhatIsNotCappedStays() {
        Cellar before = workspace.getCellar();
        moves.move(List.of(crate("winter@fridge"), crate("lantern")), "fridge");
        assertEquals(before, workspace.getCellar());
    }

    @Test
    void aPlaceThatIsNotThereIsRefused() {
        assertThrows(InvalidInput.class, () -> moves.move(List.of(crate("hedge@cupboard")), "barn"));
    }
}
