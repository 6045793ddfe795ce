package undercroft.app.shelf;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import undercroft.demo.DemoShelf;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.LotOutlook;
import undercroft.wording.Messages;

final class BatchFiguresTest {
    @Test
    void aFigureEqualsItsWhyForEveryLotOfTheDemo() {
        CellarOutlook outlook = DemoShelf.outlook();
        for (BatchOutlook batch : outlook.batches()) {
            for (LotOutlook lot : batch.lots()) {
                for (BatchPage.Figure figure : BatchPageWriter.page(outlook, batch, lot.id(), Messages.english())
                        .figures()) {
                    assertEquals(lot.id(), figure.why().lotId(), batch.id() + " " + figure.id());
                    assertEquals(figure.value(), figure.why().value(), batch.id() + " " + figure.id());
                    assertTrue(
                            figure.why().title().contains(figure.value()),
                            figure.why().title());
                }
            }
        }
    }
}
