package undercroft.outlook.climate;

import java.time.Instant;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import undercroft.calc.spell.YeastLimits;
import undercroft.cellar.Place;
import undercroft.series.TimeSeries;

/**
 * The climates that were worked out lately: a place whose log has not grown is not worked out again within the hour, and
 * every batch in it shares one. Gives the same as working it out would. Of any thread.
 */
public final class KnownClimates {
    /** For each place: as it is, on the day looked at, and as it was before that. */
    private static final int KEPT = 3;

    private final AirLogs logs = new AirLogs();
    private final Map<String, List<Known>> known = new HashMap<>();

    private record Known(
            Place place,
            TimeSeries raw,
            long airUntil,
            YeastLimits limits,
            long gridFrom,
            long hour,
            long horizon,
            PlaceClimate climate) {
        // The very same object has the very same readings; comparing millions of them would take as long as cleaning.
        @SuppressWarnings("ReferenceEquality")
        boolean is(Known asked) {
            return raw == asked.raw
                    && airUntil == asked.airUntil
                    && gridFrom == asked.gridFrom
                    && hour == asked.hour
                    && horizon == asked.horizon
                    && place.equals(asked.place)
                    && limits.equals(asked.limits);
        }

        Known with(PlaceClimate made) {
            return new Known(place, raw, airUntil, limits, gridFrom, hour, horizon, made);
        }
    }

    /**
     * The climate of a place.
     *
     * @param raw all that is logged for it, of which what comes after {@code at} is not looked at
     * @param limits of the yeasts whose bottles stood there
     */
    public synchronized PlaceClimate of(
            Place place, TimeSeries raw, YeastLimits limits, long gridFrom, Instant at, long horizon) {
        long now = at.getEpochSecond();
        long airUntil = raw.isEmpty() ? 0 : Math.min(raw.lastTime(), now);
        long hour = Math.floorDiv(now, PlaceClimate.STEP_SECONDS);
        Known asked = new Known(place, raw, airUntil, limits, gridFrom, hour, horizon, null);
        List<Known> kept = known.computeIfAbsent(place.id(), id -> new ArrayList<>());
        for (int i = 0; i < kept.size(); i++) {
            if (kept.get(i).is(asked)) {
                Known found = kept.remove(i);
                kept.add(0, found);
                return found.climate();
            }
        }
        PlaceClimate made =
                PlaceClimate.of(place, logs.until(place.id(), raw, now), limits, gridFrom, at, horizon);
        kept.add(0, asked.with(made));
        if (kept.size() > KEPT) {
            kept.remove(KEPT);
        }
        return made;
    }
}
