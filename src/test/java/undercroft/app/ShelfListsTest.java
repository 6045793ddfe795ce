package undercroft.app;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import undercroft.outlook.OutlookSamples;

class ShelfListsTest {
    private final ShelfLists lists = ShelfLists.of(OutlookSamples.outlook(OutlookSamples.cellar(), OutlookSamples.NOW));

    @Test
    void aSpellSaysWhomItTouchedWhereAndWhen() {
        ShelfLists.Entry spell = lists.spells().get(0);
        assertEquals("Quarry Porter: warm in Stair cupboard, up to 23.4 °C", spell.what());
        assertEquals("20 September to 28 September · no harm done", spell.why());
        assertEquals("quarry", spell.batchId());
    }

    @Test
    void aPourSaysWhenItsBottlesGoIntoTheCold() {
        ShelfLists.Entry pour = lists.pours().get(0);
        assertEquals("6 bottles of Quarry Porter for Saturday 18:00", pour.what());
        assertEquals("into the cold Friday 18:00", pour.why());
    }
}
