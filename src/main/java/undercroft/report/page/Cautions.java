package undercroft.report.page;

import undercroft.markup.Markup;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.LotOutlook;
import undercroft.wording.HandlingWords;
import undercroft.wording.ShelfWords;

/** What to heed with bottles that are, or may come, near their working pressure. */
final class Cautions {
    private Cautions() {}

    static void write(Markup page, BatchOutlook batch, ShelfWords words) {
        Alert danger = batch.verdict().danger();
        if (danger == Alert.CLEAR) {
            return;
        }
        LotOutlook lot = HandlingWords.gravest(batch);
        HandlingWords said = new HandlingWords(words);
        page.open("div", "class", "caution " + AlertMark.cssName(danger), "role", "note");
        page.element("h4", said.title(lot));
        page.open("ul");
        said.cautions(lot).forEach(caution -> page.element("li", caution));
        page.close("ul").close("div");
    }
}
