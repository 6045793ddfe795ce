package undercroft.outlook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Draw;
import undercroft.cellar.Reading;
import undercroft.outlook.lot.EvidenceCourse;
import undercroft.outlook.lot.LotOutlook;
import undercroft.series.TimeSeries;
import undercroft.store.CellarStore;
import undercroft.wording.EvidenceWords;
import undercroft.wording.Messages;
import undercroft.wording.ShelfWords;

/** The evidence step by step, against the shelf as it would be told with those readings alone. */
class EvidenceCourseTest {
    private static final Path DEMO = Path.of("demo-data/weir-house");
    private static final Instant AT = Instant.parse("2026-11-21T17:00:00Z");

    private final Cellar cellar = CellarStore.read(DEMO);
    private final Map<String, TimeSeries> logs =
            CellarStore.temperatures(DEMO, cellar).celsius();

    private EvidenceCourse course(Cellar of, String batchId) {
        return Outlooks.evidence(of, logs, AT, batchId, new ShelfMemory());
    }

    private LotOutlook told(Cellar of, String batchId) {
        return Outlooks.of(of, logs, AT).batch(batchId).limitingLot();
    }

    private Cellar withReadings(String batchId, List<Reading> readings) {
        return cellar.withBatch(cellar.batch(batchId).withReadings(readings));
    }

    @Test
    void itBeginsWithNothingReadAndEndsWithWhatTheShelfTells() {
        EvidenceCourse course = course(cellar, "quarry-porter");
        assertEquals(4, course.steps().size());
        assertEquals(
                told(withReadings("quarry-porter", List.of()), "quarry-porter")
                        .pressure()
                        .heatLimitCelsius(),
                course.before().pressure().heatLimitCelsius());
        double now = told(cellar, "quarry-porter").pressure().heatLimitCelsius();
        assertEquals(now, course.now().pressure().heatLimitCelsius());
        assertEquals(now, course.steps().get(3).heatLimitCelsius());
    }

    @Test
    void aStepKnowsWhatWasSeenUntilThen() {
        List<Reading> readings = cellar.batch("quarry-porter").readings();
        Cellar two = withReadings("quarry-porter", readings.subList(0, 2));
        assertEquals(
                told(two, "quarry-porter").pressure().heatLimitCelsius(),
                course(cellar, "quarry-porter").steps().get(1).heatLimitCelsius());
    }

    /** A reading far over what was foretold is called that, and lowers the limit. */
    @Test
    void aSurpriseIsToldAndLowersTheLimit() {
        Batch batch = cellar.batch("bramble-wheat");
        Instant capped = batch.cappedAt().orElseThrow();
        Cellar surprised = withReadings(
                "bramble-wheat",
                List.of(new Reading.Gauge(
                        capped.plusSeconds(20 * 86_400), batch.lots().get(0).id(), "gauge", 5.2)));
        EvidenceCourse course = course(surprised, "bramble-wheat");
        EvidenceWords words = new EvidenceWords(ShelfWords.of(Outlooks.of(surprised, logs, AT), Messages.english()));
        assertTrue(words.seen(course).get(0).foretold().startsWith("above the foretold"));
        assertTrue(course.steps().get(0).heatLimitCelsius()
                < course.before().pressure().heatLimitCelsius() - 2);
    }

    @Test
    void aBurstIsAStepAndIsNotKnownBeforeIt() {
        Batch batch = cellar.batch("millrace-saison");
        EvidenceCourse course = course(cellar, "millrace-saison");
        assertEquals(1, course.steps().size());
        assertEquals(1, course.steps().get(0).burst());
        List<Draw> bursts = new ArrayList<>(batch.lots().get(0).draws());
        bursts.removeIf(draw -> draw.fate() != Draw.Fate.BURST);
        assertEquals(bursts.get(0).at(), course.steps().get(0).at());
        assertTrue(course.before().pressure().heatLimitCelsius()
                >= course.now().pressure().heatLimitCelsius());
    }

    @Test
    void withoutAReadingItSaysWhatOneWouldTeach() {
        EvidenceCourse course = course(cellar, "larch-honey-ale");
        assertTrue(course.steps().isEmpty());
        EvidenceCourse.Sharpening best = course.next().get(0);
        assertTrue(best.isWorthIt(), best.toString());
        assertTrue(course.next().stream().allMatch(each -> each.volumesWideNow() == best.volumesWideNow()));
    }
}
