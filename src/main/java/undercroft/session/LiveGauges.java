package undercroft.session;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.FittedGauge;
import undercroft.cellar.Lot;
import undercroft.cellar.Reading;
import undercroft.listen.GaugeBottle;
import undercroft.series.TimeSeries;
import undercroft.store.Incoming;
import undercroft.store.json.ReadingsFile;

/**
 * What live gauges say becomes readings, thinned to what carries information: readings of one gauge on one bottle share its
 * errors, so that a hundred of them tell no more than a few. They are laid into {@code incoming} and taken in from there as
 * any other program's are. Blocks on a disk.
 */
public final class LiveGauges {
    /** A course is told by so many a day, where it moves at all. */
    private static final long LEAST_SECONDS = 6 * 3600;

    private static final double LEAST_BAR = 0.05;
    /** A day without news is news too. */
    private static final long MOST_SECONDS = 24 * 3600;

    /** A leak, or another place. */
    private static final double SUDDEN_BAR = 0.3;

    private static final long SUDDEN_SECONDS = 3600;

    private final Map<GaugeBottle, Kept> last = new HashMap<>();

    private record Kept(long epochSecond, double bar) {}

    /** Lays what is new there, where anything is; returns how many readings that are. */
    public int drop(Incoming incoming, Cellar cellar, Map<GaugeBottle, TimeSeries> bars, Instant now) {
        int[] laid = {0};
        bars.forEach((bottle, series) -> running(cellar, bottle).ifPresent(gauge -> {
            List<Kept> kept = thinned(known(cellar, bottle, gauge), series);
            laid[0] += kept.size();
            if (!kept.isEmpty()) {
                List<Reading> readings = new ArrayList<>();
                kept.forEach(one -> readings.add(new Reading.Gauge(
                        Instant.ofEpochSecond(one.epochSecond()), bottle.lotId(), gauge.instrument(), one.bar())));
                incoming.drop(new ReadingsFile(bottle.batchId(), readings), now);
                last.put(bottle, kept.get(kept.size() - 1));
            }
        }));
        return laid[0];
    }

    private static Optional<FittedGauge> running(Cellar cellar, GaugeBottle bottle) {
        return cellar.batches().stream()
                .filter(batch -> batch.id().equals(bottle.batchId()))
                .flatMap(batch -> batch.lots().stream())
                .filter(lot -> lot.id().equals(bottle.lotId()))
                .flatMap(lot -> lot.gauge().stream())
                .findFirst();
    }

    /** The newest reading of the gauge, in the cellar or on its way there. */
    private Optional<Kept> known(Cellar cellar, GaugeBottle bottle, FittedGauge gauge) {
        Batch batch = cellar.batch(bottle.batchId());
        Lot lot = batch.lot(bottle.lotId());
        Optional<Kept> saved = batch.readings().stream()
                .filter(reading -> reading instanceof Reading.Gauge read && gauge.isOwn(read, lot.id()))
                .map(reading -> new Kept(reading.at().getEpochSecond(), ((Reading.Gauge) reading).gaugeBar()))
                .reduce((one, other) -> one.epochSecond() > other.epochSecond() ? one : other);
        Optional<Kept> dropped = Optional.ofNullable(last.get(bottle));
        return saved.isPresent()
                        && dropped.map(Kept::epochSecond).orElse(Long.MIN_VALUE)
                                < saved.get().epochSecond()
                ? saved
                : dropped;
    }

    private static List<Kept> thinned(Optional<Kept> before, TimeSeries bars) {
        List<Kept> kept = new ArrayList<>();
        Optional<Kept> newest = before;
        for (int i = 0; i < bars.size(); i++) {
            Kept next = new Kept(bars.timeAt(i), Math.rint(bars.valueAt(i) * 1_000) / 1_000);
            if (newest.map(known -> tellsMore(known, next)).orElse(true)) {
                kept.add(next);
                newest = Optional.of(next);
            }
        }
        return kept;
    }

    private static boolean tellsMore(Kept known, Kept next) {
        long seconds = next.epochSecond() - known.epochSecond();
        double bar = Math.abs(next.bar() - known.bar());
        return seconds >= MOST_SECONDS
                || (seconds >= LEAST_SECONDS && bar >= LEAST_BAR)
                || (seconds >= SUDDEN_SECONDS && bar >= SUDDEN_BAR);
    }
}
