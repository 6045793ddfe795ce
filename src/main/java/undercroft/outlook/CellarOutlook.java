package undercroft.outlook;

import java.time.Instant;
import java.util.List;
import undercroft.catalogue.Listed;
import undercroft.cellar.Cellar;

/** The whole shelf at an instant. */
public record CellarOutlook(
        Instant at,
        Cellar cellar,
        List<BatchOutlook> batches,
        List<PlaceOutlook> places,
        List<SpellReview> spells,
        List<ServingPlan> servings,
        List<Task> tasks,
        List<Problem> problems) {
    public CellarOutlook {
        batches = List.copyOf(batches);
        places = List.copyOf(places);
        spells = List.copyOf(spells);
        servings = List.copyOf(servings);
        tasks = List.copyOf(tasks);
        problems = List.copyOf(problems);
    }

    public BatchOutlook batch(String id) {
        Listed.find(cellar.batches(), id, "batch");
        return batches.stream()
                .filter(batch -> batch.id().equals(id))
                .findFirst()
                .orElseThrow();
    }
}
