package undercroft.outlook.climate;

import java.util.HashMap;
import java.util.Map;
import undercroft.calc.spell.CleanSeries;
import undercroft.series.TimeSeries;

/**
 * Logs of air, cleaned and thinned to what bottles can feel, each only once: moving the day looked at over years of
 * readings cleans no more than their last day anew. Gives the same as cleaning all of it up to that day would. Of any
 * thread; keeps the newest log of each place.
 */
public final class AirLogs {
    /** Bottles follow the air in hours; what lies closer together than this is one reading, its mean. */
    static final long BIN_SECONDS = 600;

    private static final long SPIKE_REACH_SECONDS = 6 * 3600;

    private final Map<String, Prepared> prepared = new HashMap<>();

    private record Prepared(TimeSeries raw, TimeSeries clean) {}

    /** The clean log of a place up to and with an instant. */
    public TimeSeries until(String placeId, TimeSeries raw, long epochSecond) {
        if (raw.isEmpty() || raw.firstTime() > epochSecond) {
            return TimeSeries.empty();
        }
        TimeSeries clean = cleaned(placeId, raw);
        if (raw.lastTime() <= epochSecond) {
            return clean;
        }
        // A reading is judged by those within six hours either side, of which those after the instant are not looked
        // at.
        long settled = Math.floorDiv(epochSecond - SPIKE_REACH_SECONDS, BIN_SECONDS) * BIN_SECONDS;
        TimeSeries late = clean(raw.between(settled - SPIKE_REACH_SECONDS, epochSecond + 1));
        return clean.between(Long.MIN_VALUE / 2, settled).mergedWith(late.between(settled, Long.MAX_VALUE / 2));
    }

    // The very same object has the very same readings; comparing millions of them would take as long as cleaning them.
    @SuppressWarnings("ReferenceEquality")
    private synchronized TimeSeries cleaned(String placeId, TimeSeries raw) {
        Prepared known = prepared.get(placeId);
        if (known == null || known.raw() != raw) {
            known = new Prepared(raw, clean(raw));
            prepared.put(placeId, known);
        }
        return known.clean();
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
        return thin.build();
    }
}
