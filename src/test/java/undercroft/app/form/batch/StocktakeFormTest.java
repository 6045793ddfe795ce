package undercroft.app.form.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import undercroft.app.form.NumberField;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Draw;
import undercroft.outlook.OutlookSamples;
import undercroft.wording.Messages;

class StocktakeFormTest {
    private final Cellar cellar = OutlookSamples.cellar();
    private final Batch heron = cellar.batch("heron");
    private final StocktakeForm form = new StocktakeForm(cellar, heron, OutlookSamples.NOW, Messages.english());

    private NumberField count(int index) {
        return (NumberField) form.fields().get(index);
    }

    @Test
    void countedAsKnownChangesNothing() {
        assertTrue(form.canSave());
        assertEquals(cellar, form.applyTo(cellar));
    }

    @Test
    void whatIsMissingLeavesItsLotOnly() {
        assertEquals("21", count(0).textProperty().get());
        count(0).textProperty().set("18");
        Batch counted = form.applyTo(cellar).batch("heron");
        assertEquals(18, counted.lot("lot-1").left());
        assertEquals(4, counted.lot("lot-2").left());
        Draw gone =
                counted.lot("lot-1").draws().get(counted.lot("lot-1").draws().size() - 1);
        assertEquals(3, gone.count());
        assertEquals(Draw.Fate.OPENED, gone.fate());
    }

    @Test
    void moreThanThereWereIsRefusedBesideItsField() {
        count(1).textProperty().set("5");
        form.showFaults();
        assertFalse(form.canSave());
        assertTrue(
                count(1).faultProperty().get().contains("only 4"),
                count(1).faultProperty().get());
    }
}
