package undercroft.picture;

import java.util.List;
import java.util.stream.LongStream;
import undercroft.outlook.serving.Chilling;
import undercroft.outlook.serving.ServingPlan;
import undercroft.plot.LineLayer;
import undercroft.plot.Plot;
import undercroft.plot.PlotStack;
import undercroft.plot.PointLayer;
import undercroft.plot.SpanLayer;
import undercroft.plot.ThresholdLayer;
import undercroft.plot.ValueAxis;
import undercroft.plot.mark.Dash;
import undercroft.plot.mark.MarkerShape;
import undercroft.plot.mark.Role;
import undercroft.plot.mark.Stroke;
import undercroft.series.Span;
import undercroft.series.TimeSeries;
import undercroft.wording.QuantityFormat;
import undercroft.wording.ShelfWords;

/** The temperature of the beer up to a pour: when it goes in, when it is cold and clears, when it comes out. */
public final class ChillPicture {
    private static final double HEADROOM_KELVIN = 2;

    private ChillPicture() {}

    /** Whether there is a course to draw. */
    public static boolean exists(ServingPlan plan) {
        return plan.chilling().trajectory().size() > 1;
    }

    /** The picture of a plan that {@link #exists}. */
    public static PlotStack of(ServingPlan plan, ShelfWords words) {
        QuantityFormat format = words.format();
        PictureUnits units = new PictureUnits(format.units());
        Chilling chilling = plan.chilling();
        TimeSeries trajectory = units.temperature(chilling.trajectory());
        long from = trajectory.firstTime();
        long serving = plan.serving().at().getEpochSecond();
        long until = serving + Math.max(900, (serving - from) / 30);
        double warmest = Math.max(chilling.fromCelsius(), chilling.wantedCelsius()) + HEADROOM_KELVIN;
        double coldest = Math.min(0, chilling.coldCelsius() - 1);
        ValueAxis axis =
                ValueAxis.fixed(units.temperature(coldest), units.temperature(warmest), units.temperatureUnit(), 1);
        Plot plot = Plot.of(words.of("picture.chill.beer", units.temperatureUnit()), axis);
        long cold = Math.min(chilling.coldFrom().getEpochSecond(), serving);
        long out = Math.min(plan.takeOut().getEpochSecond(), serving);
        if (chilling.clearingHours() > 0 && cold < out) {
            plot = plot.with(SpanLayer.of(new Span(cold, out), Role.READY, words.of("picture.chill.clearing")));
        }
        plot = plot.with(new ThresholdLayer(
                        units.temperature(chilling.coldCelsius()),
                        Role.ROOM,
                        words.of(
                                "picture.chill.cold",
                                chilling.coolingMedium(),
                                format.wholeCelsius(chilling.coldCelsius()))))
                .with(new ThresholdLayer(
                        units.temperature(chilling.wantedCelsius()),
                        Role.FAINT_INK,
                        words.of("picture.chill.glass", format.wholeCelsius(chilling.wantedCelsius()))))
                .with(new LineLayer(
                        trajectory,
                        Long.MAX_VALUE,
                        Stroke.of(Role.TEMPERATURE, 2).with(Dash.SOLID),
                        ""));
        plot = plot.with(new PointLayer(moments(plan, trajectory), MarkerShape.DIAMOND, Role.TEMPERATURE));
        PlotStack stack = PlotStack.of(
                        from, until, format.zone(), format.messages().locale())
                .with(plot);
        long second = words.at().getEpochSecond();
        return second >= from && second <= until ? stack.withNow(second, words.of("date.now")) : stack;
    }

    /** Into the cold, out of it, and the pour. */
    private static List<PointLayer.Point> moments(ServingPlan plan, TimeSeries trajectory) {
        long in = trajectory.timeAt(1);
        long out = Math.max(in, Math.min(plan.takeOut().getEpochSecond(), trajectory.lastTime()));
        return LongStream.of(in, out, trajectory.lastTime())
                .distinct()
                .mapToObj(at -> point(trajectory, at))
                .toList();
    }

    private static PointLayer.Point point(TimeSeries trajectory, long at) {
        double value = trajectory.interpolated(at);
        return new PointLayer.Point(at, value, value, value);
    }
}
