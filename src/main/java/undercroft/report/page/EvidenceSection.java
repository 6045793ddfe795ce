package undercroft.report.page;

import java.util.List;
import undercroft.markup.Markup;
import undercroft.outlook.lot.EvidenceCourse;
import undercroft.wording.EvidenceWords;
import undercroft.wording.ShelfWords;

/** What was seen of a batch, step by step, with what was foretold, what it changed, and what would sharpen it most. */
final class EvidenceSection {
    private EvidenceSection() {}

    static void write(Markup page, EvidenceCourse course, ShelfWords words) {
        EvidenceWords said = new EvidenceWords(words);
        page.open("details", "class", "course").element("summary", words.of("evidence.seen.title"));
        page.element("p", words.format().messages().sentence(said.change(course)));
        page.open("ul");
        for (EvidenceWords.Seen seen : said.seen(course)) {
            page.open("li").element("strong", seen.when());
            page.text(" " + String.join("; ", told(seen))).close("li");
        }
        page.close("ul");
        page.element("p", said.bands(course));
        page.element("h4", words.of("evidence.next.title"));
        List<EvidenceWords.Next> worth =
                said.next(course).stream().filter(EvidenceWords.Next::isWorthIt).toList();
        if (worth.isEmpty()) {
            page.element("p", words.of("evidence.next.none"));
        } else {
            page.open("ul");
            worth.forEach(next -> page.element("li", String.join("; ", next.what(), next.cost(), next.after())));
            page.close("ul");
        }
        page.close("details");
    }

    private static List<String> told(EvidenceWords.Seen seen) {
        return seen.foretold().isEmpty()
                ? List.of(seen.what(), seen.limit())
                : List.of(seen.what(), seen.foretold(), seen.limit());
    }
}
