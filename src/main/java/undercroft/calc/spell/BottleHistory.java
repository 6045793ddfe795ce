package undercroft.calc.spell;

import java.util.List;
import undercroft.quantity.Interval;
import undercroft.series.Span;
import undercroft.series.Track;

/**
 * What a place's bottles felt, °C, with how well it is known.
 *
 * @param track bottle temperature and its standard deviation, K, on a regular grid
 * @param patches stretches without readings that were longer than six hours, in time order
 * @param coverage share of the time with readings, short gaps bridged, 0 to 1
 */
public record BottleHistory(Track track, List<Patch> patches, double coverage) {

    /** How a stretch without readings was filled. */
    public enum Filling {
        /** Up to 48 h: from the same hour of the days beside it. */
        ESTIMATED,
        /** Longer: anything the weeks beside it had. */
        UNKNOWN
    }

    /** A stretch without readings. */
    public record Patch(Span span, Filling filling) {}

    public BottleHistory {
        patches = List.copyOf(patches);
        if (!(coverage >= 0 && coverage <= 1)) {
            throw new IllegalArgumentException("coverage is a share: " + coverage);
        }
    }

    /** A history that is known throughout. */
    public static BottleHistory known(Track track) {
        return new BottleHistory(track, List.of(), 1);
    }

    /** False inside a stretch that nothing but its bounds is known of. */
    public boolean isKnownAt(long epochSecond) {
        for (Patch patch : patches) {
            if (patch.filling() == Filling.UNKNOWN && patch.span().contains(epochSecond)) {
                return false;
            }
        }
        return true;
    }

    /** The cold one of two bounding histories, the 5 % value throughout. */
    public Track coldest() {
        return shifted(-Interval.NORMAL_95);
    }

    /** The warm one of two bounding histories, the 95 % value throughout. */
    public Track warmest() {
        return shifted(Interval.NORMAL_95);
    }

    private Track shifted(double deviations) {
        double[] values = new double[track.size()];
        for (int i = 0; i < values.length; i++) {
            values[i] = track.valueAt(i) + deviations * track.spreadAt(i);
        }
        return Track.of(track.timeAt(0), track.stepSeconds(), values, new double[values.length]);
    }
}
