package undercroft.outlook;

import java.time.Instant;
import java.time.ZoneId;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;
import undercroft.calc.spell.Spell;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.Sugar;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Draw;
import undercroft.cellar.Reading;
import undercroft.cellar.Settings;
import undercroft.cellar.Stay;
import undercroft.outlook.climate.PlaceClimate;
import undercroft.outlook.lot.BatchCalculator;
import undercroft.series.Track;

/**
 * All that the outlook of a batch is worked out from.
 *
 * @param newestEvent the last thing told of it that has happened by then
 * @param finished whether its last bottle is gone by then
 * @param climates of the places its lots stood in
 */
record BatchDependencies(
        Batch batch,
        Instant at,
        Instant newestEvent,
        boolean finished,
        Settings settings,
        ZoneId zone,
        List<BottleType> bottles,
        List<Sugar> sugars,
        Map<String, PlaceClimate> climates) {
    private static final long HOUR = PlaceClimate.STEP_SECONDS;

    static BatchDependencies of(BatchCalculator calculator, Batch batch) {
        Cellar cellar = calculator.cellar();
        Instant at = calculator.at();
        Map<String, PlaceClimate> climates = new LinkedHashMap<>();
        batch.lots().stream()
                .flatMap(lot -> lot.stays().stream())
                .map(Stay::placeId)
                .distinct()
                .forEach(placeId -> climates.put(placeId, calculator.places().get(placeId)));
        return new BatchDependencies(
                batch,
                at,
                newestEvent(batch, at),
                batch.cappedAt().isPresent() && batch.leftAt(at) == 0,
                cellar.settings(),
                cellar.zone(),
                cellar.ownBottles(),
                cellar.ownSugars(),
                climates);
    }

    private static Instant newestEvent(Batch batch, Instant at) {
        Stream<Instant> lots = batch.lots().stream()
                .flatMap(lot -> Stream.concat(
                        lot.stays().stream().map(Stay::from), lot.draws().stream().map(Draw::at)));
        Stream<Instant> readings = batch.readings().stream().map(Reading::at);
        return Stream.of(batch.cappedAt().stream(), lots, readings)
                .flatMap(each -> each)
                .filter(each -> !each.isAfter(at))
                .max(Instant::compareTo)
                .orElse(Instant.MIN);
    }

    /** Whether what was worked out from these is what would be worked out from the others. */
    boolean stillHoldFor(BatchDependencies asked) {
        return newestEvent.equals(asked.newestEvent)
                && settings.equals(asked.settings)
                && zone.equals(asked.zone)
                && batch.equals(asked.batch)
                && bottles.equals(asked.bottles)
                && sugars.equals(asked.sugars)
                && isSameForBottles(asked);
    }

    private boolean isSameForBottles(BatchDependencies asked) {
        if (finished && asked.finished) {
            return isSamePast(asked);
        }
        return isSameHour(asked) && isSameClimate(asked);
    }

    private boolean isSameHour(BatchDependencies asked) {
        return Math.floorDiv(at.getEpochSecond(), HOUR) == Math.floorDiv(asked.at.getEpochSecond(), HOUR);
    }

    /** Climates are shared and never changed, so that another object is another climate. */
    @SuppressWarnings("ReferenceEquality")
    private boolean isSameClimate(BatchDependencies asked) {
        return climates.entrySet().stream().allMatch(each -> asked.climates.get(each.getKey()) == each.getValue());
    }

    /** What came after the last bottle went is of no concern to a finished batch. */
    private boolean isSamePast(BatchDependencies asked) {
        long from = batch.cappedAt().orElseThrow().getEpochSecond();
        long until = newestEvent.getEpochSecond();
        return climates.entrySet().stream()
                .allMatch(each -> isSamePast(each.getValue(), asked.climates.get(each.getKey()), from, until));
    }

    private static boolean isSamePast(PlaceClimate one, PlaceClimate other, long from, long until) {
        if (!one.place().equals(other.place()) || !spells(one, from, until).equals(spells(other, from, until))) {
            return false;
        }
        Track first = one.bottles();
        Track second = other.bottles();
        for (long time = from; time < until; time += HOUR) {
            int i = first.indexAt(time);
            int j = second.indexAt(time);
            if (first.valueAt(i) != second.valueAt(j) || first.spreadAt(i) != second.spreadAt(j)) {
                return false;
            }
        }
        return true;
    }

    private static List<Spell> spells(PlaceClimate climate, long from, long until) {
        return climate.spells().stream()
                .filter(spell -> spell.span().fromInclusive() < until && spell.span().untilExclusive() > from)
                .toList();
    }
}
