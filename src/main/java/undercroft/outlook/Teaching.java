package undercroft.outlook;

import java.time.Instant;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import undercroft.calc.learning.BatchSummary;
import undercroft.calc.learning.Lessons;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.outlook.climate.PlaceClimate;

/**
 * Which batches teach which: those capped before it that were read, are like each other, and are not left out by the user. A batch
 * of which no bottle is left needs no forecast, and learns nothing any more.
 */
record Teaching(Cellar cellar, Map<String, PlaceClimate> places, Instant at, ShelfMemory memory) {
    /** Summaries of the batches that teach, the oldest first, by the id of the batch that learns. */
    Map<String, List<BatchSummary>> lessons() {
        List<Batch> capped = cellar.batches().stream()
                .filter(batch ->
                        batch.cappedAt().filter(when -> !when.isAfter(at)).isPresent())
                .sorted(Comparator.comparing(batch -> batch.cappedAt().orElseThrow()))
                .toList();
        int first = 0;
        while (first < capped.size() && capped.get(first).leftAt(at) == 0) {
            first++;
        }
        Map<String, Optional<BatchSummary>> teachers = teachers(capped, first).parallelStream()
                .collect(Collectors.toMap(
                        Batch::id, batch -> memory.lesson(BatchGrounds.ofReadings(cellar, batch, places, at))));
        Map<String, List<BatchSummary>> lessons = new HashMap<>();
        List<BatchSummary> earlier = new ArrayList<>();
        List<BatchSummary> atOnce = new ArrayList<>();
        Optional<Instant> last = Optional.empty();
        for (Batch batch : capped) {
            // What was capped at the same moment does not teach each other.
            if (!batch.cappedAt().equals(last)) {
                earlier.addAll(atOnce);
                atOnce.clear();
                last = batch.cappedAt();
            }
            if (batch.leftAt(at) > 0 && !earlier.isEmpty()) {
                lessons.put(batch.id(), Lessons.newest(earlier));
            }
            teachers.getOrDefault(batch.id(), Optional.empty())
                    .filter(summary -> !new Lessons(earlier, summary.keys()).isUnlike(summary))
                    .ifPresent(atOnce::add);
        }
        return lessons;
    }

    /** Those that may teach somebody who still learns: the newest before the first learner, and all that came after. */
    private List<Batch> teachers(List<Batch> capped, int firstLearner) {
        List<Batch> before =
                capped.subList(0, firstLearner).stream().filter(this::teaches).toList();
        List<Batch> all =
                new ArrayList<>(before.subList(Math.max(0, before.size() - Lessons.MOST_TEACHERS), before.size()));
        capped.subList(firstLearner, capped.size()).stream()
                .filter(this::teaches)
                .forEach(all::add);
        return all;
    }

    private boolean teaches(Batch batch) {
        return !batch.leaveOutOfLearning()
                && !batch.yeast().fermentsDextrins()
                && batch.readings().stream().anyMatch(reading -> !reading.at().isAfter(at))
                && cellar.settings()
                        .learnsSince()
                        .filter(since -> batch.cappedAt().orElseThrow().isBefore(since))
                        .isEmpty();
    }
}
