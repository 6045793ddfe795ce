package undercroft.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import javafx.beans.property.SimpleObjectProperty;
import org.junit.jupiter.api.Test;
import undercroft.outlook.Alert;
import undercroft.outlook.OutlookSamples;

class TonightViewModelTest {
    private final List<TonightViewModel.Line> lines = new TonightViewModel(
                    new SimpleObjectProperty<>(OutlookSamples.outlook(OutlookSamples.cellar(), OutlookSamples.NOW)))
            .linesProperty()
            .get();

    @Test
    void theMostUrgentComesFirst() {
        assertEquals(
                List.of(Alert.ACT, Alert.ACT, Alert.WATCH, Alert.WATCH, Alert.CLEAR),
                lines.stream().map(TonightViewModel.Line::alert).toList());
        assertEquals("beacon", lines.get(0).batchId());
    }

    @Test
    void onlyWhatIsForLaterSaysWhen() {
        assertEquals("", lines.get(0).when());
        assertEquals("today 19:00", lines.get(3).when());
    }
}
