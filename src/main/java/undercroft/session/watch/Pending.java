package undercroft.session.watch;

import java.util.HashMap;
import java.util.Map;
import undercroft.series.TimeSeries;

/** Samples that came in and are not saved yet, by place. Of any thread. */
final class Pending {
    private final Map<String, TimeSeries> celsius = new HashMap<>();

    synchronized void add(String placeId, TimeSeries samples) {
        celsius.merge(placeId, samples, TimeSeries::mergedWith);
    }

    /** All there is; it is nobody's until it is saved, or given back with {@link #add}. */
    synchronized Map<String, TimeSeries> take() {
        Map<String, TimeSeries> all = Map.copyOf(celsius);
        celsius.clear();
        return all;
    }
}
