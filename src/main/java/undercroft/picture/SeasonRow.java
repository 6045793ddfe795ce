package undercroft.picture;

import java.time.Instant;
import java.time.LocalDate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalLong;
import undercroft.cellar.Draw;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.LotOutlook;
import undercroft.outlook.lot.Stage;
import undercroft.series.Band;
import undercroft.series.TimeSeries;
import undercroft.wording.ShelfWords;

/**
 * A lot in time.
 *
 * @param name of its batch
 * @param capped when it was capped; all times in epoch seconds
 * @param fraction share of the coming carbonation, 0 to 1, past and ahead
 * @param carbonated when most of it has formed; the end of what is forecast when it never will
 * @param ready when it is probably ready; none when not in sight
 * @param readyEarly 5 % and {@code readyLate} 95 % of that; none when not in sight
 * @param bestBefore none when it keeps for more than ten years
 * @param left share of its bottles left, a step at each draw, up to now
 * @param bursts when bottles burst
 * @param bestBeforeLabel in words; empty without one
 */
public record SeasonRow(
        String batchId,
        String lotId,
        String name,
        Alert alert,
        int bottles,
        long capped,
        TimeSeries fraction,
        long carbonated,
        OptionalLong ready,
        OptionalLong readyEarly,
        OptionalLong readyLate,
        OptionalLong bestBefore,
        TimeSeries left,
        List<Glass> servings,
        List<Long> bursts,
        String bestBeforeLabel) {
    /** From this share on it counts as carbonated, as it does for its stage. */
    private static final double CARBONATED = 0.95;

    private static final double LEAST_RISE_VOLUMES = 0.05;
    /** A batch past its best goes on being shown for so long. */
    private static final long AFTER_BEST = 30L * 86_400;

    public SeasonRow {
        servings = List.copyOf(servings);
        bursts = List.copyOf(bursts);
    }

    /** Bottles promised for a time. */
    public record Glass(long at, int bottles) {}

    static SeasonRow of(ShelfWords words, BatchOutlook batch, LotOutlook lot) {
        long now = Season.second(words.at());
        TimeSeries fraction = fraction(lot);
        OptionalLong ready = second(lot.ready().median());
        return new SeasonRow(
                batch.id(),
                lot.id(),
                batch.batch().name(),
                lot.verdict().alert(),
                lot.left(),
                Season.second(batch.batch().cappedAt().orElseThrow()),
                fraction,
                Math.min(carbonated(lot, fraction, now), ready.orElse(Long.MAX_VALUE)),
                ready,
                second(lot.ready().early()),
                second(lot.ready().late()),
                lot.ageing()
                        .bestBefore()
                        .map(day -> OptionalLong.of(start(day, words)))
                        .orElseGet(OptionalLong::empty),
                left(lot, now),
                servings(words, batch, lot),
                bursts(lot, words.at()),
                lot.ageing()
                        .bestBefore()
                        .map(day -> words.of("season.best-before", words.day(day)))
                        .orElse(""));
    }

    private static OptionalLong second(Optional<Instant> instant) {
        return instant.map(found -> OptionalLong.of(Season.second(found))).orElseGet(OptionalLong::empty);
    }

    private static long start(LocalDate day, ShelfWords words) {
        return day.atStartOfDay(words.format().zone()).toEpochSecond();
    }

    private static TimeSeries fraction(LotOutlook lot) {
        Band volumes = lot.carbonation().trajectory();
        double begin = volumes.medianAt(0);
        double rise = lot.carbonation().atEnd().median() - begin;
        if (rise < LEAST_RISE_VOLUMES) {
            return volumes.medianSeries().map(any -> 1);
        }
        return volumes.medianSeries().map(each -> Math.max(0, Math.min(1, (each - begin) / rise)));
    }

    /** Where the course of its middle value crosses, held to the side of now that its stage is on. */
    private static long carbonated(LotOutlook lot, TimeSeries fraction, long now) {
        long crossing = fraction.lastTime();
        for (int i = fraction.size() - 1; i >= 0 && fraction.valueAt(i) >= CARBONATED; i--) {
            crossing = fraction.timeAt(i);
        }
        return lot.stage() == Stage.CARBONATING ? Math.max(now, crossing) : Math.min(now, crossing);
    }

    private static TimeSeries left(LotOutlook lot, long now) {
        TimeSeries.Builder steps = new TimeSeries.Builder();
        double start = lot.lot().count();
        long last = Season.second(lot.lot().stays().get(0).from());
        steps.add(last, 1);
        double left = start;
        for (Draw draw : lot.lot().draws()) {
            long at = Math.max(Season.second(draw.at()), last + 1);
            if (at <= now) {
                left -= draw.count();
                steps.add(at, left / start);
                last = at;
            }
        }
        return steps.build();
    }

    private static List<Glass> servings(ShelfWords words, BatchOutlook batch, LotOutlook lot) {
        if (!lot.id().equals(batch.mainLot().id())) {
            return List.of();
        }
        return words.outlook().servings().stream()
                .map(plan -> plan.serving())
                .filter(serving -> serving.batchId().equals(batch.id()))
                .map(serving -> new Glass(Season.second(serving.at()), serving.bottles()))
                .toList();
    }

    private static List<Long> bursts(LotOutlook lot, Instant now) {
        return lot.lot().draws().stream()
                .filter(draw -> draw.fate() == Draw.Fate.BURST && !draw.at().isAfter(now))
                .map(draw -> Season.second(draw.at()))
                .toList();
    }

    /** The last instant there is something to see. */
    public long end() {
        return bestBefore.isPresent() ? bestBefore.getAsLong() + AFTER_BEST : ready.orElse(carbonated);
    }
}
