package undercroft.outlook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import undercroft.outlook.lot.Cause;
import undercroft.outlook.lot.LotOutlook;

/** Where bottles are offered to go; the expectations are the project's own. */
class DestinationTest {
    private static final CellarOutlook OUTLOOK = OutlookSamples.outlook(OutlookSamples.cellar(), OutlookSamples.NOW);

    private static List<LotOutlook> lots() {
        return OUTLOOK.batches().stream()
                .flatMap(batch -> batch.lots().stream())
                .filter(lot -> lot.left() > 0)
                .toList();
    }

    @Test
    void noPlaceIsOfferedThatIsTooWarmWhileAnotherIsNot() {
        assertTrue(lots().stream().anyMatch(Destination::wantsCover), "one lot stands in the light");
        for (LotOutlook lot : lots()) {
            boolean anyFits = OUTLOOK.coolestFor(lot).orElseThrow().withinLimit();
            Destination offered = OUTLOOK.offeredFor(lot).orElseThrow();
            assertEquals(
                    anyFits,
                    offered.withinLimit(),
                    lot.id() + " in " + lot.place().name());
            assertEquals(
                    Destination.wantsCover(lot),
                    offered.placeId().equals(lot.place().id()));
        }
    }

    @Test
    void yeastThatSleepsInTheColdIsOfferedAWarmerPlace() {
        LotOutlook cold = OUTLOOK.batch("winter").mainLot();
        assertTrue(
                cold.verdict().has(Cause.Kind.STALLED) || cold.verdict().has(Cause.Kind.SLOW),
                cold.verdict().toString());
        Destination offered = OUTLOOK.offeredFor(cold).orElseThrow();
        assertTrue(offered.warmestCelsius() > 15, offered.toString());
    }
}
