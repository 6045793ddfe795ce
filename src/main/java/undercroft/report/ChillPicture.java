package undercroft.report;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import java.util.stream.LongStream;
import undercroft.outlook.Chilling;
import undercroft.outlook.PourPlan;
import undercroft.plot.Dash;
import undercroft.plot.LineLayer;
import undercroft.plot.MarkerShape;
import undercroft.plot.Plot;
import undercroft.plot.PlotStack;
import undercroft.plot.PointLayer;
import undercroft.plot.Role;
import undercroft.plot.SpanLayer;
import undercroft.plot.Stroke;
import undercroft.plot.ThresholdLayer;
import undercroft.plot.ValueAxis;
import undercroft.quantity.UnitSystem;
import undercroft.series.Span;
import undercroft.series.TimeSeries;

/** The temperature of the beer up to a pour: when it goes in, when it is cold and clears, when it comes out. */
public final class ChillPicture {
    private static final double HEADROOM_KELVIN = 2;

    private ChillPicture() {}

    /** Whether there is a course to draw. */
    public static boolean exists(PourPlan plan) {
        return plan.chilling().map(chilling -> chilling.course().size() > 1).orElse(false);
    }

    /** The picture of a plan that {@link #exists}. */
    public static PlotStack of(PourPlan plan, ZoneId zone, UnitSystem system, Instant now) {
        PictureUnits units = new PictureUnits(system);
        Chilling chilling = plan.chilling().orElseThrow();
        TimeSeries course = units.temperature(chilling.course());
        long from = course.firstTime();
        long pour = plan.pour().at().getEpochSecond();
        long until = pour + Math.max(900, (pour - from) / 30);
        double warmest = Math.max(chilling.fromCelsius(), chilling.wantedCelsius()) + HEADROOM_KELVIN;
        double coldest = Math.min(0, chilling.coldCelsius() - 1);
        ValueAxis axis =
                ValueAxis.fixed(units.temperature(coldest), units.temperature(warmest), units.temperatureUnit(), 1);
        Plot plot = Plot.of("Beer, " + units.temperatureUnit(), axis);
        long cold = Math.min(chilling.coldFrom().getEpochSecond(), pour);
        long out = Math.min(plan.takeOut().getEpochSecond(), pour);
        if (chilling.clearingHours() > 0 && cold < out) {
            plot = plot.with(SpanLayer.of(new Span(cold, out), Role.READY, "upright, clearing"));
        }
        plot = plot.with(new ThresholdLayer(
                        units.temperature(chilling.coldCelsius()),
                        Role.ROOM,
                        chilling.surroundings().label() + " " + degrees(units, chilling.coldCelsius())))
                .with(new ThresholdLayer(
                        units.temperature(chilling.wantedCelsius()),
                        Role.FAINT_INK,
                        "in the glass " + degrees(units, chilling.wantedCelsius())))
                .with(new LineLayer(
                        course, Long.MAX_VALUE, Stroke.of(Role.TEMPERATURE, 2).with(Dash.SOLID), ""));
        plot = plot.with(new PointLayer(moments(plan, course), MarkerShape.DIAMOND, Role.TEMPERATURE));
        PlotStack stack = PlotStack.of(from, until, zone, Locale.UK).with(plot);
        long second = now.getEpochSecond();
        return second >= from && second <= until ? stack.withNow(second, "now") : stack;
    }

    /** Into the cold, out of it, and the pour. */
    private static List<PointLayer.Point> moments(PourPlan plan, TimeSeries course) {
        long in = course.timeAt(1);
        long out = Math.max(in, Math.min(plan.takeOut().getEpochSecond(), course.lastTime()));
        return LongStream.of(in, out, course.lastTime())
                .distinct()
                .mapToObj(at -> point(course, at))
                .toList();
    }

    private static PointLayer.Point point(TimeSeries course, long at) {
        double value = course.interpolated(at);
        return new PointLayer.Point(at, value, value, value);
    }

    private static String degrees(PictureUnits units, double celsius) {
        return PictureUnits.number(units.temperature(celsius), 0) + " " + units.temperatureUnit();
    }
}
