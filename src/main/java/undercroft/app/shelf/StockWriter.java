package undercroft.app.shelf;

import java.util.ArrayList;
import java.util.List;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.LotOutlook;
import undercroft.outlook.lot.StockOutlook;
import undercroft.wording.ShelfWords;

/** Writes where the bottles of a batch are and how fast they go. */
record StockWriter(CellarOutlook outlook, BatchOutlook batch, ShelfWords words) {
    BatchPage.Stock stock() {
        StockOutlook stock = StockOutlook.of(batch.batch(), outlook.at());
        List<String> lots = new ArrayList<>(batch.lots().stream().map(this::lot).toList());
        double kegged = batch.batch().packaging().keggedLitres();
        if (kegged > 0) {
            lots.add(words.of("stock.kegged", words.format().litres(kegged)));
        }
        return new BatchPage.Stock(stock, sentence(stock), lots);
    }

    private String lot(LotOutlook lot) {
        return words.of(
                "stock.lot.text",
                lot.left(),
                lot.lot().count(),
                words.name(outlook.cellar().bottleType(lot.lot().bottleTypeId())),
                lot.place().name());
    }

    private String sentence(StockOutlook stock) {
        if (stock.left() == 0) {
            return words.of("stock.sentence.gone");
        }
        String weeks = words.format().number(stock.weeks(), 0);
        if (stock.ahead().isEmpty()) {
            return words.of("stock.sentence.still", weeks);
        }
        String rate = words.of(
                "stock.sentence.rate",
                words.format().number(stock.perWeek().median(), 1),
                words.format().range(stock.perWeek(), 1),
                weeks);
        if (stock.end().isEmpty()) {
            return words.of("stock.sentence.years", rate);
        }
        String early = stock.earlyEnd().map(words::day).orElse("");
        String late = stock.lateEnd().map(words::day).orElseGet(() -> words.of("stock.sentence.far"));
        return words.of("stock.sentence.ends", rate, words.day(stock.end().get()), early, late);
    }
}
