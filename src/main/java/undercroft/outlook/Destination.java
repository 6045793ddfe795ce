package undercroft.outlook;

import java.time.Instant;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import undercroft.outlook.climate.PlaceOutlook;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.Cause;
import undercroft.outlook.lot.LotOutlook;
import undercroft.outlook.lot.PressureOutlook;
import undercroft.outlook.lot.Verdict;
import undercroft.series.Track;

/**
 * Where a lot could be taken.
 *
 * @param warmestCelsius the warmest its bottles may get there in the weeks ahead (95 %), °C
 * @param withinLimit whether that stays below the lot's heat limit
 */
public record Destination(String placeId, String placeName, double warmestCelsius, boolean withinLimit) {
    /** A place so near the freezing point is no place to go, K. */
    private static final double ABOVE_FROST_KELVIN = 1;

    /** What a place would be for a lot. */
    static Destination of(PlaceOutlook place, LotOutlook lot, Instant at) {
        double warmest = place.bottles()
                .highest(at.getEpochSecond(), at.plus(PressureOutlook.AHEAD).getEpochSecond());
        return new Destination(
                place.place().id(),
                place.place().name(),
                warmest,
                warmest <= lot.pressure().heatLimitCelsius());
    }

    /** The coolest of the other places in which it does not freeze; empty when there is none. */
    static Optional<Destination> coolest(List<PlaceOutlook> places, LotOutlook lot, Instant at) {
        return elsewhere(places, lot, at)
                .map(place -> of(place, lot, at))
                .min(Comparator.comparingDouble(Destination::warmestCelsius));
    }

    /**
     * The place to offer first for what the lot wants: its own where light falls on it and a cover is enough, else another
     * that is not too warm for it, and the warmest of those where its yeast stands still in the cold. Where every other
     * place is too warm it is the coolest; empty when it freezes in all of them.
     */
    static Optional<Destination> offered(List<PlaceOutlook> places, LotOutlook lot, Instant at) {
        Verdict verdict = lot.verdict();
        if (verdict.danger() != Alert.CLEAR || verdict.has(Cause.Kind.TOO_HOT_FOR_YEAST)) {
            return coolest(places, lot, at);
        }
        if (wantsCover(lot)) {
            return places.stream()
                    .filter(place -> place.place().id().equals(lot.place().id()))
                    .map(place -> of(place, lot, at))
                    .findFirst();
        }
        List<Destination> fit = elsewhere(places, lot, at)
                .map(place -> of(place, lot, at))
                .filter(Destination::withinLimit)
                .toList();
        boolean wantsWarmth = verdict.has(Cause.Kind.STALLED) || verdict.has(Cause.Kind.SLOW);
        return (wantsWarmth
                        ? fit.stream().max(Comparator.comparingDouble(Destination::warmestCelsius))
                        : fit.stream().findFirst())
                .or(() -> coolest(places, lot, at));
    }

    /** Whether a closed box would do: light falls on the lot, and nothing worse is the matter. */
    public static boolean wantsCover(LotOutlook lot) {
        return lot.verdict().danger() == Alert.CLEAR && lot.verdict().has(Cause.Kind.LIGHT_FALLS);
    }

    private static Stream<PlaceOutlook> elsewhere(List<PlaceOutlook> places, LotOutlook lot, Instant at) {
        double frost = lot.frost().limits().freezingCelsius() + ABOVE_FROST_KELVIN;
        return places.stream()
                .filter(place -> !place.place().id().equals(lot.place().id()))
                .filter(place -> coldest(place.bottles(), at) > frost);
    }

    private static double coldest(Track bottles, Instant at) {
        int until = bottles.indexAt(at.plus(PressureOutlook.AHEAD).getEpochSecond());
        double coldest = Double.POSITIVE_INFINITY;
        for (int i = bottles.indexAt(at.getEpochSecond()); i <= until; i++) {
            coldest = Math.min(coldest, bottles.valueAt(i));
        }
        return coldest;
    }
}
