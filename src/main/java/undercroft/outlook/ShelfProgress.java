package undercroft.outlook;

import java.time.Instant;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import java.util.stream.Stream;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.outlook.climate.PlaceOutlook;
import undercroft.outlook.lot.BatchOutlook;

/** The batches of a shelf on their way to its outlook: those with bottles first, in stretches that double. */
final class ShelfProgress {
    private static final int FIRST_STRETCH = 6;

    private final Cellar cellar;
    private final Instant at;
    private final List<PlaceOutlook> places;
    private final Consumer<CellarOutlook> soFar;
    private final Map<String, Reckoned> done = new HashMap<>();

    /** What came of a batch: its outlook, or what is wrong with it. */
    record Reckoned(Optional<BatchOutlook> outlook, Optional<Problem> problem) {
        static Reckoned of(BatchOutlook outlook) {
            return new Reckoned(Optional.of(outlook), Optional.empty());
        }

        static Reckoned of(Problem problem) {
            return new Reckoned(Optional.empty(), Optional.of(problem));
        }
    }

    ShelfProgress(Cellar cellar, Instant at, List<PlaceOutlook> places, Consumer<CellarOutlook> soFar) {
        this.cellar = cellar;
        this.at = at;
        this.places = places;
        this.soFar = soFar;
    }

    void work(Function<Batch, Reckoned> work) {
        List<Batch> waiting = cellar.batches().stream()
                .sorted(Comparator.comparing(batch -> batch.leftAt(at) == 0))
                .toList();
        int stretch = FIRST_STRETCH;
        for (int from = 0; from < waiting.size(); from += stretch, stretch *= 2) {
            soFar.accept(CellarOutlook.soFar(cellar, at, batches(), places, waiting.subList(from, waiting.size())));
            List<Batch> next = waiting.subList(from, Math.min(waiting.size(), from + stretch));
            List<Reckoned> reckoned = next.parallelStream().map(work).toList();
            for (int i = 0; i < next.size(); i++) {
                done.put(next.get(i).id(), reckoned.get(i));
            }
        }
    }

    /** What is worked out, in the cellar's order. */
    List<BatchOutlook> batches() {
        return inOrder().flatMap(each -> each.outlook().stream()).toList();
    }

    List<Problem> problems() {
        return inOrder().flatMap(each -> each.problem().stream()).toList();
    }

    private Stream<Reckoned> inOrder() {
        return cellar.batches().stream()
                .filter(batch -> done.containsKey(batch.id()))
                .map(batch -> done.get(batch.id()));
    }
}
