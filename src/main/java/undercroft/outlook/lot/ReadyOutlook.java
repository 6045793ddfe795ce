package undercroft.outlook.lot;

import java.time.Instant;
import java.util.Optional;
import undercroft.series.TimeSeries;

/**
 * When the lot is carbonated to 95 % and has cleaned up.
 *
 * @param early 5 %, {@code median} 50 %, {@code late} 95 %; empty when not within the horizon where it stands
 * @param probabilityNow that it is ready at the outlook's instant
 * @param chance that it is ready, from the outlook's instant on, 0 to 1
 */
public record ReadyOutlook(
        Optional<Instant> early,
        Optional<Instant> median,
        Optional<Instant> late,
        double probabilityNow,
        TimeSeries chance) {
    /** With no more known of the course of its chance than the three instants. */
    public ReadyOutlook(
            Optional<Instant> early, Optional<Instant> median, Optional<Instant> late, double probabilityNow) {
        this(early, median, late, probabilityNow, TimeSeries.empty());
    }

    /** Probability, 0 to 1, that it is ready by an instant where it stands. */
    public double probabilityBy(Instant instant) {
        if (!chance.isEmpty()) {
            long second = instant.getEpochSecond();
            if (second <= chance.firstTime()) {
                return probabilityNow;
            }
            return second >= chance.lastTime() ? chance.lastValue() : chance.interpolated(second);
        }
        double known = probabilityNow;
        if (early.isPresent() && !early.get().isAfter(instant)) {
            known = Math.max(known, 0.05);
        }
        if (median.isPresent() && !median.get().isAfter(instant)) {
            known = Math.max(known, 0.5);
        }
        return late.isPresent() && !late.get().isAfter(instant) ? Math.max(known, 0.95) : known;
    }
}
