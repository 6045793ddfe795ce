package undercroft.picture;

import undercroft.outlook.lot.StockOutlook;
import undercroft.plot.BandLayer;
import undercroft.plot.LineLayer;
import undercroft.plot.Plot;
import undercroft.plot.PlotStack;
import undercroft.plot.ValueAxis;
import undercroft.plot.mark.Role;
import undercroft.plot.mark.Stroke;
import undercroft.wording.ShelfWords;

/** Bottles left from capping to the last one. */
public final class StockPicture {
    private StockPicture() {}

    /** The steps so far, and how it goes on at the rate of the last weeks. */
    public static PlotStack of(StockOutlook stock, ShelfWords words) {
        Plot plot = Plot.of(
                words.of("picture.stock"), ValueAxis.auto("", 0).from(0).withSmallestSpan(Math.max(4, stock.start())));
        if (stock.ahead().isPresent()) {
            plot = plot.with(new BandLayer(stock.ahead().get(), Role.CARBONATION, ""));
        }
        plot = plot.with(new LineLayer(stock.trajectory(), Long.MAX_VALUE, Stroke.of(Role.CARBONATION, 2), ""));
        long from = stock.trajectory().firstTime();
        long second = words.at().getEpochSecond();
        long until = stock.ahead().map(band -> band.timeAt(band.size() - 1)).orElse(second + (second - from) / 8);
        long past = Math.max(from, second - 2 * (until - second));
        return PlotStack.of(
                        past,
                        Math.max(until, second + 86_400),
                        words.format().zone(),
                        words.format().messages().locale())
                .with(plot)
                .withNow(second, words.of("date.now"));
    }
}
