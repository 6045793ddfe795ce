package undercroft.outlook.climate;

import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import undercroft.calc.spell.CleanSeries;
import undercroft.series.TimeSeries;

/**
 * Logs of air, cleaned and thinned to what bottles can feel, each only once: moving the day looked at over years of
 * readings, or adding one to them, cleans no more than their last day anew. Gives the same as cleaning all of it would. Of any
 * thread; keeps the newest log of each place.
 */
public final class AirLogs {
    /** Bottles follow the air in hours; what lies closer together than this is one reading, its mean. */
    static final long BIN_SECONDS = 600;

    private static final long SPIKE_REACH_SECONDS = 6 * 3600;

    private final Map<String, Prepared> prepared = new ConcurrentHashMap<>();

    private record Prepared(TimeSeries raw, TimeSeries clean) {
        static Prepared of(TimeSeries raw) {
            return new Prepared(raw, AirLogs.clean(raw));
        }

        Prepared grownTo(TimeSeries log) {
            boolean hasGrown = raw.size() <= log.size()
                    && log.between(Long.MIN_VALUE / 2, raw.lastTime() + 1).equals(raw);
            if (!hasGrown) {
                return of(log);
            }
            return log.size() == raw.size() ? this : new Prepared(log, withEnd(clean, log, raw.lastTime()));
        }
    }

    /** The clean log of a place up to and with an instant. */
    public TimeSeries until(String placeId, TimeSeries raw, long epochSecond) {
        if (raw.isEmpty() || raw.firstTime() > epochSecond) {
            return TimeSeries.empty();
        }
        TimeSeries clean = cleaned(placeId, raw);
        if (raw.lastTime() <= epochSecond) {
            return clean;
        }
        return withEnd(clean, raw.between(Long.MIN_VALUE / 2, epochSecond + 1), epochSecond);
    }

    /**
     * What is clean of a log up to an instant is clean of any log that is the same until then, but for the last hours: a
     * reading is judged by those within six hours either side.
     */
    private static TimeSeries withEnd(TimeSeries clean, TimeSeries raw, long sameUntil) {
        long settled = Math.floorDiv(sameUntil - SPIKE_REACH_SECONDS, BIN_SECONDS) * BIN_SECONDS;
        TimeSeries late = clean(raw.between(settled - SPIKE_REACH_SECONDS, Long.MAX_VALUE / 2));
        TimeSeries whole =
                clean.between(Long.MIN_VALUE / 2, settled).mergedWith(late.between(settled, Long.MAX_VALUE / 2));
        return whole.equals(raw) ? raw : whole;
    }

    private TimeSeries cleaned(String placeId, TimeSeries raw) {
        return prepared.compute(placeId, (id, known) -> known == null ? Prepared.of(raw) : known.grownTo(raw))
                .clean();
    }

    private static TimeSeries clean(TimeSeries raw) {
        return thinned(CleanSeries.of(raw).series());
    }

    /** Means over bins of wall-clock ten minutes; a reading alone in its bin stays as it is. */
    static TimeSeries thinned(TimeSeries series) {
        TimeSeries.Builder thin = new TimeSeries.Builder();
        int i = 0;
        while (i < series.size()) {
            long first = series.timeAt(i);
            long bin = Math.floorDiv(first, BIN_SECONDS);
            double sum = 0;
            long seconds = 0;
            int count = 0;
            while (i < series.size() && Math.floorDiv(series.timeAt(i), BIN_SECONDS) == bin) {
                sum += series.valueAt(i);
                seconds += series.timeAt(i) - first;
                count++;
                i++;
            }
            thin.add(first + seconds / count, sum / count);
        }
        return thin.size() == series.size() ? series : thin.build();
    }
}
