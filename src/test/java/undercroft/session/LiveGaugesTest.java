package undercroft.session;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import undercroft.app.form.FormSamples;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.FittedGauge;
import undercroft.cellar.PressureTopic;
import undercroft.cellar.PressureUnit;
import undercroft.cellar.Reading;
import undercroft.listen.GaugeBottle;
import undercroft.series.TimeSeries;
import undercroft.store.CellarStore;
import undercroft.store.Incoming;

/** What a gauge sends minute by minute becomes the few readings that tell something. */
class LiveGaugesTest {
    private static final GaugeBottle BOTTLE =
            new GaugeBottle(FormSamples.batch().id(), FormSamples.lot().id());

    @TempDir
    Path scratch;

    private final LiveGauges gauges = new LiveGauges();
    private final HandClock clock = new HandClock(FormSamples.NOW);
    private Path folder;
    private Instant capped;
    private Cellar fitted;
    private int before;

    @BeforeEach
    void aGaugeThatSends() {
        folder = scratch.resolve("cellar");
        Batch batch = FormSamples.batch();
        capped = batch.cappedAt().orElseThrow();
        before = batch.readings().size();
        FittedGauge gauge = new FittedGauge("live", capped)
                .hearing(Optional.of(new PressureTopic("home/gauge", "", PressureUnit.BAR)));
        fitted = FormSamples.CELLAR.withBatch(
                batch.withLot(batch.lot(BOTTLE.lotId()).withGauge(gauge)));
        CellarStore.create(folder, fitted, clock, "test").close();
    }

    private TimeSeries minutes(int fromMinute, int untilMinute, DoubleUnaryOperator bar) {
        TimeSeries.Builder series = new TimeSeries.Builder();
        for (int minute = fromMinute; minute < untilMinute; minute++) {
            series.add(capped.getEpochSecond() + 60L * minute, bar.applyAsDouble(minute / 1440.0));
        }
        return series.build();
    }

    private List<Reading> taken(TimeSeries... flushes) {
        for (TimeSeries flush : flushes) {
            gauges.drop(Incoming.of(folder), CellarStore.read(folder), Map.of(BOTTLE, flush), clock.instant());
        }
        try (CellarStore store = CellarStore.open(folder, clock, "test")) {
            assertEquals(List.of(), IncomingFiles.takeInAlone(store).faults());
        }
        List<Reading> all = CellarStore.read(folder).batch(BOTTLE.batchId()).readings();
        return all.subList(before, all.size());
    }

    @Test
    void aRisingGaugeGivesFourReadingsADayAndAStillOneOne() {
        List<Reading> rising = taken(minutes(0, 2 * 1440, day -> 0.4 * day));
        assertEquals(8, rising.size(), "" + rising);
        List<Reading> all = taken(minutes(2 * 1440, 6 * 1440, day -> 0.8 + 0.01 * Math.sin(300 * day)));
        assertTrue(all.size() >= 11 && all.size() <= 13, all.size() + " of which 8 are old");
        Reading.Gauge first = (Reading.Gauge) all.get(0);
        assertEquals("live", first.gauge());
        assertEquals(BOTTLE.lotId(), first.lotId());
    }

    @Test
    void minuteByMinuteGivesTheSameAsAllAtOnceAlsoAfterAStartInBetween() {
        TimeSeries whole = minutes(0, 1440, day -> 0.4 * day);
        TimeSeries[] flushes = new TimeSeries[1440 / 10];
        for (int i = 0; i < flushes.length; i++) {
            flushes[i] = minutes(10 * i, 10 * (i + 1), day -> 0.4 * day);
        }
        List<Reading> bit = List.copyOf(taken(flushes));
        assertEquals(4, bit.size());
        new LiveGauges().drop(Incoming.of(folder), CellarStore.read(folder), Map.of(BOTTLE, whole), clock.instant());
        assertEquals(bit, taken(), "what is known already tells nothing new");
    }

    @Test
    void aLeakIsToldWithinTheHour() {
        List<Reading> readings = taken(minutes(0, 300, day -> day < 0.1 ? 2.2 : 0.4));
        assertEquals(2, readings.size(), "" + readings);
        assertTrue(Duration.between(readings.get(0).at(), readings.get(1).at()).toHours() < 4);
    }

    @Test
    void aGaugeThatNobodyFittedIsNotHeard() {
        gauges.drop(
                Incoming.of(folder), FormSamples.CELLAR, Map.of(BOTTLE, minutes(0, 1440, day -> day)), clock.instant());
        assertEquals(List.of(), taken());
    }
}
