package undercroft.report.page;

import java.util.List;
import undercroft.markup.Markup;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.FigureKind;
import undercroft.outlook.lot.LotOutlook;
import undercroft.wording.FigureWords;
import undercroft.wording.ShelfWords;

/** The five figures a person asks for first; each of the lot that stands for the batch, as in report.json. */
final class KeyFigures {
    private static final List<FigureKind> SHOWN = List.of(
            FigureKind.CARBONATION,
            FigureKind.PRESSURE,
            FigureKind.HEAT_LIMIT,
            FigureKind.LIGHT,
            FigureKind.BEST_BEFORE);

    private KeyFigures() {}

    static void write(Markup page, BatchOutlook batch, ShelfWords words) {
        FigureWords said = new FigureWords(words);
        page.open("dl", "class", "figures");
        for (FigureKind figure : SHOWN) {
            LotOutlook lot = batch.lotFor(figure);
            page.open("div").element("dt", said.label(figure)).element("dd", said.value(lot, figure), "class", "value");
            page.element("dd", said.detail(lot, figure), "class", "faint").close("div");
        }
        page.close("dl");
    }
}
