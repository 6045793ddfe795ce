package undercroft.app.shelf;

import java.util.List;
import java.util.Locale;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.Cause;
import undercroft.outlook.lot.FigureKind;
import undercroft.outlook.lot.LotOutlook;
import undercroft.wording.FigureWords;
import undercroft.wording.ShelfWords;
import undercroft.wording.Whys;

/** The key figures of a lot, each with its grounds. */
record BatchFigures(BatchOutlook batch, LotOutlook lot, ShelfWords words) {
    private static final List<FigureKind> SHOWN = List.of(
            FigureKind.CARBONATION,
            FigureKind.PRESSURE,
            FigureKind.HEAT_LIMIT,
            FigureKind.LIGHT,
            FigureKind.BEST_BEFORE);

    List<BatchPage.Figure> all() {
        return SHOWN.stream().map(this::figure).toList();
    }

    private BatchPage.Figure figure(FigureKind figure) {
        FigureWords said = new FigureWords(words);
        return new BatchPage.Figure(
                figure.name().toLowerCase(Locale.ROOT).replace('_', '-'),
                said.label(figure),
                said.value(lot, figure),
                said.detail(lot, figure),
                alert(figure),
                new Whys(words).of(batch, lot, figure));
    }

    private Alert alert(FigureKind figure) {
        return switch (figure) {
            case PRESSURE, HEAT_LIMIT -> lot.verdict().alert(Cause.Topic.PRESSURE);
            case LIGHT -> lot.verdict().alert(Cause.Topic.LIGHT);
            case BEST_BEFORE -> lot.verdict().alert(Cause.Topic.AGE);
            case CARBONATION, READY -> lot.verdict().alert(Cause.Topic.YEAST);
        };
    }
}
