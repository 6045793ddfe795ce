package undercroft.outlook.climate;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import undercroft.cellar.Lot;
import undercroft.cellar.Stay;
import undercroft.series.Span;
import undercroft.series.TimeSeries;
import undercroft.series.Track;

/**
 * What a lot's bottles felt and will feel, put together from the climates of the places it stood in. After a move the
 * bottles start from the temperature they had and follow the new place with its lag.
 *
 * @param bottles hourly, from the hour of capping to the horizon
 * @param air logged air of the places while it stood there, stay by stay, up to the outlook's instant
 * @param gaps stretches without a log in that time
 * @param coverage share of the time since capping with measured temperatures
 */
public record LotClimate(Track bottles, List<TimeSeries> air, List<Span> gaps, double coverage) {
    /**
     * The climate of a lot.
     *
     * @param gone whether its batch has no bottle left, so that nothing is to be told beyond the instant
     */
    public static LotClimate of(Lot lot, Instant capped, Instant at, Map<String, PlaceClimate> places, boolean gone) {
        PlaceClimate first = places.get(lot.stays().get(0).placeId());
        Track whole = first.bottles();
        Track grid = whole.between(
                whole.indexAt(capped.getEpochSecond()), gone ? whole.indexAt(endOf(at)) + 1 : whole.size());
        Course course = new Course(grid);
        List<TimeSeries> air = new ArrayList<>();
        List<Span> gaps = new ArrayList<>();
        long known = 0;
        for (int s = 0; s < lot.stays().size(); s++) {
            Stay stay = lot.stays().get(s);
            boolean last = s + 1 == lot.stays().size();
            long begins = s == 0 ? capped.getEpochSecond() : stay.from().getEpochSecond();
            long ends = last ? Long.MAX_VALUE : lot.stays().get(s + 1).from().getEpochSecond();
            if (begins > at.getEpochSecond()) {
                break;
            }
            // A move that lies ahead of the instant looked at has not happened yet.
            if (ends > at.getEpochSecond()) {
                ends = Long.MAX_VALUE;
            }
            PlaceClimate place = places.get(stay.placeId());
            if (s > 0 || ends < Long.MAX_VALUE) {
                course.follow(place, begins, ends);
            }
            long until = Math.min(ends, at.getEpochSecond());
            TimeSeries logged = place.air().between(begins, until);
            if (!logged.isEmpty()) {
                air.add(logged);
            }
            for (Span gap : place.gaps()) {
                if (gap.overlaps(new Span(begins, until))) {
                    gaps.add(new Span(Math.max(gap.fromInclusive(), begins), Math.min(gap.untilExclusive(), until)));
                }
            }
            known += place.knownSeconds(begins, until);
        }
        long past = Math.max(1, at.getEpochSecond() - capped.getEpochSecond());
        return new LotClimate(course.track(), List.copyOf(air), List.copyOf(gaps), Math.min(1, (double) known / past));
    }

    /** The last second that is told of a place for bottles of which the last one left at an instant. */
    public static long endOf(Instant lastLeft) {
        return lastLeft.getEpochSecond() + PlaceClimate.STEP_SECONDS;
    }

    /** From place to place. A lot that stood in one place only shares that place's values. */
    private static final class Course {
        private final Track grid;
        private double[] celsius;
        private double[] spread;

        Course(Track grid) {
            this.grid = grid;
        }

        void follow(PlaceClimate place, long begins, long ends) {
            if (celsius == null) {
                celsius = new double[grid.size()];
                spread = new double[grid.size()];
            }
            Track track = place.bottles();
            int ahead = (int) ((grid.timeAt(0) - track.timeAt(0)) / grid.stepSeconds());
            double lagSeconds = Math.max(1, place.place().lagHours() * 3600);
            int start = grid.indexAt(begins);
            double carried = start > 0 ? celsius[start - 1] - track.valueAt(start + ahead) : 0;
            for (int i = start; i < grid.size() && grid.timeAt(i) < ends; i++) {
                double fade = carried == 0 ? 0 : Math.exp(-Math.max(0, grid.timeAt(i) - begins) / lagSeconds);
                celsius[i] = track.valueAt(i + ahead) + carried * fade;
                spread[i] = track.spreadAt(i + ahead);
            }
        }

        Track track() {
            return celsius == null ? grid : Track.of(grid.timeAt(0), grid.stepSeconds(), celsius, spread);
        }
    }
}
