package undercroft.report;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Comparator;
import java.util.List;
import undercroft.markup.Markup;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.Problem;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.Stage;
import undercroft.plot.mark.Palette;
import undercroft.wording.ProblemWords;

/**
 * The shelf as one page that stands alone: no scripts, nothing loaded from elsewhere, pictures drawn in it. It follows the
 * reader's light or dark, fits a phone, and prints a batch a page.
 */
public final class ShelfPage {
    private ShelfPage() {}

    public static String of(CellarOutlook outlook) {
        PageWords words = PageWords.of(outlook);
        Markup page = Markup.html();
        String title = outlook.cellar().name() + ", " + words.full(outlook.at());
        page.open("html", "lang", "en", "xmlns", "http://www.w3.org/1999/xhtml");
        page.open("head").empty("meta", "charset", "utf-8");
        page.empty("meta", "name", "viewport", "content", "width=device-width, initial-scale=1");
        page.empty("meta", "name", "color-scheme", "content", "light dark");
        page.element("title", title);
        page.style(resource("page.css") + Palette.css()).close("head");
        page.open("body");
        header(page, outlook, words);
        page.open("main");
        List<BatchOutlook> batches = inOrder(outlook);
        TasksSection.write(page, outlook, words);
        ShelfSection.write(page, outlook, batches, words);
        ServingsSection.write(page, outlook, words);
        SpellsSection.write(page, outlook, words);
        problems(page, outlook, words);
        if (!batches.isEmpty()) {
            page.open("section", "aria-labelledby", "batches").element("h2", "Batch by batch", "id", "batches");
            batches.forEach(batch -> new BatchSection(page, outlook, batch, words).write());
            page.close("section");
        }
        page.close("main");
        footer(page);
        return page.close("body").close("html").finished();
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

    private static void header(Markup page, CellarOutlook outlook, PageWords words) {
        page.open("header", "class", "masthead");
        page.open("h1").name(outlook.cellar().name()).close("h1");
        page.element("p", words.full(outlook.at()), "class", "instant");
        page.element("p", summary(outlook, words), "class", "summary");
        page.close("header");
    }

    private static String summary(CellarOutlook outlook, PageWords words) {
        int bottles =
                outlook.batches().stream().mapToInt(BatchOutlook::bottlesLeft).sum();
        long batches = outlook.batches().stream()
                .filter(batch -> batch.bottlesLeft() > 0)
                .count();
        if (batches == 0) {
            return "No bottles on the shelf.";
        }
        String stock = words.words().format().bottles(bottles) + " of " + PageWords.count((double) batches, "beer")
                + " on the shelf; ";
        long acts = count(outlook, Alert.ACT);
        long watches = count(outlook, Alert.WATCH);
        if (acts + watches == 0) {
            return stock + "all is well.";
        }
        String act = acts == 0 ? "" : acts + (acts == 1 ? " wants" : " want") + " action now";
        String watch = watches == 0 ? "" : watches + (watches == 1 ? " wants" : " want") + " watching";
        return stock + act + (act.isEmpty() || watch.isEmpty() ? "" : ", ") + watch + ".";
    }

    private static long count(CellarOutlook outlook, Alert alert) {
        return outlook.batches().stream()
                .filter(batch -> batch.alert() == alert)
                .count();
    }

    private static void problems(Markup page, CellarOutlook outlook, PageWords words) {
        if (outlook.problems().isEmpty()) {
            return;
        }
        page.open("section", "aria-labelledby", "problems").element("h2", "What is missing", "id", "problems");
        page.open("ul", "class", "plain");
        ProblemWords said = new ProblemWords(words.words());
        for (Problem problem : outlook.problems()) {
            page.open("li").open("strong").text(said.where(problem)).close("strong");
            page.text(" " + said.what(problem)).close("li");
        }
        page.close("ul").close("section");
    }

    private static void footer(Markup page) {
        page.open("footer");
        page.element(
                "p",
                "Every figure is reckoned from what was written down about the batch and from the temperatures logged where"
                        + " its bottles stood, over many equally likely beers; the middle one is shown with the range that"
                        + " nine in ten fall into.");
        page.element(
                "p",
                "These are estimates and no permission: what the maker of a bottle says, local codes and your own eyes go"
                        + " first.");
        page.close("footer");
    }

    private static String resource(String name) {
        try (InputStream stream = ShelfPage.class.getResourceAsStream(name)) {
            return new String(stream.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
