package undercroft.app.shelf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import javafx.beans.property.SimpleObjectProperty;
import org.junit.jupiter.api.Test;
import undercroft.cellar.Batch;
import undercroft.cellar.Reading;
import undercroft.cellar.Settings;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.OutlookSamples;
import undercroft.quantity.UnitSystem;
import undercroft.session.SampleWorkspace;
import undercroft.session.Workspace;
import undercroft.wording.Messages;

class BatchViewModelTest {
    private final Workspace workspace = SampleWorkspace.of(OutlookSamples.cellar());
    private final SimpleObjectProperty<CellarOutlook> outlook =
            new SimpleObjectProperty<>(OutlookSamples.outlook(workspace.getCellar(), OutlookSamples.NOW));
    private final ShelfViewModel shelf = new ShelfViewModel(Messages.english(), outlook);
    private final BatchViewModel model =
            new BatchViewModel(Messages.english(), workspace, outlook, shelf.chosenProperty());

    private BatchPage page() {
        return model.pageProperty().get();
    }

    private BatchPage.Figure figure(String id) {
        return page().figures().stream()
                .filter(each -> each.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void theFiguresCarryTheirUnitsAndTheirGrounds() {
        shelf.chooseBatch("quarry");
        assertEquals("2.1 vol", figure("carbonation").value());
        assertTrue(
                figure("pressure").detail().endsWith(" bar, working pressure 4.7 bar"),
                figure("pressure").detail());
        assertEquals("37 °C", figure("heat-limit").value());
        assertTrue(figure("carbonation").why().title().startsWith("Carbonation"));
    }

    @Test
    void aTemperatureThatNobodyMeasuredIsCalledAGuess() {
        shelf.chooseBatch("winter");
        assertTrue(page().where().contains("°C, a guess"), page().where());
        shelf.chooseBatch("quarry");
        assertFalse(page().where().contains("guess"), page().where());
    }

    @Test
    void theListsAreATableInWhichNoNameIsAFormula() {
        workspace.change("a reading", cellar -> {
            Batch batch = cellar.batches().stream()
                    .filter(each -> each.id().equals("quarry"))
                    .findFirst()
                    .orElseThrow();
            return cellar.withBatch(batch.withReadings(List.of(new Reading.Gauge(
                    OutlookSamples.NOW.minusSeconds(3600), batch.lots().get(0).id(), "=1+1", 1.9))));
        });
        outlook.set(OutlookSamples.outlook(workspace.getCellar(), OutlookSamples.NOW));
        shelf.chooseBatch("quarry");
        String table = BatchListsCsv.of(page(), Messages.english());
        assertTrue(table.startsWith("list,when,what,note\r\n"), table);
        assertTrue(table.contains(",gauge 1.9 bar,"), table);
        assertTrue(table.contains("'=1+1"), table);
        assertFalse(table.contains(",=1+1"), table);
    }

    @Test
    void usUnitsReachTheFigures() {
        shelf.chooseBatch("quarry");
        workspace.change("units", cellar -> cellar.withSettings(new Settings(UnitSystem.US, 0)));
        outlook.set(OutlookSamples.outlook(workspace.getCellar(), OutlookSamples.NOW));
        assertEquals("99 °F", figure("heat-limit").value());
        assertTrue(
                figure("pressure").detail().endsWith(" psi, working pressure 68 psi"),
                figure("pressure").detail());
    }

    @Test
    void onlyBottlesNearTheirLimitComeWithCautions() {
        shelf.chooseBatch("beacon");
        String act = String.join(" ", page().cautions());
        assertTrue(
                act.contains("Do not carry it") && act.contains("cool it for a day") && act.contains("ye protection"),
                act);
        shelf.chooseBatch("larch");
        assertFalse(page().cautions().isEmpty());
        shelf.chooseBatch("hedge");
        assertEquals(List.of(), page().cautions());
    }

    @Test
    void theCrateThatIsChosenDecidesTheLot() {
        shelf.choose(shelf.planProperty().get().crates().stream()
                .filter(crate -> crate.key().equals("heron@fridge"))
                .findFirst()
                .orElseThrow());
        assertEquals("lot-2", page().lot().orElseThrow().lot().id());
        model.chooseLot("lot-1");
        assertEquals("lot-1", page().lot().orElseThrow().lot().id());
        assertEquals(
                "4 × 330 mL longneck, brown glass, Fridge", page().lots().get(1).label());
    }

    @Test
    void aPlannedBatchHasNoFiguresYet() {
        shelf.chooseBatch("lantern");
        assertTrue(page().lot().isEmpty());
        assertEquals(List.of(), page().figures());
    }

    @Test
    void readingsRunFromTheNewestToTheOldest() {
        shelf.chooseBatch("quarry");
        assertEquals(
                List.of("opened: as it should be", "squeezed: firm", "gauge 1.9 bar"),
                page().readings().stream().map(BatchPage.Row::what).toList());
    }

    @Test
    void aReadingTakenBackCanBeBroughtBack() {
        shelf.chooseBatch("quarry");
        model.remove(page().readings().get(0).reading().orElseThrow());
        assertEquals(2, workspace.getCellar().batch("quarry").readings().size());
        workspace.undo();
        assertEquals(3, workspace.getCellar().batch("quarry").readings().size());
    }

    @Test
    void drawsCountTheirBottles() {
        shelf.chooseBatch("beacon");
        assertEquals(
                List.of("1 bottle opened", "4 bottles opened"),
                page().draws().stream().map(BatchPage.Row::what).toList());
    }
}
