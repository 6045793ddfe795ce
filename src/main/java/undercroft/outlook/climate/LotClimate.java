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
 * @param air logged air of the places while it stood there, up to the outlook's instant
 * @param gaps stretches without a log in that time
 * @param coverage share of the time since capping with measured temperatures
 */
public record LotClimate(Track bottles, TimeSeries air, List<Span> gaps, double coverage) {
    public static LotClimate of(Lot lot, Instant capped, Instant at, Map<String, PlaceClimate> places) {
        PlaceClimate first = places.get(lot.stays().get(0).placeId());
        Track grid = first.bottles();
        int from = grid.indexAt(capped.getEpochSecond());
        int size = grid.size() - from;
        double[] celsius = new double[size];
        double[] spread = new double[size];
        TimeSeries.Builder air = new TimeSeries.Builder();
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
            follow(place, grid, from, begins, ends, celsius, spread);
            long until = Math.min(ends, at.getEpochSecond());
            addAir(place.air().between(begins, until), air);
            for (Span gap : place.gaps()) {
                if (gap.overlaps(new Span(begins, until))) {
                    gaps.add(new Span(Math.max(gap.fromInclusive(), begins), Math.min(gap.untilExclusive(), until)));
                }
            }
            known += place.knownSeconds(begins, until);
        }
        long past = Math.max(1, at.getEpochSecond() - capped.getEpochSecond());
        Track bottles = Track.of(grid.timeAt(from), grid.stepSeconds(), celsius, spread);
        return new LotClimate(bottles, air.build(), List.copyOf(gaps), Math.min(1, (double) known / past));
    }

    private static void follow(
            PlaceClimate place, Track grid, int from, long begins, long ends, double[] celsius, double[] spread) {
        Track track = place.bottles();
        double lagSeconds = Math.max(1, place.place().lagHours() * 3600);
        double carried = 0;
        double carriedAt = begins;
        int start = grid.indexAt(begins);
        if (start > from) {
            carried = celsius[start - from - 1] - track.valueAt(start);
        }
        for (int i = start; i < grid.size() && grid.timeAt(i) < ends; i++) {
            double fade = Math.exp(-Math.max(0, grid.timeAt(i) - carriedAt) / lagSeconds);
            celsius[i - from] = track.valueAt(i) + carried * fade;
            spread[i - from] = track.spreadAt(i);
        }
    }

    private static void addAir(TimeSeries stretch, TimeSeries.Builder air) {
        for (int i = 0; i < stretch.size(); i++) {
            air.add(stretch.timeAt(i), stretch.valueAt(i));
        }
    }
}
