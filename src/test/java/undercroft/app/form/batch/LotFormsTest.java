package undercroft.app.form.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import undercroft.app.form.FormSamples;
import undercroft.catalogue.BottleFeel;
import undercroft.catalogue.PerceivedCarbonation;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Draw;
import undercroft.cellar.Lot;
import undercroft.cellar.Place;
import undercroft.cellar.Reading;
import undercroft.cellar.Stay;
import undercroft.wording.Messages;

class LotFormsTest {
    private static final Cellar CELLAR = FormSamples.CELLAR;
    private static final Batch BATCH = FormSamples.batch();
    private static final Lot LOT = FormSamples.lot();

    private static MoveForm move() {
        return new MoveForm(
                Messages.english(),
                CELLAR,
                BATCH,
                LOT,
                FormSamples.NOW,
                Optional.empty(),
                false,
                place -> Optional.empty());
    }

    private static DrawForm draw() {
        return new DrawForm(Messages.english(), CELLAR, BATCH, LOT, FormSamples.NOW);
    }

    private static ReadingForm reading() {
        return new ReadingForm(Messages.english(), CELLAR, BATCH, LOT, FormSamples.NOW);
    }

    @Test
    void partOfALotMovesAndTheRestStays() {
        MoveForm form = move();
        FormSamples.type(form, "move-count", "2");
        FormSamples.choose(form, "move-place", CELLAR.place("fridge"));

        Batch changed = form.applyTo(CELLAR).batch(BATCH.id());

        assertEquals(BATCH.lots().size() + 1, changed.lots().size());
        assertEquals(BATCH.leftAt(FormSamples.NOW), changed.leftAt(FormSamples.NOW));
        Stay now = changed.lots().get(1).stayAt(FormSamples.NOW);
        assertEquals("fridge", now.placeId());
        assertEquals("Move 2 bottles of " + BATCH.name(), form.what());
    }

    @Test
    void aMoveToWhereTheBottlesStandIsRefused() {
        MoveForm form = move();
        Place here = CELLAR.place(LOT.stays().get(0).placeId());
        FormSamples.choose(form, "move-place", here);

        assertTrue(FormSamples.fault(form, "move-place").contains("already stand there"));
    }

    @Test
    void aMoveBeforeTheLastMoveIsRefused() {
        Cellar moved = CELLAR.withBatch(BATCH.withMove(
                LOT.id(),
                LOT.left(),
                "fridge",
                FormSamples.NOW.minusSeconds(600),
                LOT.stays().get(0).cover()));
        Batch batch = moved.batch(BATCH.id());
        MoveForm form = new MoveForm(
                Messages.english(),
                moved,
                batch,
                batch.lots().get(0),
                FormSamples.NOW,
                Optional.empty(),
                false,
                place -> Optional.empty());
        FormSamples.type(form, "move-at", "25 Nov 2026|17:00");

        assertTrue(FormSamples.fault(form, "move-at").contains("not after the last move"));
    }

    @Test
    void anOpenedBottleMayTellHowLivelyItWas() {
        DrawForm form = draw();
        FormSamples.choose(form, "draw-liveliness", Optional.of(PerceivedCarbonation.FULL));
        FormSamples.type(form, "draw-note", " with the neighbours ");

        Batch changed = form.applyTo(CELLAR).batch(BATCH.id());

        assertEquals(LOT.left() - 1, changed.lot(LOT.id()).left());
        Draw last = changed.lot(LOT.id()).draws().get(LOT.draws().size());
        assertEquals(new Draw(FormSamples.NOW, 1, Draw.Fate.OPENED, "with the neighbours"), last);
        assertEquals(
                new Reading.Opened(FormSamples.NOW, LOT.id(), PerceivedCarbonation.FULL),
                changed.readings().get(BATCH.readings().size()));
    }

    @Test
    void aBurstBottleTellsNothingOfItsPerceivedCarbonation() {
        DrawForm form = draw();
        FormSamples.choose(form, "draw-liveliness", Optional.of(PerceivedCarbonation.FULL));
        FormSamples.choose(form, "draw-fate", Draw.Fate.BURST);

        assertEquals(BATCH.readings(), form.applyTo(CELLAR).batch(BATCH.id()).readings());
    }

    @Test
    void bottlesTakenMeanwhileAreNotTakenTwice() {
        DrawForm form = draw();
        FormSamples.type(form, "draw-count", String.valueOf(LOT.left()));
        Cellar meanwhile =
                CELLAR.withBatch(BATCH.withLot(LOT.withDraw(new Draw(FormSamples.NOW, 1, Draw.Fate.BROKEN, ""))));

        try {
            form.applyTo(meanwhile);
            throw new AssertionError("taken twice");
        } catch (undercroft.quantity.InvalidInput fault) {
            form.showFault(fault);
        }

        assertTrue(FormSamples.field(form, "draw-count").faultProperty().get().contains("that are left"));
    }

    @Test
    void aGaugeIsReadInTheUnitTyped() {
        ReadingForm form = reading();
        FormSamples.type(form, "reading-pressure", "29 psi");

        Reading.Gauge made = (Reading.Gauge) last(form);

        // NIST SP 811 (2008), appendix B.8: 1 psi = 6.894 757 kPa.
        assertEquals(1.99948, made.gaugeBar(), 1e-5);
    }

    @Test
    void eachKindAsksOnlyForItsOwn() {
        ReadingForm form = reading();
        FormSamples.choose(form, "reading-kind", ReadingForm.Kind.SQUEEZE);
        FormSamples.choose(form, "reading-feel", BottleFeel.HARD);
        assertEquals(new Reading.Squeeze(FormSamples.NOW, LOT.id(), BottleFeel.HARD), last(form));

        FormSamples.choose(form, "reading-kind", ReadingForm.Kind.GRAVITY);
        FormSamples.type(form, "reading-gravity", "1,0105");
        assertEquals(new Reading.Density(FormSamples.NOW, 1.0105), last(form));

        FormSamples.choose(form, "reading-kind", ReadingForm.Kind.OPENED);
        FormSamples.choose(form, "reading-liveliness", PerceivedCarbonation.FLAT);
        assertEquals(new Reading.Opened(FormSamples.NOW, LOT.id(), PerceivedCarbonation.FLAT), last(form));
    }

    private static Reading last(ReadingForm form) {
        assertTrue(form.canSave());
        var readings = form.applyTo(CELLAR).batch(BATCH.id()).readings();
        return readings.get(readings.size() - 1);
    }

    @Test
    void notesKeepTheirLines() {
        NotesForm form = new NotesForm(Messages.english(), CELLAR, BATCH);
        FormSamples.type(form, "batch-notes", "One.\nTwo.\n");

        assertEquals("One.\nTwo.", form.applyTo(CELLAR).batch(BATCH.id()).notes());
    }
}
