package undercroft.picture;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.TreeMap;
import undercroft.cellar.Reading;
import undercroft.outlook.lot.EvidenceCourse;
import undercroft.outlook.lot.LotOutlook;
import undercroft.plot.BandLayer;
import undercroft.plot.LineLayer;
import undercroft.plot.Plot;
import undercroft.plot.PlotStack;
import undercroft.plot.PointLayer;
import undercroft.plot.ThresholdLayer;
import undercroft.plot.ValueAxis;
import undercroft.plot.mark.MarkerShape;
import undercroft.plot.mark.Role;
import undercroft.plot.mark.Stroke;
import undercroft.series.TimeSeries;
import undercroft.wording.ShelfWords;

/** A lot before anything was seen of its batch, grey, and with all that was, in colour; below, the heat limit step by step. */
public final class EvidencePicture {
    private static final long MARGIN_SECONDS = 86_400;
    private static final long AHEAD_SECONDS = 45L * 86_400;
    private static final double WIDTH = 2;

    private final EvidenceCourse course;
    private final ShelfWords words;
    private final PictureUnits units;

    private EvidencePicture(EvidenceCourse course, ShelfWords words) {
        this.course = course;
        this.words = words;
        this.units = new PictureUnits(words.format().units());
    }

    /** The plots, from capping to some weeks ahead. */
    public static PlotStack of(EvidenceCourse course, ShelfWords words) {
        return new EvidencePicture(course, words).stack();
    }

    private PlotStack stack() {
        long capped = course.now().lot().stays().get(0).from().getEpochSecond();
        PlotStack stack = PlotStack.of(
                        capped - MARGIN_SECONDS,
                        Math.max(now(), capped) + AHEAD_SECONDS,
                        words.format().zone(),
                        words.format().messages().locale())
                .with(carbonation())
                .with(pressure());
        Optional<Plot> limit = heatLimit(capped);
        return (limit.isPresent() ? stack.with(limit.get().withWeight(0.7)) : stack)
                .withNow(now(), words.of("date.now"));
    }

    private long now() {
        return words.at().getEpochSecond();
    }

    private Plot carbonation() {
        Plot plot = Plot.of(
                words.of("evidence.plot.carbonation"),
                ValueAxis.auto("vol", 2).from(0).withSmallestSpan(2));
        if (isSeen()) {
            plot = plot.with(new BandLayer(
                    course.before().carbonation().trajectory(), Role.FAINT_INK, words.of("evidence.plot.before")));
        }
        return plot.with(new BandLayer(
                course.now().carbonation().trajectory(),
                Role.CARBONATION,
                isSeen() ? words.of("evidence.plot.now") : ""));
    }

    private boolean isSeen() {
        return !course.steps().isEmpty();
    }

    private Plot pressure() {
        LotOutlook lot = course.now();
        double working = lot.pressure().workingPressureBar();
        Plot plot = Plot.of(words.of("evidence.plot.strongest", units.pressureUnit()), units.pressureAxis());
        if (isSeen()) {
            plot = plot.with(new BandLayer(
                    units.pressure(course.before().pressure().strongestTrajectory()),
                    Role.FAINT_INK,
                    words.of("evidence.plot.before")));
        }
        plot = plot.with(new BandLayer(
                        units.pressure(lot.pressure().strongestTrajectory()),
                        Role.PRESSURE,
                        isSeen() ? words.of("evidence.plot.now") : ""))
                .with(new ThresholdLayer(
                        units.pressure(working),
                        Role.LIMIT,
                        words.of("picture.limit", words.format().barLimit(working))));
        List<PointLayer.Point> gauges = gauges();
        return gauges.isEmpty() ? plot : plot.with(new PointLayer(gauges, MarkerShape.CIRCLE, Role.PRESSURE));
    }

    private List<PointLayer.Point> gauges() {
        List<PointLayer.Point> points = new ArrayList<>();
        for (EvidenceCourse.Step step : course.steps()) {
            for (EvidenceCourse.Foretold each : step.read()) {
                if (each.reading() instanceof Reading.Gauge gauge) {
                    double value = units.pressure(gauge.gaugeBar());
                    points.add(new PointLayer.Point(step.at().getEpochSecond(), value, value, value));
                }
            }
        }
        return points;
    }

    /** Steps from reading to reading; none where any of them has no limit. */
    private Optional<Plot> heatLimit(long capped) {
        double limit = course.before().pressure().heatLimitCelsius();
        boolean allKnown = course.steps().stream().allMatch(step -> Double.isFinite(step.heatLimitCelsius()));
        if (!isSeen() || !allKnown || !Double.isFinite(limit)) {
            return Optional.empty();
        }
        TreeMap<Long, Double> steps = new TreeMap<>();
        steps.put(capped, limit);
        for (EvidenceCourse.Step step : course.steps()) {
            long at = step.at().getEpochSecond();
            steps.put(Math.max(steps.lastKey() + 1, at - 1), limit);
            limit = step.heatLimitCelsius();
            steps.put(Math.max(steps.lastKey() + 1, at), limit);
        }
        steps.put(Math.max(steps.lastKey() + 1, now()), limit);
        TimeSeries.Builder line = new TimeSeries.Builder();
        steps.forEach(line::add);
        return Optional.of(
                Plot.of(words.of("evidence.plot.heat-limit", units.temperatureUnit()), units.temperatureAxis())
                        .with(new LineLayer(
                                units.temperature(line.build()), Long.MAX_VALUE, Stroke.of(Role.LIMIT, WIDTH), "")));
    }
}
