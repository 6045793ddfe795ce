package undercroft.picture;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.climate.PlaceOutlook;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.LotOutlook;
import undercroft.series.TimeSeries;
import undercroft.series.Track;
import undercroft.wording.ShelfWords;

/**
 * The shelf in time: place by place its temperature and spells, and under it a row for each lot that has bottles left.
 *
 * @param now the instant looked at
 * @param nowLabel what stands on its line
 */
public record Season(List<Lane> lanes, long now, String nowLabel, ZoneId zone) {
    private static final long DAY = 86_400;
    private static final long MOST_PAST = 365 * DAY;
    private static final long LEAST_PAST = 60 * DAY;
    private static final long AHEAD = 270 * DAY;
    private static final long MARGIN = 10 * DAY;

    public Season {
        lanes = List.copyOf(lanes);
    }

    /**
     * A place with what stands in it.
     *
     * @param celsius means of days, past and ahead
     * @param rows the gravest first
     */
    public record Lane(
            String placeId, String name, TimeSeries celsius, List<SeasonSpell> spells, List<SeasonRow> rows) {
        public Lane {
            spells = List.copyOf(spells);
            rows = List.copyOf(rows);
        }
    }

    /** The same with other lanes, or these in another order. */
    public Season with(List<Lane> newLanes) {
        return new Season(newLanes, now, nowLabel, zone);
    }

    /**
     * Places in the order of the cellar, those without bottles left out.
     *
     * @param clock the present moment, whatever instant the shelf is seen at
     */
    public static Season of(ShelfWords words, Instant clock) {
        Season whole = whole(words, clock);
        return whole.with(
                whole.lanes().stream().filter(lane -> !lane.rows().isEmpty()).toList());
    }

    /** As {@link #of}, with a lane for each place, whether anything stands in it or not. */
    public static Season whole(ShelfWords words, Instant clock) {
        CellarOutlook outlook = words.outlook();
        List<Lane> lanes = new ArrayList<>();
        for (PlaceOutlook place : outlook.places()) {
            lanes.add(new Lane(
                    place.place().id(),
                    place.place().name(),
                    daily(place.bottles()),
                    SeasonSpell.of(words, place.place().id()),
                    rows(words, place.place().id())));
        }
        return new Season(
                lanes,
                outlook.at().getEpochSecond(),
                NowTag.of(words, clock),
                outlook.cellar().zone());
    }

    private static List<SeasonRow> rows(ShelfWords words, String placeId) {
        List<SeasonRow> rows = new ArrayList<>();
        for (BatchOutlook batch : words.outlook().batches()) {
            for (LotOutlook lot : batch.lots()) {
                if (lot.left() > 0 && lot.place().id().equals(placeId)) {
                    rows.add(SeasonRow.of(words, batch, lot));
                }
            }
        }
        rows.sort(Comparator.comparing(SeasonRow::alert).reversed());
        return rows;
    }

    private static TimeSeries daily(Track bottles) {
        TimeSeries.Builder means = new TimeSeries.Builder();
        int steps = (int) Math.max(1, DAY / bottles.stepSeconds());
        for (int first = 0; first + steps <= bottles.size(); first += steps) {
            double sum = 0;
            for (int i = first; i < first + steps; i++) {
                sum += bottles.valueAt(i);
            }
            means.add(bottles.timeAt(first + steps / 2), sum / steps);
        }
        return means.build();
    }

    public boolean isEmpty() {
        return lanes.isEmpty();
    }

    /** From where to look at first: the oldest bottles, at most a year back. */
    public long usualFrom() {
        long oldest = lanes.stream()
                .flatMap(lane -> lane.rows().stream())
                .mapToLong(SeasonRow::capped)
                .min()
                .orElse(now);
        return Math.max(now - MOST_PAST, Math.min(oldest - MARGIN, now - LEAST_PAST));
    }

    /** Until where to look at first: nine months ahead, less where everything is over before. */
    public long usualUntil() {
        long last = lanes.stream()
                .flatMap(lane -> lane.rows().stream())
                .mapToLong(SeasonRow::end)
                .max()
                .orElse(now);
        return Math.min(now + AHEAD, Math.max(last + MARGIN, now + LEAST_PAST));
    }

    static long second(Instant instant) {
        return instant.getEpochSecond();
    }
}
