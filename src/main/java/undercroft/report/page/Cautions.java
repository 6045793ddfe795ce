package undercroft.report.page;

import java.util.List;
import undercroft.markup.Markup;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.Cause;
import undercroft.wording.ShelfWords;

/** What to heed with bottles that are, or may come, near their working pressure. */
final class Cautions {
    private static final List<String> ACT =
            List.of("caution.act.eyes", "caution.act.cool", "caution.act.knocks", "caution.act.people");
    private static final List<String> WATCH = List.of("caution.watch.cool", "caution.watch.handle");

    /** A step of this takes about a bar off (solubility of CO2 between 5 and 30 °C, worked out with this model). */
    private static final double PER_BAR_KELVIN = 10;

    private Cautions() {}

    static void write(Markup page, BatchOutlook batch, ShelfWords words) {
        Alert alert = batch.verdict().alert(Cause.Topic.PRESSURE);
        if (alert == Alert.CLEAR) {
            return;
        }
        page.open("div", "class", "caution " + AlertMark.cssName(alert), "role", "note");
        page.element("h4", words.of(alert == Alert.ACT ? "caution.act.title" : "caution.watch.title"));
        page.open("ul");
        (alert == Alert.ACT ? ACT : WATCH)
                .forEach(key -> page.element(
                        "li",
                        words.of(
                                key,
                                words.format().kelvin(PER_BAR_KELVIN),
                                words.format().bar(1))));
        page.close("ul").close("div");
    }
}
