package undercroft.report.page;

import java.io.Writer;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import undercroft.markup.Markup;
import undercroft.markup.PageHead;
import undercroft.markup.StyleSheet;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.Problem;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.EvidenceCourse;
import undercroft.outlook.lot.Stage;
import undercroft.plot.mark.Palette;
import undercroft.wording.ProblemWords;
import undercroft.wording.ShelfWords;

/**
 * The shelf as one page that stands alone: no scripts, nothing loaded from elsewhere, pictures drawn in it. It follows the
 * reader's light or dark, fits a phone, and prints a batch a page.
 */
public final class ShelfPage {
    private ShelfPage() {}

    /**
     * Writes the page as it grows, so that many batches take no more memory than one.
     *
     * @param courses what was seen of batches step by step, by their ids; a batch may have none
     */
    public static void write(ShelfWords words, Map<String, EvidenceCourse> courses, Writer out) {
        CellarOutlook outlook = words.outlook();
        Markup page = PageHead.begin(
                Markup.html(out),
                words.format().messages().locale(),
                words.of("report.title", outlook.cellar().name(), words.format().full(outlook.at())),
                StyleSheet.beside(ShelfPage.class, "page.css") + Palette.css());
        header(page, outlook, words);
        page.open("main");
        List<BatchOutlook> batches = inOrder(outlook);
        TasksSection.write(page, outlook, words);
        ShelfSection.write(page, outlook, batches, words);
        ServingsSection.write(page, outlook, words);
        SpellsSection.write(page, outlook, words);
        problems(page, outlook, words);
        if (!batches.isEmpty()) {
            page.open("section", "aria-labelledby", "batches")
                    .element("h2", words.of("report.batches.title"), "id", "batches");
            batches.forEach(
                    batch -> new BatchSection(page, outlook, batch, Optional.ofNullable(courses.get(batch.id())), words)
                            .write());
            page.close("section");
        }
        page.close("main");
        footer(page, words);
        page.close("body").close("html").end();
    }

    /** What wants attention first; among equals the order of the cellar, and at the end what is not on the shelf. */
    public static List<BatchOutlook> inOrder(CellarOutlook outlook) {
        return outlook.batches().stream()
                .sorted(Comparator.comparing(ShelfPage::isOffTheShelf)
                        .thenComparing(BatchOutlook::alert, Comparator.reverseOrder()))
                .toList();
    }

    private static boolean isOffTheShelf(BatchOutlook batch) {
        return batch.stage() == Stage.FILLING || batch.stage() == Stage.EMPTY;
    }

    private static void header(Markup page, CellarOutlook outlook, ShelfWords words) {
        page.open("header", "class", "masthead");
        page.open("h1").name(outlook.cellar().name()).close("h1");
        page.element("p", words.format().full(outlook.at()), "class", "instant");
        page.element("p", summary(outlook, words), "class", "summary");
        page.close("header");
    }

    private static String summary(CellarOutlook outlook, ShelfWords words) {
        int bottles =
                outlook.batches().stream().mapToInt(BatchOutlook::bottlesLeft).sum();
        long batches = outlook.batches().stream()
                .filter(batch -> batch.bottlesLeft() > 0)
                .count();
        if (batches == 0) {
            return words.of("report.summary.none");
        }
        String stock = words.of("report.summary.stock", words.format().bottles(bottles), batches);
        long acts = count(outlook, Alert.ACT);
        long watches = count(outlook, Alert.WATCH);
        List<String> parts = new ArrayList<>(List.of(stock));
        if (acts > 0) {
            parts.add(words.of("report.summary.act", acts));
        }
        if (watches > 0) {
            parts.add(words.of("report.summary.watch", watches));
        }
        return words.format().messages().sentence(String.join("; ", parts));
    }

    private static long count(CellarOutlook outlook, Alert alert) {
        return outlook.batches().stream()
                .filter(batch -> batch.alert() == alert)
                .count();
    }

    private static void problems(Markup page, CellarOutlook outlook, ShelfWords words) {
        if (outlook.problems().isEmpty()) {
            return;
        }
        page.open("section", "aria-labelledby", "problems")
                .element("h2", words.of("report.problems.title"), "id", "problems");
        page.open("ul", "class", "plain");
        ProblemWords said = new ProblemWords(words);
        for (Problem problem : outlook.problems()) {
            page.open("li").open("strong").text(said.where(problem)).close("strong");
            page.text(" " + said.what(problem)).close("li");
        }
        page.close("ul").close("section");
    }

    private static void footer(Markup page, ShelfWords words) {
        page.open("footer");
        page.element("p", words.of("report.footer"));
        page.element("p", words.of("caution.estimate"));
        page.close("footer");
    }
}
