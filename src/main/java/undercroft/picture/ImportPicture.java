package undercroft.picture;

import undercroft.plot.LineLayer;
import undercroft.plot.Plot;
import undercroft.plot.PlotStack;
import undercroft.plot.mark.Role;
import undercroft.plot.mark.Stroke;
import undercroft.series.MinMaxDownsampler;
import undercroft.series.TimeSeries;
import undercroft.wording.QuantityFormat;

/** What a place has logged already, and what a file would add. */
public final class ImportPicture {
    private static final long LONGEST_STEP_SECONDS = 3 * 3600L;
    private static final long LEAST_SECONDS = 3600;
    private static final long BIN_SECONDS = 900;

    private ImportPicture() {}

    /** Both as lines over all their time; {@code imported} has samples, {@code before} may be empty. */
    public static PlotStack of(TimeSeries before, TimeSeries imported, QuantityFormat format) {
        PictureUnits units = new PictureUnits(format.units());
        long from = before.isEmpty() ? imported.firstTime() : Math.min(before.firstTime(), imported.firstTime());
        long until = before.isEmpty() ? imported.lastTime() : Math.max(before.lastTime(), imported.lastTime());
        Plot plot = Plot.of(format.of("form.import.plot", units.temperatureUnit()), units.temperatureAxis());
        if (!before.isEmpty()) {
            plot = plot.with(line(before, units, Stroke.of(Role.FAINT_INK, 1.2), format.of("form.import.plot.there")));
        }
        plot = plot.with(line(imported, units, Stroke.of(Role.ROOM, 1), format.of("form.import.plot.new")));
        return PlotStack.of(
                        from,
                        Math.max(until, from + LEAST_SECONDS),
                        format.zone(),
                        format.messages().locale())
                .with(plot);
    }

    private static LineLayer line(TimeSeries celsius, PictureUnits units, Stroke stroke, String label) {
        TimeSeries thin = MinMaxDownsampler.extremes(celsius, BIN_SECONDS);
        return new LineLayer(units.temperature(thin), LONGEST_STEP_SECONDS, stroke, label);
    }
}
