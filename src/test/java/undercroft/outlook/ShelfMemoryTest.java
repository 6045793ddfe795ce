package undercroft.outlook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import undercroft.catalogue.BottleFeel;
import undercroft.catalogue.Cover;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Draw;
import undercroft.cellar.Lot;
import undercroft.cellar.Place;
import undercroft.cellar.Reading;
import undercroft.demo.LongCellar;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.series.TimeSeries;

/** Only what changed is worked out anew, and what is remembered equals what would be worked out. */
final class ShelfMemoryTest {
    private static final LongCellar LONG = new LongCellar(10, 3, 1.2, true);
    private static final Instant NOW = LongCellar.NOW;

    private final ShelfMemory memory = new ShelfMemory();
    private Cellar cellar = LONG.cellar();
    private Map<String, TimeSeries> logs = LONG.temperatures();

    private CellarOutlook outlook(Instant at) {
        return Outlooks.of(cellar, logs, at, List.of(), memory);
    }

    /** The ids of the batches that were worked out anew from one outlook to the next. */
    private static Set<String> madeAnew(CellarOutlook before, CellarOutlook after) {
        Set<BatchOutlook> known = Collections.newSetFromMap(new IdentityHashMap<>());
        known.addAll(before.batches());
        return after.batches().stream()
                .filter(batch -> !known.contains(batch))
                .map(BatchOutlook::id)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private Set<String> withBottles(Instant at) {
        return cellar.batches().stream()
                .filter(batch ->
                        batch.leftAt(at) > 0 && !batch.cappedAt().orElseThrow().isAfter(at))
                .map(Batch::id)
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private Set<String> livingIn(String placeId, Instant at) {
        return withBottles(at).stream()
                .filter(id -> cellar.batch(id).lots().stream()
                        .anyMatch(lot -> lot.stays().stream()
                                .anyMatch(stay -> stay.placeId().equals(placeId))))
                .collect(Collectors.toCollection(TreeSet::new));
    }

    private static Batch drawn(Batch batch, Instant at) {
        Lot lot = batch.lots().get(0);
        return batch.withLot(lot.withDraws(
                Stream.concat(lot.draws().stream(), Stream.of(new Draw(at, 1, Draw.Fate.OPENED, "")))
                        .toList()));
    }

    @Test
    void anEditOfOneBatchWorksOutThatBatchAlone() {
        CellarOutlook before = outlook(NOW);
        assertTrue(withBottles(NOW).size() < cellar.batches().size(), "some are gone");
        Batch edited = cellar.batch("batch-8");
        cellar = cellar.withBatch(drawn(edited, NOW.plusSeconds(100)));
        CellarOutlook after = outlook(NOW.plusSeconds(101));
        assertEquals(Set.of("batch-8"), madeAnew(before, after));
        assertEquals(
                before.batch("batch-8").bottlesLeft() - 1,
                after.batch("batch-8").bottlesLeft());
    }

    @Test
    void aSecondLaterNothingIsWorkedOutAndLaterOnlyWhatHasBottles() {
        CellarOutlook before = outlook(NOW);
        assertEquals(Set.of(), madeAnew(before, outlook(NOW.plusSeconds(599))));
        assertEquals(withBottles(NOW), madeAnew(before, outlook(NOW.plusSeconds(600))));
        assertEquals(withBottles(NOW), madeAnew(before, outlook(NOW.plus(Duration.ofDays(3)))));
    }

    @Test
    void aGrowingLogTouchesOnlyTheBatchesOfItsPlace() {
        CellarOutlook before = outlook(NOW);
        TimeSeries log = logs.get("place-1");
        Map<String, TimeSeries> grown = new HashMap<>(logs);
        grown.put("place-1", log.mergedWith(TimeSeries.of(new long[] {log.lastTime() + 300}, new double[] {
            log.lastValue() + 0.5
        })));
        logs = grown;
        // In the same ten minutes it is not looked at yet.
        assertEquals(Set.of(), madeAnew(before, outlook(NOW.plusSeconds(400))));
        before = outlook(NOW.plusSeconds(600));
        grown = new HashMap<>(logs);
        grown.put("place-1", log.mergedWith(TimeSeries.of(new long[] {log.lastTime() + 300}, new double[] {
            log.lastValue() + 4.5
        })));
        logs = grown;
        assertEquals(livingIn("place-1", NOW), madeAnew(before, outlook(NOW.plusSeconds(600))));
    }

    @Test
    void aMoveOfTheDayLookedAtLeavesWhatWasGoneByThen() {
        CellarOutlook before = outlook(NOW);
        Instant then = NOW.minus(Duration.ofDays(40));
        CellarOutlook past = outlook(then);
        Set<String> goneThen = cellar.batches().stream()
                .filter(batch -> batch.leftAt(then) == 0)
                .map(Batch::id)
                .collect(Collectors.toSet());
        assertTrue(
                !goneThen.isEmpty() && goneThen.size() < 10 - withBottles(NOW).size());
        for (String id : goneThen) {
            assertSame(before.batch(id), past.batch(id), id);
        }
        // And back: those that were drunk up since are still known.
        assertEquals(withBottles(NOW), madeAnew(before, outlook(NOW)));
    }

    @Test
    void whatIsSupposedLeavesNoTrace() {
        CellarOutlook before = outlook(NOW);
        CellarOutlook warm =
                Outlooks.of(cellar, logs, NOW, List.of(new Supposition.Warmer("place-2", 6, NOW, 5)), memory);
        assertEquals(livingIn("place-2", NOW), madeAnew(before, warm));
        assertEquals(Set.of(), madeAnew(before, outlook(NOW)));
    }

    /** Random edits, moves of the slider and readings of loggers: each outlook equals one from nothing. */
    @Test
    void whatIsRememberedEqualsWhatWouldBeWorkedOut() {
        Random random = new Random(20_261_121);
        Instant at = NOW;
        for (int step = 0; step < 18; step++) {
            at = step % 5 == 4
                    ? NOW.minus(Duration.ofHours(random.nextInt(24 * 300)))
                    : at.plusSeconds(random.nextInt(3) == 0 ? random.nextInt(90_000) : random.nextInt(400));
            String done = change(random, at);
            SameValues.assertSame("step " + step + ": " + done, Outlooks.of(cellar, logs, at), outlook(at));
        }
    }

    private String change(Random random, Instant at) {
        Batch batch = cellar.batches().get(random.nextInt(cellar.batches().size()));
        Lot lot = batch.lots().get(0);
        Instant lately = at.minusSeconds(random.nextInt(20_000));
        Place place = cellar.places().get(random.nextInt(cellar.places().size()));
        boolean wasThere =
                lately.isAfter(lot.stays().get(lot.stays().size() - 1).from());
        switch (random.nextInt(7)) {
            case 0 -> {
                if (lot.left() > 0 && wasThere) {
                    cellar = cellar.withBatch(drawn(batch, lately));
                }
            }
            case 1 -> {
                if (wasThere) {
                    cellar = cellar.withBatch(batch.withLot(lot.movedTo(place.id(), lately, Cover.NONE)));
                }
            }
            case 2 -> {
                if (wasThere) {
                    List<Reading> readings = new ArrayList<>(batch.readings());
                    readings.add(new Reading.Squeeze(lately, lot.id(), BottleFeel.FIRM));
                    cellar = cellar.withBatch(batch.withReadings(readings));
                }
            }
            case 3 ->
                cellar = cellar.withPlace(
                        new Place(place.id(), place.name(), place.temperature(), 2 + random.nextInt(6), place.light()));
            case 4 -> {
                TimeSeries log = logs.get(place.id());
                TimeSeries.Builder more = new TimeSeries.Builder();
                long from = Math.max(log.lastTime(), at.getEpochSecond() - 30_000);
                for (long time = from + 600; time <= at.getEpochSecond(); time += 600) {
                    more.add(time, log.lastValue() + random.nextInt(20) / 10.0);
                }
                Map<String, TimeSeries> grown = new HashMap<>(logs);
                grown.put(place.id(), log.mergedWith(more.build()));
                logs = grown;
            }
            case 5 ->
                cellar = cellar.withBatches(cellar.batches().stream()
                        .filter(each -> !each.id().equals(batch.id())
                                || cellar.batches().size() < 9)
                        .toList());
            default -> {
                return "nothing but time, at " + at;
            }
        }
        return "change at " + at;
    }
}
