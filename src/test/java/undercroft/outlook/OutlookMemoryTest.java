package undercroft.outlook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Predicate;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Draw;
import undercroft.cellar.Lot;
import undercroft.cellar.Settings;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.LotOutlook;
import undercroft.quantity.UnitSystem;
import undercroft.series.TimeSeries;

/** Counts what is worked out again; what is remembered must be what would be worked out. */
class OutlookMemoryTest {
    private static final Instant NOW = OutlookSamples.NOW;

    private final Cellar cellar = OutlookSamples.cellar();
    private final OutlookMemory memory = new OutlookMemory();
    private long before;

    @BeforeEach
    void workOutAll() {
        of(cellar, OutlookSamples.AIR, NOW);
        assertEquals(cellar.batches().size(), memory.calculated());
        before = memory.calculated();
    }

    private CellarOutlook of(Cellar shown, Map<String, TimeSeries> air, Instant at) {
        return Outlooks.of(shown, air, at, List.of(), memory, batch -> {});
    }

    private long workedOut() {
        long now = memory.calculated();
        long since = now - before;
        before = now;
        return since;
    }

    private long count(Predicate<Batch> which) {
        return cellar.batches().stream().filter(which).count();
    }

    private static boolean isFinished(Batch batch) {
        return batch.cappedAt().isPresent() && batch.leftAt(NOW) == 0;
    }

    private static boolean stoodIn(Batch batch, String placeId) {
        return batch.lots().stream()
                .flatMap(lot -> lot.stays().stream())
                .anyMatch(stay -> stay.placeId().equals(placeId));
    }

    private static void assertSame(CellarOutlook fresh, CellarOutlook remembered) {
        assertEquals(ids(fresh), ids(remembered));
        for (BatchOutlook batch : fresh.batches()) {
            assertEquals(figures(batch), figures(remembered.batch(batch.id())));
        }
        assertEquals(fresh.tasks(), remembered.tasks());
    }

    private static List<String> ids(CellarOutlook outlook) {
        return outlook.batches().stream().map(BatchOutlook::id).toList();
    }

    private static String figures(BatchOutlook batch) {
        StringBuilder all = new StringBuilder(batch.id());
        for (LotOutlook lot : batch.lots()) {
            all.append(lot.left());
            if (lot.left() == 0) {
                // What would become of bottles that are gone is followed no further.
                continue;
            }
            all.append(lot.pressure().atPresent())
                    .append(lot.pressure().heatLimitCelsius())
                    .append(lot.ready())
                    .append(lot.light().dose())
                    .append(lot.exposures());
        }
        return all.toString();
    }

    @Test
    void anEditToABatchWorksOutThatBatchOnly() {
        Batch larch = cellar.batch("larch");
        Lot lot = larch.lots().get(0);
        Cellar edited = cellar.withBatch(
                larch.withLot(lot.withDraw(new Draw(NOW.minusSeconds(60), 2, Draw.Fate.OPENED, ""))));
        CellarOutlook remembered = of(edited, OutlookSamples.AIR, NOW);
        assertEquals(1, workedOut());
        assertSame(Outlooks.of(edited, OutlookSamples.AIR, NOW), remembered);
        of(cellar, OutlookSamples.AIR, NOW);
        assertEquals(0, workedOut(), "undo comes back to what was known");
    }

    @Test
    void anEditALittleLaterWorksOutThatBatchOnlyAndSeesWhatHappenedInBetween() {
        Instant later = NOW.plus(Duration.ofMinutes(12));
        Batch larch = cellar.batch("larch");
        Lot lot = larch.lots().get(0);
        Cellar edited = cellar.withBatch(
                larch.withLot(lot.withDraw(new Draw(later.minusSeconds(60), 2, Draw.Fate.OPENED, ""))));
        CellarOutlook remembered = of(edited, OutlookSamples.AIR, later);
        assertEquals(1, workedOut());
        assertEquals(lot.left() - 2, remembered.batch("larch").bottlesLeft());
    }

    @Test
    void aBottleTakenAtATimeToComeIsTakenWhenThatComes() {
        Batch larch = cellar.batch("larch");
        Lot lot = larch.lots().get(0);
        Instant soon = NOW.plus(Duration.ofMinutes(10));
        Cellar planned = cellar.withBatch(larch.withLot(lot.withDraw(new Draw(soon, 1, Draw.Fate.OPENED, ""))));
        assertEquals(lot.left(), of(planned, OutlookSamples.AIR, NOW).batch("larch").bottlesLeft());
        assertEquals(
                lot.left() - 1,
                of(planned, OutlookSamples.AIR, soon.plusSeconds(1)).batch("larch").bottlesLeft());
    }

    @Test
    void aMinuteThatPassesTouchesNothingAndAnHourNothingThatIsFinished() {
        of(cellar, OutlookSamples.AIR, NOW.plus(Duration.ofMinutes(1)));
        assertEquals(0, workedOut());
        of(cellar, OutlookSamples.AIR, NOW.plus(Duration.ofHours(1)));
        assertTrue(count(OutlookMemoryTest::isFinished) > 0);
        assertEquals(count(batch -> !isFinished(batch)), workedOut());
    }

    @Test
    void aLogThatGrowsTouchesOnlyWhatStoodThere() {
        Map<String, TimeSeries> grown = new HashMap<>(OutlookSamples.AIR);
        Instant at = NOW.plus(Duration.ofMinutes(20));
        grown.put(
                "sill",
                grown.get("sill")
                        .mergedWith(
                                TimeSeries.of(new long[] {NOW.getEpochSecond() + 600}, new double[] {22})));
        of(cellar, grown, at);
        assertEquals(count(batch -> stoodIn(batch, "sill") && !isFinished(batch)), workedOut());
    }

    @Test
    void theDayLookedAtAndBackAgainIsKnown() {
        Instant other = NOW.minus(Duration.ofDays(8));
        CellarOutlook past = of(cellar, OutlookSamples.AIR, other);
        assertSame(Outlooks.of(cellar, OutlookSamples.AIR, other), past);
        workedOut();
        CellarOutlook today = of(cellar, OutlookSamples.AIR, NOW);
        assertEquals(0, workedOut());
        assertSame(Outlooks.of(cellar, OutlookSamples.AIR, NOW), today);
    }

    @Test
    void aSuppositionTouchesOnlyItsPlace() {
        List<Supposition> warmer = List.of(new Supposition.Warmer("sill", 5, NOW, 3));
        CellarOutlook supposed = Outlooks.of(cellar, OutlookSamples.AIR, NOW, warmer, memory, batch -> {});
        assertEquals(count(batch -> stoodIn(batch, "sill") && !isFinished(batch)), workedOut());
        assertSame(Outlooks.of(cellar, OutlookSamples.AIR, NOW, warmer), supposed);
    }

    @Test
    void whatHoldsForAllBatchesTouchesAll() {
        of(cellar.withSettings(new Settings(UnitSystem.METRIC, 1500)), OutlookSamples.AIR, NOW);
        assertEquals(cellar.batches().size(), workedOut());
    }

    @Test
    void batchesWithBottlesComeFirst() {
        List<Boolean> finished = Collections.synchronizedList(new ArrayList<>());
        Outlooks.of(
                cellar,
                OutlookSamples.AIR,
                NOW,
                List.of(),
                new OutlookMemory(),
                batch -> finished.add(batch.batch().leftAt(NOW) == 0));
        assertEquals(cellar.batches().size(), finished.size());
        assertEquals(finished.stream().sorted().toList(), finished);
    }
}
