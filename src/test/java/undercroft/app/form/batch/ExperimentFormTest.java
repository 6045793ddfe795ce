package undercroft.app.form.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Optional;
import org.junit.jupiter.api.Test;
import undercroft.app.form.FormSamples;
import undercroft.catalogue.PerceivedCarbonation;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Draw;
import undercroft.cellar.FittedGauge;
import undercroft.cellar.Lot;
import undercroft.cellar.Origin;
import undercroft.cellar.PressureTopic;
import undercroft.cellar.PressureUnit;
import undercroft.cellar.Reading;
import undercroft.wording.Messages;

class ExperimentFormTest {
    private static ExperimentForm form(Cellar cellar) {
        Batch batch = cellar.batch(FormSamples.batch().id());
        return new ExperimentForm(
                Messages.english(), cellar, batch, batch.lot(FormSamples.lot().id()), FormSamples.NOW);
    }

    @Test
    void aGaugeIsFittedAtCappingAndItsBottleOpenedAndTastedInTheEnd() {
        ExperimentForm begin = form(FormSamples.CELLAR);
        assertFalse(begin.ends());
        FormSamples.type(begin, "experiment-gauge", "");
        assertFalse(begin.canSave());
        FormSamples.type(begin, "experiment-gauge", "dial");
        FormSamples.type(begin, "experiment-topic", "home/#");
        assertFalse(begin.canSave(), "a pattern is no topic");
        FormSamples.type(begin, "experiment-topic", "home/gauge");
        FormSamples.choose(begin, "experiment-unit", PressureUnit.PSI);
        Cellar begun = begin.applyTo(FormSamples.CELLAR);
        Lot lot = begun.batch(FormSamples.batch().id()).lot(FormSamples.lot().id());
        assertEquals(
                Optional.of(new FittedGauge("dial", lot.stays().get(0).from())
                        .hearing(Optional.of(new PressureTopic("home/gauge", "", PressureUnit.PSI)))),
                lot.gauge());

        ExperimentForm end = form(begun);
        assertTrue(end.ends());
        FormSamples.choose(end, "experiment-taste", PerceivedCarbonation.FULL);
        Batch ended = end.applyTo(begun).batch(FormSamples.batch().id());
        Lot after = ended.lot(lot.id());
        assertTrue(after.gauge().orElseThrow().opened().isPresent());
        assertEquals(lot.left() - 1, after.left());
        assertEquals(
                Draw.Fate.OPENED, after.draws().get(after.draws().size() - 1).fate());
        Reading.Opened taste =
                (Reading.Opened) ended.readings().get(ended.readings().size() - 1);
        assertEquals(PerceivedCarbonation.FULL, taste.perceivedCarbonation());
        assertEquals(new Origin("dial", "", ""), taste.origin());
        assertEquals("dial", after.gauge().orElseThrow().instrument());
        assertFalse(form(end.applyTo(begun)).ends(), "the next one may begin");
    }
}
