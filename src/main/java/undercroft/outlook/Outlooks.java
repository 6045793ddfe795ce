package undercroft.outlook;

import java.time.Instant;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Consumer;
import undercroft.calc.spell.YeastLimits;
import undercroft.catalogue.YeastStrain;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Place;
import undercroft.cellar.TemperatureSource;
import undercroft.outlook.climate.PlaceClimate;
import undercroft.outlook.lot.BatchCalculator;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.serving.ServingPlan;
import undercroft.outlook.serving.ServingPlans;
import undercroft.outlook.spell.SpellReviews;
import undercroft.outlook.task.Tasks;
import undercroft.quantity.InvalidInput;
import undercroft.series.TimeSeries;

/** The one way from a cellar and its temperatures to its outlook. Pure: same input, same outlook. */
public final class Outlooks {
    private static final long DAY = 86_400;
    private static final long HORIZON_SECONDS = 365 * DAY;

    private Outlooks() {}

    /**
     * The shelf at an instant.
     *
     * @param temperatures logged air of the places by place id, °C; what comes after {@code at} is not looked at
     */
    public static CellarOutlook of(Cellar cellar, Map<String, TimeSeries> temperatures, Instant at) {
        return of(cellar, temperatures, at, List.of());
    }

    /** The shelf as it would be if something happened; moves stand in the cellar of the outlook. */
    public static CellarOutlook of(
            Cellar cellar, Map<String, TimeSeries> temperatures, Instant at, List<Supposition> suppositions) {
        return of(cellar, temperatures, at, suppositions, new OutlookMemory(), batch -> {});
    }

    /**
     * The same with what was worked out of that cellar before, of which as much is used again as still holds.
     *
     * @param whenKnown is told each batch as it comes, of any thread, those with bottles left first
     */
    public static CellarOutlook of(
            Cellar told,
            Map<String, TimeSeries> temperatures,
            Instant at,
            List<Supposition> suppositions,
            OutlookMemory memory,
            Consumer<BatchOutlook> whenKnown) {
        Cellar cellar = SupposedShelf.moved(told, suppositions, at);
        Map<String, PlaceClimate> places =
                SupposedShelf.climates(climates(cellar, temperatures, at, memory), suppositions, at, cellar.zone());
        BatchCalculator calculator = new BatchCalculator(cellar, places, at);
        List<Problem> problems = problems(cellar, temperatures, at);
        List<BatchOutlook> batches = new ArrayList<>();
        Map<String, Result> results = new ConcurrentHashMap<>();
        for (boolean withBottles : new boolean[] {true, false}) {
            cellar.batches().parallelStream()
                    .filter(batch -> batch.leftAt(at) > 0 == withBottles)
                    .forEach(batch -> results.put(batch.id(), result(memory, calculator, batch, whenKnown)));
        }
        for (Batch batch : cellar.batches()) {
            Result result = results.get(batch.id());
            result.outlook().ifPresent(batches::add);
            result.problem().ifPresent(problems::add);
        }
        memory.keepOnly(cellar.batches());
        List<ServingPlan> servings = new ServingPlans(cellar, places, at).of(batches);
        return new CellarOutlook(
                at,
                cellar,
                batches,
                places.values().stream().map(place -> place.outlook(at)).toList(),
                new SpellReviews(places, at).of(batches),
                servings,
                Tasks.of(cellar, batches, servings, at),
                problems);
    }

    private record Result(Optional<BatchOutlook> outlook, Optional<Problem> problem) {}

    private static Result result(
            OutlookMemory memory, BatchCalculator calculator, Batch batch, Consumer<BatchOutlook> whenKnown) {
        try {
            BatchOutlook made = memory.batch(calculator, batch);
            whenKnown.accept(made);
            return new Result(Optional.of(made), Optional.empty());
        } catch (InvalidInput fault) {
            return new Result(Optional.empty(), Optional.of(Problem.ofBatch(batch.id(), fault)));
        }
    }

    private static Map<String, PlaceClimate> climates(
            Cellar cellar, Map<String, TimeSeries> temperatures, Instant at, OutlookMemory memory) {
        long now = at.getEpochSecond();
        long earliest = cellar.batches().stream()
                .flatMap(batch -> batch.cappedAt().stream())
                .mapToLong(Instant::getEpochSecond)
                .filter(capped -> capped <= now)
                .min()
                .orElse(now - DAY);
        long hour = PlaceClimate.STEP_SECONDS;
        long gridFrom = Math.floorDiv(Math.min(earliest, now - 5 * DAY), hour) * hour;
        long horizon = Math.floorDiv(now, hour) * hour + HORIZON_SECONDS;
        Map<String, PlaceClimate> climates = new LinkedHashMap<>();
        for (Place place : cellar.places()) {
            TimeSeries raw = temperatures.getOrDefault(place.id(), TimeSeries.empty());
            climates.put(place.id(), memory.climate(place, raw, limits(cellar, place), gridFrom, at, horizon));
        }
        return climates;
    }

    private static YeastLimits limits(Cellar cellar, Place place) {
        return cellar.batches().stream()
                .filter(batch -> batch.lots().stream()
                        .flatMap(lot -> lot.stays().stream())
                        .anyMatch(stay -> stay.placeId().equals(place.id())))
                .map(batch -> YeastLimits.of(batch.yeast().strain()))
                .reduce(YeastLimits::and)
                .orElseGet(() -> YeastLimits.of(YeastStrain.ALE));
    }

    private static List<Problem> problems(Cellar cellar, Map<String, TimeSeries> temperatures, Instant at) {
        List<Problem> problems = new ArrayList<>();
        for (Place place : cellar.places()) {
            if (place.temperature() instanceof TemperatureSource.Logged) {
                TimeSeries log = temperatures
                        .getOrDefault(place.id(), TimeSeries.empty())
                        .between(Long.MIN_VALUE / 2, at.getEpochSecond() + 1);
                if (log.isEmpty()) {
                    problems.add(Problem.ofPlace(Problem.Kind.NO_TEMPERATURES, place.id(), Optional.empty()));
                } else if (log.lastTime() < at.getEpochSecond() - 2 * DAY) {
                    problems.add(Problem.ofPlace(
                            Problem.Kind.LOG_ENDED, place.id(), Optional.of(Instant.ofEpochSecond(log.lastTime()))));
                }
            }
        }
        return problems;
    }
}
