package undercroft.app.shelf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNull;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import javafx.beans.property.SimpleObjectProperty;
import org.junit.jupiter.api.Test;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.OutlookSamples;
import undercroft.plot.PlotStack;
import undercroft.wording.Messages;

class CompareViewModelTest {
    private final SimpleObjectProperty<CellarOutlook> outlook =
            new SimpleObjectProperty<>(OutlookSamples.outlook(OutlookSamples.cellar(), OutlookSamples.NOW));
    private final CompareViewModel model = new CompareViewModel(outlook, Messages.english());

    private ComparePage.Row row(List<ComparePage.Row> rows, String label) {
        return rows.stream()
                .filter(row -> row.label().equals(label))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void aLoneBatchIsComparedWithOneLikeIt() {
        model.compare(List.of("quarry"));
        assertEquals(2, model.pageProperty().get().names().size());
        assertEquals("Quarry Porter", model.pageProperty().get().names().get(0));
    }

    @Test
    void atMostThreeAreChosenAndAnyIsTakenOutAgain() {
        model.compare(List.of("quarry", "larch", "gable", "hedge"));
        assertEquals(List.of("quarry", "larch", "gable"), model.chosenProperty().get());
        model.choose(1, Optional.empty());
        assertEquals(List.of("quarry", "gable"), model.chosenProperty().get());
        model.choose(0, Optional.of("hedge"));
        assertEquals(List.of("hedge", "gable"), model.chosenProperty().get());
        model.stop();
        assertNull(model.pageProperty().get());
    }

    @Test
    void whatIsAlikeAndWhatIsNotIsTold() {
        model.compare(List.of("quarry", "gable"));
        ComparePage page = model.pageProperty().get();
        assertTrue(row(page.told(), "ABV").differs());
        assertEquals(
                List.of("Stair cupboard", "Stair cupboard"),
                row(page.told(), "Place").values());
        assertEquals(
                List.of("18 bottles", "12 bottles"), row(page.today(), "Left").values());
    }

    @Test
    void countedFromCappingTheyBeginAtTheSameInstantByDateTheyDoNot() {
        model.compare(List.of("quarry", "gable"));
        PlotStack aligned = model.pageProperty().get().picture();
        assertTrue(aligned.days().isPresent());
        model.fromCappingProperty().set(false);
        PlotStack dated = model.pageProperty().get().picture();
        assertTrue(dated.days().isEmpty());
        assertEquals(OutlookSamples.NOW.getEpochSecond(), dated.now().orElseThrow());
    }
}
