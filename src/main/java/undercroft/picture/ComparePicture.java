package undercroft.picture;

import java.util.List;
import java.util.function.Function;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.LotOutlook;
import undercroft.plot.BandLayer;
import undercroft.plot.LineLayer;
import undercroft.plot.Plot;
import undercroft.plot.PlotStack;
import undercroft.plot.ValueAxis;
import undercroft.plot.mark.Dash;
import undercroft.plot.mark.Role;
import undercroft.plot.mark.Stroke;
import undercroft.series.Band;
import undercroft.series.TimeSeries;
import undercroft.wording.ShelfWords;

/**
 * Two or three lots on the same plots: carbonation, pressure, temperature. Here a colour means a batch, which its name at
 * the end of its line says too; what is later than now is broken. With three, only the middle of each is drawn.
 */
public final class ComparePicture {
    /** A batch with the lot that stands for it. */
    public record Compared(BatchOutlook batch, LotOutlook lot) {
        private long capped() {
            return Season.second(batch.batch().cappedAt().orElseThrow());
        }
    }

    private static final List<Role> ROLES = List.of(Role.CARBONATION, Role.AGE, Role.PRESSURE);
    private static final int MOST_BANDS = 2;
    private static final long NO_GAP = 40L * 86_400;
    private static final long AHEAD = 60L * 86_400;
    private static final long MARGIN = 2L * 86_400;
    private static final double WIDTH = 1.8;

    private final List<Compared> compared;
    private final ShelfWords words;
    private final boolean fromCapping;
    private final PictureUnits units;

    private ComparePicture(List<Compared> compared, ShelfWords words, boolean fromCapping) {
        this.compared = compared;
        this.words = words;
        this.fromCapping = fromCapping;
        this.units = new PictureUnits(words.format().units());
    }

    /** The colour of each, in order. */
    public static Role role(int index) {
        return ROLES.get(index);
    }

    /**
     * The plots.
     *
     * @param compared one to three, all capped
     * @param fromCapping whether the days since each was capped lie over each other, or the dates
     */
    public static PlotStack of(List<Compared> compared, ShelfWords words, boolean fromCapping) {
        return new ComparePicture(compared, words, fromCapping).stack();
    }

    private long now() {
        return Season.second(words.at());
    }

    /** Later by so much than it was, to lie over the first. */
    private long shift(Compared each) {
        return fromCapping ? compared.get(0).capped() - each.capped() : 0;
    }

    private PlotStack stack() {
        long from = compared.stream()
                .mapToLong(each -> each.capped() + shift(each))
                .min()
                .orElse(now());
        long until =
                compared.stream().mapToLong(each -> now() + shift(each)).max().orElse(now()) + AHEAD;
        PlotStack stack = PlotStack.of(
                        from - MARGIN,
                        until,
                        words.format().zone(),
                        words.format().messages().locale())
                .with(plot(
                        words.of("compare.plot.carbonation"),
                        ValueAxis.auto("vol", 2).from(0).withSmallestSpan(2),
                        lot -> lot.carbonation().trajectory()))
                .with(plot(
                        words.of("compare.plot.pressure", units.pressureUnit()),
                        units.pressureAxis(),
                        lot -> units.pressure(lot.pressure().trajectory())))
                .with(plot(
                        words.of("plots.temperature.title", units.temperatureUnit()),
                        units.temperatureAxis(),
                        lot -> units.temperature(lot.temperature().bottles())));
        return fromCapping
                ? stack.withDaysFrom(from, words.of("compare.day"))
                : stack.withNow(now(), words.of("date.now"));
    }

    private Plot plot(String title, ValueAxis axis, Function<LotOutlook, Band> quantity) {
        Plot plot = Plot.of(title, axis);
        for (int i = 0; i < compared.size(); i++) {
            Compared each = compared.get(i);
            Role role = role(i);
            Band band = quantity.apply(each.lot());
            Band past = part(band, Long.MIN_VALUE, now(), shift(each));
            TimeSeries ahead = part(band, now(), Long.MAX_VALUE, shift(each)).medianSeries();
            String name = each.batch().batch().name();
            if (past.size() > 0) {
                plot = compared.size() <= MOST_BANDS
                        ? plot.with(new BandLayer(past, role, ahead.isEmpty() ? name : ""))
                        : plot.with(new LineLayer(
                                past.medianSeries(), NO_GAP, Stroke.of(role, WIDTH), ahead.isEmpty() ? name : ""));
            }
            if (!ahead.isEmpty()) {
                plot = plot.with(
                        new LineLayer(ahead, NO_GAP, Stroke.of(role, WIDTH).with(Dash.LONG), name));
            }
        }
        return plot;
    }

    private static Band part(Band band, long from, long until, long shift) {
        int first = 0;
        while (first < band.size() && band.timeAt(first) < from) {
            first++;
        }
        int last = first;
        while (last < band.size() && band.timeAt(last) <= until) {
            last++;
        }
        int size = last - first;
        long[] times = new long[size];
        double[][] levels = new double[5][size];
        for (int i = 0; i < size; i++) {
            times[i] = band.timeAt(first + i) + shift;
            levels[0][i] = band.lowAt(first + i);
            levels[1][i] = band.lowerQuartileAt(first + i);
            levels[2][i] = band.medianAt(first + i);
            levels[3][i] = band.upperQuartileAt(first + i);
            levels[4][i] = band.highAt(first + i);
        }
        return Band.of(times, levels);
    }
}
