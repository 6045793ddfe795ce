package undercroft.app.bottling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.FillingPlan;
import undercroft.outlook.OutlookSamples;
import undercroft.quantity.UnitSystem;
import undercroft.wording.English;

class BrewAgainTest {
    private final Cellar cellar = OutlookSamples.cellar();
    private final Batch planned =
            new BrewAgain(cellar, cellar.batch("quarry"), English.in(UnitSystem.METRIC)).planned();

    @Test
    void thePlanTakesBeerBottlesAndTargetFromTheBatchBefore() {
        Batch before = cellar.batch("quarry");
        FillingPlan plan = planned.plan().orElseThrow();
        assertEquals(before.beer(), planned.beer());
        assertEquals(before.yeast(), planned.yeast());
        assertEquals(44, plan.bottles().get(0).available());
        assertTrue(planned.cappedAt().isEmpty());
        assertEquals(
                cellar.batches().size() + 1, cellar.withBatch(planned).batches().size(), "it is another batch");
    }

    @Test
    void howItTastedStandsBesideWhatItAimedAt() {
        assertTrue(planned.notes().contains("Quarry Porter"), planned.notes());
        assertTrue(planned.notes().contains("Opened, it was"), planned.notes());
    }
}
