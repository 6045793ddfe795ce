package undercroft.view.shelf;

import java.time.Instant;
import javafx.scene.Node;
import javafx.scene.control.Label;
import javafx.scene.layout.Region;
import javafx.scene.layout.VBox;
import undercroft.app.shelf.BatchPage;
import undercroft.outlook.CellarOutlook;
import undercroft.picture.StockPicture;
import undercroft.view.kit.Looks;
import undercroft.view.kit.PlotMenu;
import undercroft.view.kit.PlotsView;
import undercroft.view.kit.WindowContext;
import undercroft.wording.ShelfWords;

/** Bottles left over time, how fast they go, and where they stand. */
final class StockView {
    private static final double HEIGHT = 170;

    private final WindowContext context;

    StockView(WindowContext context) {
        this.context = context;
    }

    Node of(BatchPage.Stock stock) {
        CellarOutlook outlook = context.forecasts().outlookProperty().get();
        PlotsView plots = new PlotsView(
                context.messages(),
                second -> ShelfWords.of(outlook, context.messages()).dayAndTime(Instant.ofEpochSecond(second)));
        plots.setId("stock-plot");
        plots.setMinHeight(HEIGHT);
        plots.setPrefHeight(HEIGHT);
        plots.setPalette(Looks.palette(context.dark().get()));
        PlotMenu.on(plots, context, context.messages(), () -> stock.sentence());
        plots.show(StockPicture.of(stock.outlook(), ShelfWords.of(outlook, context.messages())), false);
        Label sentence = new Label(stock.sentence());
        sentence.setId("stock-sentence");
        sentence.setWrapText(true);
        sentence.setMinHeight(Region.USE_PREF_SIZE);
        Label lots = new Label(String.join("\n", stock.lots()));
        lots.getStyleClass().add("faint");
        lots.setMinHeight(Region.USE_PREF_SIZE);
        VBox part = new VBox(6, sentence, lots, plots);
        part.getStyleClass().add("stock");
        return part;
    }
}
