package undercroft.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import undercroft.outlook.OutlookSamples;

class ShelfListsTest {
    private final ShelfLists lists = ShelfLists.of(OutlookSamples.outlook(OutlookSamples.cellar(), OutlookSamples.NOW));

    @Test
    void aPourSaysWhenItsBottlesGoIntoTheCold() {
        ShelfLists.Entry pour = lists.pours().get(0);
        assertEquals("6 bottles of Quarry Porter for Saturday 18:00", pour.what());
        assertEquals("into the cold Friday 18:00", pour.why());
    }
}
