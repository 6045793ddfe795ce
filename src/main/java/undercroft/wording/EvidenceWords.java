package undercroft.wording;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import undercroft.calc.conditioning.Explanation;
import undercroft.cellar.Draw;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.Evidence;

/** What was seen of a batch and what may explain it, in words: the same on the page of a batch and in a report. */
public record EvidenceWords(ShelfWords words) {
    /**
     * A line of what may explain a batch.
     *
     * @param before the chance before anything was read of it or burst
     * @param now the chance with all that was seen
     */
    public record Line(String what, String before, String now) {}

    /** Bottles that burst, and the question why, or what was answered. */
    public record Question(Evidence.Burst burst, String asked, Optional<String> answered) {}

    /** What may explain the batch, each with its chance; none while nothing was read and nothing burst. */
    public List<Line> lines(BatchOutlook batch) {
        if (!isSeen(batch)) {
            return List.of();
        }
        Explanation before = batch.mainLot().evidence().before();
        Explanation now = batch.mainLot().evidence().now();
        return List.of(
                line("evidence.as-written-down", before.asWrittenDown(), now.asWrittenDown()),
                line("evidence.more-sugar", before.moreSugar(), now.moreSugar()),
                line("evidence.more-to-ferment", before.moreToFerment(), now.moreToFerment()));
    }

    private Line line(String key, double before, double now) {
        return new Line(
                words.of(key), words.format().percent(before), words.format().percent(now));
    }

    /** Each burst with its question, the newest first. */
    public List<Question> questions(BatchOutlook batch) {
        List<Question> questions = new ArrayList<>();
        if (batch.isCapped()) {
            for (Evidence.Burst burst : batch.mainLot().evidence().bursts()) {
                questions.add(
                        0,
                        new Question(
                                burst,
                                words.of("evidence.burst.asked", burst.bottles(), words.day(burst.at())),
                                burst.cause().map(cause -> words.of("evidence.burst.answered", cause))));
            }
        }
        return questions;
    }

    private static boolean isSeen(BatchOutlook batch) {
        return batch.isCapped()
                && (!batch.batch().readings().isEmpty()
                        || batch.batch().lots().stream()
                                .flatMap(lot -> lot.draws().stream())
                                .anyMatch(draw -> draw.fate() == Draw.Fate.BURST));
    }
}
