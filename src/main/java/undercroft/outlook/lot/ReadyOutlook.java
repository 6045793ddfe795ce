package undercroft.outlook.lot;

import java.time.Instant;
import java.util.Optional;
import undercroft.quantity.Interval;
import undercroft.series.TimeSeries;

/**
 * When the lot is carbonated to 95 % and has cleaned up.
 *
 * @param early 5 %, {@code median} 50 %, {@code late} 95 %; empty when not within the horizon where it stands
 * @param probabilityNow that it is ready at the outlook's instant
 * @param alone the same three without what earlier batches taught, epoch seconds, +∞ for never; empty where they taught nothing
 * @param chance that it is ready, from the outlook's instant on, 0 to 1
 */
public record ReadyOutlook(
        Optional<Instant> early,
        Optional<Instant> median,
        Optional<Instant> late,
        double probabilityNow,
        Optional<Interval> alone,
        TimeSeries chance) {
    /** Of a lot for which no date is promised. */
    static ReadyOutlook never(Instant at) {
        TimeSeries none = TimeSeries.of(new long[] {at.getEpochSecond()}, new double[] {0});
        return new ReadyOutlook(Optional.empty(), Optional.empty(), Optional.empty(), 0, Optional.empty(), none);
    }

    /** Probability, 0 to 1, that it is ready by an instant where it stands. */
    public double probabilityBy(Instant instant) {
        long second = instant.getEpochSecond();
        if (second <= chance.firstTime()) {
            return probabilityNow;
        }
        return second >= chance.lastTime() ? chance.lastValue() : chance.interpolated(second);
    }
}
