package undercroft.app.evidence;

import java.util.List;
import undercroft.calc.conditioning.Explanation;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.EvidenceCourse;
import undercroft.picture.EvidencePicture;
import undercroft.plot.PlotStack;
import undercroft.wording.EvidenceWords;
import undercroft.wording.Headlines;
import undercroft.wording.ShelfWords;

/**
 * The evidence of a batch in words.
 *
 * @param change how the heat limit changed by what was seen
 * @param explanations with their chances before and now
 * @param next what one more reading would teach, the best first
 */
public record EvidencePage(
        String batchId,
        String name,
        String title,
        String headline,
        String change,
        List<Chance> explanations,
        List<EvidenceWords.Seen> seen,
        List<EvidenceWords.Next> next,
        PlotStack picture) {
    public EvidencePage {
        explanations = List.copyOf(explanations);
        seen = List.copyOf(seen);
        next = List.copyOf(next);
    }

    /** An explanation with its chances, 0 to 1, and the same in words. */
    public record Chance(EvidenceWords.Line line, double before, double now) {}

    static EvidencePage of(BatchOutlook batch, EvidenceCourse course, ShelfWords words) {
        EvidenceWords said = new EvidenceWords(words);
        Explanation before = course.now().evidence().before();
        Explanation now = course.now().evidence().now();
        List<EvidenceWords.Line> lines = said.lines(before, now);
        return new EvidencePage(
                batch.id(),
                batch.batch().name(),
                words.of("evidence.page.title", batch.batch().name()),
                new Headlines(words).of(batch),
                said.change(course),
                List.of(
                        new Chance(lines.get(0), before.asWrittenDown(), now.asWrittenDown()),
                        new Chance(lines.get(1), before.moreSugar(), now.moreSugar()),
                        new Chance(lines.get(2), before.moreToFerment(), now.moreToFerment())),
                said.seen(course),
                said.next(course),
                EvidencePicture.of(course, words));
    }

    /** Whether one more reading would cut the range by a fifth. */
    public boolean canBeSharpened() {
        return next.stream().anyMatch(EvidenceWords.Next::isWorthIt);
    }
}
