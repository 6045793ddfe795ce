package undercroft.outlook;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import undercroft.catalogue.Listed;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.outlook.climate.PlaceOutlook;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.LotOutlook;
import undercroft.outlook.serving.ServingChoice;
import undercroft.outlook.serving.ServingChoices;
import undercroft.outlook.serving.ServingPlan;
import undercroft.outlook.spell.SpellReview;
import undercroft.outlook.task.Task;
import undercroft.quantity.InvalidInput;

/**
 * The whole shelf at an instant.
 *
 * @param pending batches that are not worked out yet; none but while a shelf is looked at for the first time, and then
 *     spells, servings and tasks are left out too, since they would be told of a part
 */
public record CellarOutlook(
        Instant at,
        Cellar cellar,
        List<BatchOutlook> batches,
        List<PlaceOutlook> places,
        List<SpellReview> spells,
        List<ServingPlan> servings,
        List<Task> tasks,
        List<Problem> problems,
        List<Batch> pending) {
    public CellarOutlook {
        batches = List.copyOf(batches);
        places = List.copyOf(places);
        spells = List.copyOf(spells);
        servings = List.copyOf(servings);
        tasks = List.copyOf(tasks);
        problems = List.copyOf(problems);
        pending = List.copyOf(pending);
    }

    /** A shelf of which no more is known than what was told: nothing is worked out yet. */
    public static CellarOutlook pending(Cellar cellar, Instant at) {
        return soFar(cellar, at, List.of(), List.of(), cellar.batches());
    }

    /** The same, which also tells what was left out of the temperatures it was made from. */
    public CellarOutlook telling(List<InvalidInput> leftOut) {
        List<Problem> all = new ArrayList<>(problems);
        leftOut.stream().map(Problem::ofFile).forEach(all::add);
        return new CellarOutlook(at, cellar, batches, places, spells, servings, tasks, all, pending);
    }

    static CellarOutlook soFar(
            Cellar cellar, Instant at, List<BatchOutlook> batches, List<PlaceOutlook> places, List<Batch> pending) {
        return new CellarOutlook(at, cellar, batches, places, List.of(), List.of(), List.of(), List.of(), pending);
    }

    /** What a batch wants, in the order of {@link #tasks}. */
    public List<Task> tasksOf(BatchOutlook batch) {
        return tasks.stream().filter(task -> task.batchId().equals(batch.id())).toList();
    }

    /**
     * Every batch that might be served at a time, best first.
     *
     * @param bottles wanted, 1 or more
     */
    public List<ServingChoice> choices(Instant when, int bottles) {
        return new ServingChoices(cellar, batches, spells, at, when, bottles).ranked();
    }

    /** The coolest other place for a lot, if there is one. */
    public Optional<Destination> coolestFor(LotOutlook lot) {
        return Destination.coolest(places, lot, at);
    }

    /** The other place to offer first for a lot, if there is one. */
    public Optional<Destination> offeredFor(LotOutlook lot) {
        return Destination.offered(places, lot, at);
    }

    /** What a place would be for a lot. */
    public Destination destination(String placeId, LotOutlook lot) {
        return places.stream()
                .filter(place -> place.place().id().equals(placeId))
                .map(place -> Destination.of(place, lot, at))
                .findFirst()
                .orElseThrow();
    }

    public BatchOutlook batch(String id) {
        Listed.find(cellar.batches(), id, "batch");
        return batches.stream()
                .filter(batch -> batch.id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
