package undercroft.picture;

import java.time.Instant;
import java.time.ZoneId;
import java.util.Locale;
import undercroft.outlook.lot.StockOutlook;
import undercroft.plot.BandLayer;
import undercroft.plot.LineLayer;
import undercroft.plot.Plot;
import undercroft.plot.PlotStack;
import undercroft.plot.ValueAxis;
import undercroft.plot.mark.Role;
import undercroft.plot.mark.Stroke;

/** Bottles left from capping to the last one. */
public final class StockPicture {
    private StockPicture() {}

    /** The steps so far, and how it goes on at the rate of the last weeks. */
    public static PlotStack of(StockOutlook stock, ZoneId zone, Instant now) {
        Plot plot = Plot.of("Bottles left", ValueAxis.auto("", 0).from(0).withSmallestSpan(Math.max(4, stock.start())));
        if (stock.ahead().isPresent()) {
            plot = plot.with(new BandLayer(stock.ahead().get(), Role.CARBONATION, ""));
        }
        plot = plot.with(new LineLayer(stock.trajectory(), Long.MAX_VALUE, Stroke.of(Role.CARBONATION, 2), ""));
        long from = stock.trajectory().firstTime();
        long second = now.getEpochSecond();
        long until = stock.ahead().map(band -> band.timeAt(band.size() - 1)).orElse(second + (second - from) / 8);
        long past = Math.max(from, second - 2 * (until - second));
        return PlotStack.of(past, Math.max(until, second + 86_400), zone, Locale.UK)
                .with(plot)
                .withNow(second, "now");
    }
}
