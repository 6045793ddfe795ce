package undercroft.calc.spell;

import java.util.ArrayList;
import java.util.List;
import undercroft.calc.spell.BottleHistory.Patch;
import undercroft.series.Span;
import undercroft.series.TimeSeries;
import undercroft.series.Track;

/**
 * How bottles follow the air of their place: a first-order lag, dT/dt = (air − T) / τ, solved exactly for air that runs
 * straight between readings. τ is 1.4 to 2 h for a bottle alone, about 3 h for a crate as a block, 6 to 12 h for stacked
 * boxes or a cupboard (derived and assumed).
 */
public final class BottleLag {
    private static final double WARM_UP_LAGS = 9;
    private static final double UNSEEN_START_KELVIN = 1.5;
    private static final int DAY = 86_400;

    private final FilledAir air;
    private final double lagSeconds;
    private double celsius;
    private double spread;
    private double lastSeconds = -1;
    private double lastDecay;

    private BottleLag(FilledAir air, double lagSeconds) {
        this.air = air;
        this.lagSeconds = lagSeconds;
    }

    /**
     * What the bottles of a place felt.
     *
     * @param air the place's clean air temperatures, °C; may be empty, and then all is unknown
     * @param fromInclusive first instant of the grid
     * @param untilExclusive after {@code fromInclusive}
     * @param stepSeconds the grid's step, above 0; an hour is enough for any lag of an hour and more
     * @param tauHours the lag τ, 0 (the air itself) to 1,000 h
     * @return the history; its spread follows the bottles' lag too, as errors of the air do
     */
    public static BottleHistory of(
            TimeSeries air, long fromInclusive, long untilExclusive, int stepSeconds, double tauHours) {
        if (untilExclusive <= fromInclusive || stepSeconds <= 0) {
            throw new IllegalArgumentException("a history needs a positive length and step");
        }
        if (!(tauHours >= 0 && tauHours <= 1000)) {
            throw new IllegalArgumentException("a lag of " + tauHours + " h is no lag of bottles");
        }
        double lagSeconds = tauHours * 3600;
        long start = fromInclusive;
        if (!air.isEmpty() && air.firstTime() < fromInclusive) {
            start = Math.max(air.firstTime(), fromInclusive - Math.max(DAY, Math.round(WARM_UP_LAGS * lagSeconds)));
        }
        FilledAir filled = FilledAir.of(air, start, untilExclusive);
        Track track = new BottleLag(filled, lagSeconds).follow(start, fromInclusive, untilExclusive, stepSeconds);
        List<Patch> patches = within(filled.patches(), fromInclusive, untilExclusive);
        long patched =
                patches.stream().mapToLong(patch -> patch.span().seconds()).sum();
        return new BottleHistory(track, patches, 1 - (double) patched / (untilExclusive - fromInclusive));
    }

    private Track follow(long start, long from, long until, int step) {
        int size = Math.toIntExact((until - from + step - 1) / step);
        double[] values = new double[size];
        double[] spreads = new double[size];
        begin(start);
        int next = 0;
        for (int i = 0; i + 1 < air.size() && next < size; i++) {
            long end = air.timeAt(i + 1);
            long now = Math.max(start, air.timeAt(i));
            while (next < size && from + (long) next * step <= end) {
                long grid = from + (long) next * step;
                advance(i, now, grid);
                values[next] = celsius;
                spreads[next] = spread;
                now = grid;
                next++;
            }
            advance(i, now, end);
        }
        return Track.of(from, step, values, spreads);
    }

    /** Bottles nobody saw come in are taken to have the mean of their first day. */
    private void begin(long start) {
        double sum = 0;
        double seconds = 0;
        for (int i = 0; i + 1 < air.size() && air.timeAt(i) < start + DAY; i++) {
            long from = Math.max(start, air.timeAt(i));
            long until = Math.min(start + DAY, air.timeAt(i + 1));
            if (until > from) {
                double middle = along(air.valueAt(i), air.valueAt(i + 1), i, (from + until) / 2.0);
                sum += middle * (until - from);
                seconds += until - from;
            }
        }
        celsius = seconds > 0 ? sum / seconds : air.valueAt(0);
        spread = Math.hypot(UNSEEN_START_KELVIN, air.spreadAt(0));
    }

    private void advance(int corner, long from, long until) {
        if (until < from) {
            return;
        }
        double airFrom = along(air.valueAt(corner), air.valueAt(corner + 1), corner, (double) from);
        double airUntil = along(air.valueAt(corner), air.valueAt(corner + 1), corner, (double) until);
        double spreadFrom = along(air.spreadAt(corner), air.spreadAt(corner + 1), corner, (double) from);
        double spreadUntil = along(air.spreadAt(corner), air.spreadAt(corner + 1), corner, (double) until);
        if (lagSeconds == 0) {
            celsius = airUntil;
            spread = spreadUntil;
            return;
        }
        double seconds = until - from;
        if (seconds == 0) {
            return;
        }
        if (seconds != lastSeconds) {
            lastSeconds = seconds;
            lastDecay = Math.exp(-seconds / lagSeconds);
        }
        celsius = lagged(celsius, airFrom, airUntil, seconds);
        spread = lagged(spread, spreadFrom, spreadUntil, seconds);
    }

    private double lagged(double state, double from, double until, double seconds) {
        double behind = (until - from) / seconds * lagSeconds;
        return until - behind + (state - from + behind) * lastDecay;
    }

    private double along(double from, double until, int corner, double time) {
        double length = air.timeAt(corner + 1) - air.timeAt(corner);
        return from + (until - from) * (time - air.timeAt(corner)) / length;
    }

    private static List<Patch> within(List<Patch> patches, long from, long until) {
        List<Patch> inside = new ArrayList<>();
        for (Patch patch : patches) {
            long begin = Math.max(from, patch.span().fromInclusive());
            long end = Math.min(until, patch.span().untilExclusive());
            if (begin < end) {
                inside.add(new Patch(new Span(begin, end), patch.filling()));
            }
        }
        return inside;
    }
}
