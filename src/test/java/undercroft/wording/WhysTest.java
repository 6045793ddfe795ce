package undercroft.wording;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import undercroft.demo.DemoShelf;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.FigureKind;
import undercroft.outlook.lot.LotOutlook;

final class WhysTest {
    private final CellarOutlook outlook = DemoShelf.outlook();
    private final Whys whys = new Whys(ShelfWords.of(outlook, Messages.english()));

    @Test
    void everyFigureOfEveryLotHasGroundsOfThatVeryLot() {
        int lots = 0;
        for (BatchOutlook batch : outlook.batches()) {
            for (LotOutlook lot : batch.lots()) {
                for (FigureKind figure : FigureKind.values()) {
                    Why why = whys.of(batch, lot, figure);
                    assertEquals(figure, why.figure());
                    assertEquals(lot.id(), why.lotId());
                    assertFalse(why.inputs().isEmpty() || why.assumptions().isEmpty(), why.title());
                    assertFalse(why.source().isBlank() || why.how().isBlank(), why.title());
                }
                lots++;
            }
        }
        assertTrue(
                lots > outlook.batches().stream().filter(BatchOutlook::isCapped).count(),
                "some batch stands in two places");
    }
}
