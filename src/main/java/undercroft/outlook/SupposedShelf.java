package undercroft.outlook;

import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import undercroft.calc.spell.DialDay;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Lot;
import undercroft.cellar.Stay;
import undercroft.outlook.climate.PlaceClimate;
import undercroft.quantity.InvalidInput;
import undercroft.series.Span;
import undercroft.series.TimeSeries;
import undercroft.series.Track;

/** A cellar and the climates of its places as suppositions would have them, one after the other. */
final class SupposedShelf {
    /** How well a forecast of the weather tells a room's air, K (assumed). */
    private static final double FORECAST_SPREAD_KELVIN = 1.5;

    private static final double ROOM_SPREAD_KELVIN = 1;
    private static final double LEAST_LAG_HOURS = 0.5;
    private static final int USUAL_DAYS = 14;

    private SupposedShelf() {}

    /** The cellar with all supposed moves made. */
    static Cellar moved(Cellar cellar, List<Supposition> suppositions, Instant at) {
        Cellar moved = cellar;
        for (Supposition supposition : suppositions) {
            if (supposition instanceof Supposition.Moved move) {
                Batch batch = moved.batch(move.batchId());
                Lot lot = batch.lot(move.lotId());
                if (!lot.stayAt(at).placeId().equals(move.placeId())) {
                    moved = moved.withBatch(batch.withLot(there(lot, move.placeId(), at)));
                }
            }
        }
        return moved;
    }

    /** Moves that lie ahead of the instant have not happened yet, and will not after this one. */
    private static Lot there(Lot lot, String placeId, Instant at) {
        List<Stay> stays = new ArrayList<>(
                lot.stays().stream().filter(stay -> stay.from().isBefore(at)).toList());
        stays.add(new Stay(placeId, at, lot.stayAt(at).cover()));
        return new Lot(
                lot.id(),
                lot.bottleTypeId(),
                lot.colour(),
                lot.count(),
                lot.fillMillilitres(),
                lot.scuffed(),
                stays,
                lot.draws());
    }

    static Map<String, PlaceClimate> climates(
            Map<String, PlaceClimate> climates, List<Supposition> suppositions, Instant at, ZoneId zone) {
        Map<String, PlaceClimate> supposed = new LinkedHashMap<>(climates);
        for (Supposition supposition : suppositions) {
            if (supposition instanceof Supposition.Warmer warmer) {
                long from = Math.max(at.getEpochSecond(), warmer.from().getEpochSecond());
                long until = warmer.from().getEpochSecond() + Math.round(warmer.days() * 86_400);
                change(supposed, warmer.placeId(), climate -> warmer(climate, from, until, warmer.kelvin()));
            } else if (supposition instanceof Supposition.CoolingFails fails) {
                long from = Math.max(at.getEpochSecond(), fails.from().getEpochSecond());
                change(
                        supposed,
                        fails.placeId(),
                        climate -> following(
                                climate,
                                TimeSeries.of(
                                        new long[] {from, Long.MAX_VALUE / 2},
                                        new double[] {fails.roomCelsius(), fails.roomCelsius()}),
                                ROOM_SPREAD_KELVIN));
            } else if (supposition instanceof Supposition.Again again) {
                long from = Math.max(at.getEpochSecond(), again.from().getEpochSecond());
                change(supposed, again.placeId(), climate -> again(climate, again.spell(), from));
            } else if (supposition instanceof Supposition.Forecast forecast) {
                TimeSeries air = air(forecast, zone).between(at.getEpochSecond(), Long.MAX_VALUE / 2);
                if (!air.isEmpty()) {
                    change(supposed, forecast.placeId(), climate -> following(climate, air, FORECAST_SPREAD_KELVIN));
                }
            }
        }
        return supposed;
    }

    private interface Change {
        Track of(PlaceClimate climate);
    }

    private static void change(Map<String, PlaceClimate> climates, String placeId, Change change) {
        PlaceClimate climate = climates.get(placeId);
        if (climate == null) {
            throw new InvalidInput("place", "whatif.fault.place-gone", placeId);
        }
        climates.put(placeId, climate.withBottles(change.of(climate)));
    }

    private static TimeSeries air(Supposition.Forecast forecast, ZoneId zone) {
        TimeSeries air = TimeSeries.empty();
        for (Supposition.DayAhead day : forecast.days()) {
            air = air.mergedWith(DialDay.hours(day.date(), day.lowCelsius(), day.highCelsius(), zone));
        }
        return air;
    }

    /** A step of the air reaches the bottles through their lag, and leaves them so. */
    private static Track warmer(PlaceClimate climate, long from, long until, double kelvin) {
        Track track = climate.bottles();
        double keep = keep(climate, track.stepSeconds());
        double[] values = new double[track.size()];
        double[] spreads = new double[values.length];
        double off = 0;
        for (int i = 0; i < values.length; i++) {
            long time = track.timeAt(i);
            double air = time > from && time <= until ? kelvin : 0;
            off = air + (off - air) * keep;
            values[i] = track.valueAt(i) + off;
            spreads[i] = track.spreadAt(i);
        }
        return Track.of(track.timeAt(0), track.stepSeconds(), values, spreads);
    }

    /** While the air is told the bottles follow it; afterwards what is left of the difference fades. */
    private static Track following(PlaceClimate climate, TimeSeries air, double airSpreadKelvin) {
        Track track = climate.bottles();
        double keep = keep(climate, track.stepSeconds());
        double[] values = new double[track.size()];
        double[] spreads = new double[values.length];
        double off = 0;
        for (int i = 0; i < values.length; i++) {
            double told = air.interpolated(track.timeAt(i));
            spreads[i] = track.spreadAt(i);
            if (i > 0 && !Double.isNaN(told)) {
                values[i] = told + (values[i - 1] - told) * keep;
                spreads[i] = airSpreadKelvin + (spreads[i - 1] - airSpreadKelvin) * keep;
                off = values[i] - track.valueAt(i);
            } else {
                off *= keep;
                values[i] = track.valueAt(i) + off;
            }
        }
        return Track.of(track.timeAt(0), track.stepSeconds(), values, spreads);
    }

    private static Track again(PlaceClimate climate, Span spell, long from) {
        Track track = climate.bottles();
        double usual = usual(track, spell.fromInclusive());
        double[] values = new double[track.size()];
        double[] spreads = new double[values.length];
        double off = 0;
        double keep = keep(climate, track.stepSeconds());
        for (int i = 0; i < values.length; i++) {
            long since = track.timeAt(i) - from;
            if (since >= 0 && since < spell.seconds()) {
                off = track.valueAt(track.indexAt(spell.fromInclusive() + since)) - usual;
            } else {
                off = since < 0 ? 0 : off * keep;
            }
            values[i] = track.valueAt(i) + off;
            spreads[i] = track.spreadAt(i);
        }
        return Track.of(track.timeAt(0), track.stepSeconds(), values, spreads);
    }

    /** Mean of the fortnight before a spell. */
    private static double usual(Track track, long before) {
        int until = track.indexAt(before);
        int from = track.indexAt(before - USUAL_DAYS * 86_400L);
        double sum = 0;
        for (int i = from; i <= until; i++) {
            sum += track.valueAt(i);
        }
        return sum / (until - from + 1);
    }

    private static double keep(PlaceClimate climate, int stepSeconds) {
        double hours = Math.max(LEAST_LAG_HOURS, climate.place().lagHours());
        return Math.exp(-stepSeconds / (hours * 3600));
    }
}
