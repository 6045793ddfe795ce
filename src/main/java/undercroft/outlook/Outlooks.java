package undercroft.outlook;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import undercroft.calc.learning.BatchSummary;
import undercroft.calc.spell.YeastLimits;
import undercroft.catalogue.YeastStrain;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Place;
import undercroft.cellar.TemperatureSource;
import undercroft.outlook.climate.Climates;
import undercroft.outlook.climate.PlaceClimate;
import undercroft.outlook.climate.PlaceOutlook;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.EvidenceCalculator;
import undercroft.outlook.lot.EvidenceCourse;
import undercroft.outlook.lot.GaugeExperiment;
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

    /** Each takes as long as a dozen outlooks. */
    private static final int MOST_COURSES = 8;

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
        return of(cellar, temperatures, at, suppositions, new ShelfMemory());
    }

    /** The same with what was worked out before, which changes nothing but the time it takes. */
    public static CellarOutlook of(
            Cellar cellar,
            Map<String, TimeSeries> temperatures,
            Instant at,
            List<Supposition> suppositions,
            ShelfMemory memory) {
        return of(cellar, temperatures, at, suppositions, memory, soFar -> {});
    }

    /**
     * The same, told bit by bit. A batch is told for the last full ten minutes of the wall clock, or for what happened to it
     * since, so that it need not be worked out anew every second; one of which no bottle is left for the last thing that
     * happened to it.
     *
     * @param soFar gets the shelf as far as it is worked out, a few times while it is: batches with bottles come first
     */
    public static CellarOutlook of(
            Cellar told,
            Map<String, TimeSeries> temperatures,
            Instant at,
            List<Supposition> suppositions,
            ShelfMemory memory,
            Consumer<CellarOutlook> soFar) {
        Cellar cellar = SupposedShelf.moved(told, suppositions, at);
        Instant moment = BatchGrounds.moment(at);
        Map<String, PlaceClimate> places = SupposedShelf.climates(
                climates(cellar, temperatures, moment, memory.climates()), suppositions, at, cellar.zone());
        List<PlaceOutlook> placeOutlooks =
                places.values().stream().map(place -> place.outlook(moment)).toList();
        ShelfProgress progress = new ShelfProgress(cellar, at, placeOutlooks, soFar);
        Map<String, List<BatchSummary>> lessons = new Teaching(cellar, places, at, memory).lessons();
        progress.work(batch -> reckoned(
                BatchGrounds.of(cellar, batch, places, at, lessons.getOrDefault(batch.id(), List.of())),
                memory,
                suppositions.isEmpty()));
        memory.keepOnly(cellar.batches().stream().map(Batch::id));
        List<Problem> problems = problems(cellar, temperatures, at);
        problems.addAll(progress.problems());
        List<BatchOutlook> batches = progress.batches();
        List<ServingPlan> servings = new ServingPlans(cellar, places, at).of(batches);
        return new CellarOutlook(
                at,
                cellar,
                batches,
                placeOutlooks,
                new SpellReviews(places, at).of(batches),
                servings,
                Tasks.of(cellar, batches, servings, at),
                problems,
                List.of());
    }

    /**
     * How what was seen of a capped batch changed what is calculated of it. It takes as long as a dozen batches.
     *
     * @param memory where the climates are known from
     */
    public static EvidenceCourse evidence(
            Cellar cellar, Map<String, TimeSeries> temperatures, Instant at, String batchId, ShelfMemory memory) {
        Batch batch = cellar.batch(batchId);
        Map<String, PlaceClimate> places = climates(cellar, temperatures, BatchGrounds.moment(at), memory.climates());
        List<BatchSummary> earlier =
                new Teaching(cellar, places, at, memory).lessons().getOrDefault(batchId, List.of());
        BatchGrounds grounds = BatchGrounds.of(cellar, batch, places, at, earlier);
        return new EvidenceCalculator(grounds.alone(), grounds.places(), grounds.told(), earlier).course(batch);
    }

    /**
     * The same for every batch with bottles left of which something was seen, by its id: of the {@value #MOST_COURSES} seen last.
     *
     * @param outlook of the same cellar and temperatures
     */
    public static Map<String, EvidenceCourse> courses(
            Cellar cellar, Map<String, TimeSeries> temperatures, CellarOutlook outlook, ShelfMemory memory) {
        List<BatchOutlook> seen = outlook.batches().stream()
                .filter(batch -> batch.bottlesLeft() > 0 && batch.lastSeen().isPresent())
                .sorted(Comparator.comparing(
                                (BatchOutlook batch) -> batch.lastSeen().orElseThrow())
                        .reversed())
                .limit(MOST_COURSES)
                .toList();
        return seen.parallelStream()
                .collect(Collectors.toMap(
                        BatchOutlook::id, batch -> evidence(cellar, temperatures, outlook.at(), batch.id(), memory)));
    }

    /**
     * A batch's gauge experiment as far as it has come.
     *
     * @param lotId of which lot; the first with a gauge where it is not told
     */
    public static GaugeExperiment experiment(
            Cellar cellar, Map<String, TimeSeries> temperatures, Instant at, String batchId, Optional<String> lotId) {
        Map<String, PlaceClimate> places = climates(cellar, temperatures, at, new ShelfMemory().climates());
        return GaugeExperiment.of(cellar, places, at, cellar.batch(batchId), lotId);
    }

    private static ShelfProgress.Reckoned reckoned(BatchGrounds grounds, ShelfMemory memory, boolean real) {
        try {
            return ShelfProgress.Reckoned.of(real ? memory.outlook(grounds) : memory.supposed(grounds));
        } catch (InvalidInput fault) {
            return ShelfProgress.Reckoned.of(Problem.ofBatch(grounds.batchId(), fault));
        }
    }

    private static Map<String, PlaceClimate> climates(
            Cellar cellar, Map<String, TimeSeries> temperatures, Instant at, Climates known) {
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
        List<PlaceClimate> made = cellar.places().parallelStream()
                .map(place -> known.of(
                        place,
                        temperatures.getOrDefault(place.id(), TimeSeries.empty()),
                        limits(cellar, place),
                        gridFrom,
                        at,
                        horizon))
                .toList();
        Map<String, PlaceClimate> climates = new LinkedHashMap<>();
        made.forEach(climate -> climates.put(climate.place().id(), climate));
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
