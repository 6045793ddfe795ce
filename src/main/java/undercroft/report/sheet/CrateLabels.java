package undercroft.report.sheet;

import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import undercroft.cellar.PrintedLabel;
import undercroft.markup.Markup;
import undercroft.markup.PageHead;
import undercroft.markup.StyleSheet;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.wording.QuantityFormat;

/** Labels to print, cut and put on crates. */
public final class CrateLabels {
    /** Up to here each bottle has a box of its own; above, every box stands for five. */
    private static final int MOST_BOXES = 60;

    /** Boxes in three rows of the usual size. */
    private static final int THREE_ROWS = 45;

    private static final int FIVE = 5;
    private static final int GAUGE_LINES = 3;
    private static final int LONG_NAME = 26;

    private final Markup page;
    private final QuantityFormat words;

    private CrateLabels(Markup page, QuantityFormat words) {
        this.page = page;
        this.words = words;
    }

    /** Sheets of labels as a page that prints, and what is to be remembered of them. */
    public record Sheets(String page, PrintedLabel printed) {}

    /**
     * Labels for all crates of a batch, each with a code that leads to the batch on the published page; where there is no
     * page, its space is for notes.
     *
     * @param atCapping the shelf at the moment the batch was capped, which is what a label tells of
     * @param bottlesInCrate how many a crate takes, 1 to 100
     * @param today the batch as it is when they are printed; a limit that is higher than at capping is not written
     * @param at when they are printed
     */
    public static Sheets of(
            CellarOutlook atCapping,
            Optional<BatchOutlook> today,
            String batchId,
            int bottlesInCrate,
            LabelPaper paper,
            Instant at,
            QuantityFormat words) {
        BatchOutlook batch = atCapping.batch(batchId);
        double limit = Stream.concat(Stream.of(batch), today.stream())
                .mapToDouble(known -> known.heatLimitLot().pressure().heatLimitCelsius())
                .min()
                .orElseThrow();
        PrintedLabel printed = new PrintedLabel(at, limit);
        List<CrateLabel> labels = CrateLabel.of(atCapping, batch, bottlesInCrate, printed, words);
        Markup page = PageHead.begin(
                words.messages().locale(),
                words.of("label.title", batch.batch().name()),
                StyleSheet.beside(CrateLabels.class, "label.css") + paper.css());
        CrateLabels sheets = new CrateLabels(page, words);
        for (int i = 0; i < labels.size(); i += paper.labels()) {
            page.open("div", "class", "sheet");
            labels.subList(i, Math.min(labels.size(), i + paper.labels())).forEach(sheets::label);
            page.close("div");
        }
        return new Sheets(PageHead.end(page), printed);
    }

    private void label(CrateLabel label) {
        page.open("section", "class", "label").open("div", "class", "top").open("div", "class", "what");
        page.open("h1", "class", label.batch().length() > LONG_NAME ? "long" : "short")
                .name(label.batch())
                .close("h1");
        page.element("p", label.beer(), "class", "beer").element("p", label.bottles(), "class", "faint");
        page.open("dl", "class", "figures");
        figure("label.first-taste", label.firstTaste(), label.firstTasteRange());
        figure("label.best-before", label.bestBefore(), words.of("label.best-before.stored"));
        figure("label.heat-limit", label.heatLimit(), label.heatLimitDay());
        page.close("dl").element("p", label.recipe(), "class", "recipe").close("div");
        corner(label);
        page.close("div");
        tally(label.count());
        gauge();
        page.open("div", "class", "caution");
        page.element("p", words.of("label.caution.burst"), "class", "strong");
        page.element("p", words.of("label.caution.doubt"));
        page.element("p", words.of("caution.estimate"), "class", "faint")
                .close("div")
                .close("section");
    }

    private void figure(String name, String value, String detail) {
        page.open("div").element("dt", words.of(name)).element("dd", value, "class", "value");
        page.element("dd", detail, "class", "faint").close("div");
    }

    /** The code, or room to write. */
    private void corner(CrateLabel label) {
        page.open("div", "class", "corner");
        if (label.link().isPresent()) {
            QrDrawing.draw(page, label.link().get(), words.of("label.link"));
            page.element("p", words.of("label.link"), "class", "strong");
        } else {
            page.open("div", "class", "notes")
                    .element("p", words.of("label.notes"), "class", "faint")
                    .close("div");
        }
        page.element("p", words.of("label.made", label.made()), "class", "faint")
                .close("div");
    }

    private void tally(int bottles) {
        boolean fives = bottles > MOST_BOXES;
        page.open("p", "class", "tally-head").open("b");
        page.text(words.of(fives ? "label.tally.fives" : "label.tally")).closeInline("b");
        page.element("span", words.of("label.tally.legend"), "class", "faint").close("p");
        page.open("ol", "class", fives ? "tally fives" : bottles > THREE_ROWS ? "tally many" : "tally");
        for (int bottle = fives ? FIVE : 1; bottle < bottles + (fives ? FIVE : 1); bottle += fives ? FIVE : 1) {
            int last = Math.min(bottle, bottles);
            page.open("li");
            for (int i = 0; fives && i < last - bottle + FIVE; i++) {
                page.open("i").closeInline("i");
            }
            page.text(Integer.toString(last)).close("li");
        }
        page.close("ol");
    }

    private void gauge() {
        page.open("p", "class", "gauge").element("b", words.of("label.gauge"));
        for (int i = 0; i < GAUGE_LINES; i++) {
            page.element("span", words.of("label.gauge.date")).element("u", "").element("span", words.pressureUnit());
            page.element("u", "");
        }
        page.close("p");
    }
}
