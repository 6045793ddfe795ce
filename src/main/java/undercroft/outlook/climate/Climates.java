package undercroft.outlook.climate;

import java.time.Instant;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import undercroft.calc.spell.YeastLimits;
import undercroft.cellar.Place;
import undercroft.series.TimeSeries;

/**
 * The climates of places, each made once for as long as nothing it is made from changes: whoever asks again gets the very
 * same one. Gives what making it anew would. Of any thread; keeps the newest of each place.
 */
public final class Climates {
    private final AirLogs logs = new AirLogs();
    private final Map<String, Known> known = new ConcurrentHashMap<>();

    private record Known(Grounds grounds, PlaceClimate climate) {}

    /**
     * What a climate is made from.
     *
     * @param seenUntil the last instant of which the log is looked at
     * @param hour of the present, which divides what was felt from what is expected
     */
    private record Grounds(
            Place place, TimeSeries raw, long seenUntil, YeastLimits limits, long gridFrom, long hour, long horizon) {
        // The very same object has the very same readings; comparing millions of them would take as long as cleaning
        // them.
        @SuppressWarnings("ReferenceEquality")
        boolean areThoseOf(Grounds other) {
            return raw == other.raw
                    && seenUntil == other.seenUntil
                    && gridFrom == other.gridFrom
                    && hour == other.hour
                    && horizon == other.horizon
                    && limits.equals(other.limits)
                    && place.equals(other.place);
        }
    }

    /**
     * The climate of a place as of an instant.
     *
     * @param raw its whole log, °C; what comes after the instant is not looked at
     * @param limits of the yeasts whose bottles stood there
     */
    public PlaceClimate of(Place place, TimeSeries raw, YeastLimits limits, long gridFrom, Instant at, long horizon) {
        long now = at.getEpochSecond();
        Grounds grounds = new Grounds(
                place,
                raw,
                raw.isEmpty() ? now : Math.min(now, raw.lastTime()),
                limits,
                gridFrom,
                Math.floorDiv(now, PlaceClimate.STEP_SECONDS),
                horizon);
        Known before = known.get(place.id());
        if (before != null && before.grounds().areThoseOf(grounds)) {
            return before.climate();
        }
        TimeSeries air = logs.until(place.id(), raw, now);
        PlaceClimate made = PlaceClimate.of(place, air, limits, gridFrom, at, horizon);
        known.put(place.id(), new Known(grounds, made));
        return made;
    }
}
