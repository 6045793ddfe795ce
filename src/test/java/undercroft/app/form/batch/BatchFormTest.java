package undercroft.app.form.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import undercroft.app.form.FormSamples;
import undercroft.app.form.NumberField;
import undercroft.catalogue.BottleType;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Draw;
import undercroft.cellar.Lot;
import undercroft.wording.Messages;

class BatchFormTest {
    private static final Cellar CELLAR = FormSamples.CELLAR;

    private static BatchForm edit(Cellar cellar, Batch batch) {
        return new BatchForm(Messages.english(), cellar, Optional.of(batch), FormSamples.NOW);
    }

    private static BatchForm filled() {
        BatchForm form = FormSamples.newBatch(CELLAR);
        FormSamples.type(form, "batch-name", "Märzen");
        FormSamples.type(form, "batch-abv", "5,6");
        FormSamples.type(form, "batch-litres", "20");
        form.sugars().list().get(0).weight().textProperty().set("120");
        form.lots().list().get(0).count().textProperty().set("40");
        return form;
    }

    @Test
    void everyBatchComesBackAsItWas() {
        for (Batch batch : CELLAR.batches()) {
            BatchForm form = edit(CELLAR, batch);

            assertTrue(form.canSave(), batch.name());
            assertEquals(CELLAR, form.applyTo(CELLAR));
        }
    }

    @Test
    void everyBatchComesBackAsItWasInUsUnits() {
        for (Batch batch : FormSamples.US_CELLAR.batches()) {
            assertEquals(
                    FormSamples.US_CELLAR, edit(FormSamples.US_CELLAR, batch).applyTo(FormSamples.US_CELLAR));
        }
    }

    @Test
    void aNewBatchIsCappedNowInTheBottlesTold() {
        Batch made = filled().applyTo(CELLAR).batch("marzen");

        assertEquals(FormSamples.NOW, made.cappedAt().orElseThrow());
        assertEquals(5.6, made.beer().abvPercent());
        assertEquals(40, made.leftAt(FormSamples.NOW));
        assertEquals(120, made.priming().doses().get(0).grams());
        assertEquals(OptionalDouble.empty(), made.priming().targetVolumes());
        assertEquals(FormSamples.NOW, made.lots().get(0).stays().get(0).from());
    }

    @Test
    void bottlingMayStillBePlanned() {
        BatchForm form = filled();
        FormSamples.tick(form, "batch-capped", false);

        assertTrue(form.canSave());
        Cellar planned = form.applyTo(CELLAR);
        assertEquals(Optional.empty(), planned.batch("marzen").cappedAt());

        Instant later = FormSamples.NOW.plusSeconds(7 * 86_400);
        BatchForm again = new BatchForm(Messages.english(), planned, Optional.of(planned.batch("marzen")), later);
        assertEquals(planned, again.applyTo(planned));
        FormSamples.tick(again, "batch-capped", true);
        assertEquals(
                later,
                again.applyTo(planned)
                        .batch("marzen")
                        .lots()
                        .get(0)
                        .stays()
                        .get(0)
                        .from());
    }

    @Test
    void aCappedBatchHasBottles() {
        BatchForm form = filled();
        form.lots().remove(form.lots().list().get(0));
        form.showFaults();

        assertFalse(form.canSave());
        assertEquals(
                "A capped batch has bottles; add some.", form.faultProperty().get());
    }

    @Test
    void twoLotsOfOneMakeAreToldApart() {
        BatchForm form = filled();
        form.addLot().count().textProperty().set("6");

        Batch made = form.applyTo(CELLAR).batch("marzen");

        assertEquals(2, made.lots().stream().map(Lot::id).distinct().count());
    }

    @Test
    void aMakeBringsItsGlassAndFilling() {
        BatchForm form = filled();
        LotForm row = form.lots().list().get(0);
        BottleType sparkling = CELLAR.bottleType("sparkling-750");

        row.bottle().chosenProperty().set(sparkling);

        assertEquals(sparkling.colour(), row.colour().value());
        assertEquals(750, row.fill().figure());
    }

    @Test
    void aBottleFilledToTheBrimIsRefusedUnderItsFilling() {
        BatchForm form = filled();
        LotForm row = form.lots().list().get(0);
        row.fill().textProperty().set("400");
        form.showFaults();

        assertTrue(
                row.fill().faultProperty().get().contains("leave headspace"),
                row.fill().faultProperty()::get);
    }

    @Test
    void fewerBottlesThanWereTakenAreRefused() {
        Batch batch = FormSamples.batch();
        Lot lot = batch.lots().get(0).withDraws(List.of(new Draw(FormSamples.NOW, 3, Draw.Fate.OPENED, "")));
        Cellar cellar = CELLAR.withBatch(batch.withLot(lot));
        BatchForm form = edit(cellar, cellar.batch(batch.id()));
        NumberField count = form.lots().list().get(0).count();
        count.textProperty().set("2");
        form.showFaults();

        assertEquals(
                "2 are given, but 3 of them are already taken; raise it.",
                count.faultProperty().get());
    }

    @Test
    void bottlesCannotBeCappedAfterTheyWereTaken() {
        Batch batch = FormSamples.batch();
        Draw draw = new Draw(FormSamples.NOW.minusSeconds(86_400), 1, Draw.Fate.OPENED, "");
        Cellar cellar = CELLAR.withBatch(
                batch.withLot(batch.lots().get(0).withDraws(List.of(draw))).withReadings(List.of()));
        BatchForm form = edit(cellar, cellar.batch(batch.id()));
        FormSamples.type(form, "batch-capped-at", "25 Nov 2026|17:00");

        assertTrue(FormSamples.fault(form, "batch-capped-at").contains("already told of these bottles"));

        FormSamples.tick(form, "batch-capped", false);
        assertTrue(FormSamples.fault(form, "batch-capped").contains("so they are capped"));
    }

    @Test
    void anEarlierCappingMovesTheFirstStayWithIt() {
        Batch batch = FormSamples.batch();
        BatchForm form = edit(CELLAR, batch);
        FormSamples.type(form, "batch-capped-at", "1 Sep 2026|10:00");

        Batch changed = form.applyTo(CELLAR).batch(batch.id());

        assertEquals(
                changed.cappedAt().orElseThrow(),
                changed.lots().get(0).stays().get(0).from());
    }

    @Test
    void aDeletedBatchLeavesNoServingBehind() {
        Cellar left = BatchForm.without(CELLAR, FormSamples.batch().id());

        assertEquals(CELLAR.batches().size() - 1, left.batches().size());
        assertTrue(left.servings().stream()
                .noneMatch(
                        serving -> serving.batchId().equals(FormSamples.batch().id())));
    }
}
