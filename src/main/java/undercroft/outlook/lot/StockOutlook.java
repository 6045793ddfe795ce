package undercroft.outlook.lot;

import java.time.Duration;
import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import undercroft.calc.stock.DrinkingRate;
import undercroft.cellar.Batch;
import undercroft.cellar.Draw;
import undercroft.quantity.Interval;
import undercroft.series.Band;
import undercroft.series.TimeSeries;

/**
 * How many bottles of a batch were left when, how fast they go, and until when they last.
 *
 * @param trajectory bottles left from capping to now, a step at each draw
 * @param ahead bottles left if they go on leaving like that; empty when none left lately
 * @param perWeek bottles opened or given away a week, over the last weeks
 * @param weeks looked back over
 * @param earlyEnd when the last one is gone at the 95 % rate, {@code end} at the median, {@code lateEnd} at the 5 % rate;
 *     empty when that is years away
 */
public record StockOutlook(
        int start,
        int left,
        TimeSeries trajectory,
        Optional<Band> ahead,
        Interval perWeek,
        double weeks,
        Optional<Instant> earlyEnd,
        Optional<Instant> end,
        Optional<Instant> lateEnd) {
    private static final double MOST_DAYS = 56;
    private static final double LEAST_DAYS = 7;
    private static final double DAY_SECONDS = 86_400;
    private static final double LONGEST_YEARS = 5;
    private static final double[] LEVELS = {
        Interval.NORMAL_95, Interval.NORMAL_75, 0, -Interval.NORMAL_75, -Interval.NORMAL_95
    };
    private static final int POINTS = 60;

    /** The stock of a capped batch at an instant. */
    public static StockOutlook of(Batch batch, Instant at) {
        Instant capped = batch.cappedAt().orElseThrow();
        List<Draw> draws = batch.lots().stream()
                .flatMap(lot -> lot.draws().stream())
                .filter(draw -> !draw.at().isAfter(at))
                .sorted(Comparator.comparing(Draw::at))
                .toList();
        int start = batch.lots().stream().mapToInt(lot -> lot.count()).sum();
        double since = Duration.between(capped, at).toSeconds() / DAY_SECONDS;
        double days = Math.max(LEAST_DAYS, Math.min(MOST_DAYS, since));
        Instant from = at.minusSeconds(Math.round(days * DAY_SECONDS));
        List<Integer> lately = new ArrayList<>();
        for (Draw draw : draws) {
            boolean wanted = draw.fate() == Draw.Fate.OPENED || draw.fate() == Draw.Fate.GIVEN_AWAY;
            if (wanted && draw.at().isAfter(from)) {
                lately.add(draw.count());
            }
        }
        DrinkingRate rate = DrinkingRate.of(lately, days);
        Interval perDay = rate.perDay();
        int left = batch.leftAt(at);
        boolean goes = left > 0 && !lately.isEmpty();
        return new StockOutlook(
                start,
                left,
                trajectory(start, draws, capped, at),
                goes ? Optional.of(ahead(left, rate, at)) : Optional.empty(),
                Interval.of(7 * perDay.low(), 7 * perDay.median(), 7 * perDay.high()),
                days / 7,
                goes ? end(left, perDay.high(), at) : Optional.empty(),
                goes ? end(left, perDay.median(), at) : Optional.empty(),
                goes ? end(left, perDay.low(), at) : Optional.empty());
    }

    private static TimeSeries trajectory(int start, List<Draw> draws, Instant capped, Instant at) {
        TimeSeries.Builder trajectory = new TimeSeries.Builder();
        long last = capped.getEpochSecond();
        trajectory.add(last, start);
        int left = start;
        for (Draw draw : draws) {
            long when = Math.max(draw.at().getEpochSecond(), last + 2);
            trajectory.add(when - 1, left);
            left -= draw.count();
            trajectory.add(when, left);
            last = when;
        }
        if (at.getEpochSecond() > last) {
            trajectory.add(at.getEpochSecond(), left);
        }
        return trajectory.build();
    }

    private static Band ahead(int left, DrinkingRate rate, Instant at) {
        double days = Math.min(365 * LONGEST_YEARS, 1.6 * left / rate.perDayAt(0));
        long[] times = new long[POINTS + 1];
        double[][] levels = new double[LEVELS.length][POINTS + 1];
        for (int i = 0; i <= POINTS; i++) {
            double day = days * i / POINTS;
            times[i] = at.getEpochSecond() + Math.round(day * DAY_SECONDS) + i;
            for (int level = 0; level < LEVELS.length; level++) {
                levels[level][i] = Math.max(0, left - rate.perDayAt(LEVELS[level]) * day);
            }
        }
        return Band.of(times, levels);
    }

    private static Optional<Instant> end(int left, double perDay, Instant at) {
        double days = left / perDay;
        return days <= 365 * LONGEST_YEARS
                ? Optional.of(at.plusSeconds(Math.round(days * DAY_SECONDS)))
                : Optional.empty();
    }
}
