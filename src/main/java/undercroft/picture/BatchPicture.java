package undercroft.picture;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import undercroft.cellar.Reading;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.LotOutlook;
import undercroft.outlook.lot.PressureOutlook;
import undercroft.outlook.lot.TemperatureOutlook;
import undercroft.outlook.spell.SpellImpact;
import undercroft.outlook.spell.SpellReview;
import undercroft.plot.BandLayer;
import undercroft.plot.LineLayer;
import undercroft.plot.Plot;
import undercroft.plot.PlotStack;
import undercroft.plot.PointLayer;
import undercroft.plot.SpanLayer;
import undercroft.plot.StripLayer;
import undercroft.plot.ThresholdLayer;
import undercroft.plot.ValueAxis;
import undercroft.plot.mark.MarkerShape;
import undercroft.plot.mark.Role;
import undercroft.plot.mark.Stroke;
import undercroft.series.Span;
import undercroft.wording.FigureWords;
import undercroft.wording.ShelfWords;

/** A lot's four plots on one time axis: carbonation, pressure, temperature and light. The window and the report show it. */
public final class BatchPicture {
    private static final long LONGEST_LOG_STEP_SECONDS = 3 * 3600;
    private static final double HEAT_LIMIT_REACH_KELVIN = 12;
    private static final double WELL_COVERED = 0.95;
    private static final double HARDLY_COVERED = 0.01;

    private final BatchOutlook batch;
    private final LotOutlook lot;
    private final ShelfWords words;
    private final PictureUnits units;

    private BatchPicture(BatchOutlook batch, LotOutlook lot, ShelfWords words) {
        this.batch = batch;
        this.lot = lot;
        this.words = words;
        this.units = new PictureUnits(words.format().units());
    }

    /** The plots over a stretch of time, with a now-line at {@code now}. */
    public static PlotStack of(
            BatchOutlook batch, LotOutlook lot, ShelfWords words, Instant from, Instant until, Instant now) {
        BatchPicture picture = new BatchPicture(batch, lot, words);
        PlotStack stack = PlotStack.of(
                        from.getEpochSecond(),
                        until.getEpochSecond(),
                        words.format().zone(),
                        words.format().messages().locale())
                .with(picture.carbonation().withWeight(1.3))
                .with(picture.pressure().withWeight(1.3))
                .with(picture.temperature().withWeight(1.1));
        // What stood in the dark all the time has no light to plot.
        PlotStack lit =
                lot.light().dose().high() > 0 ? stack.with(picture.light(now).withWeight(0.5)) : stack;
        return lit.withNow(now.getEpochSecond(), words.of("date.now"));
    }

    private Plot carbonation() {
        Plot plot = Plot.of(
                words.of("picture.carbonation"),
                ValueAxis.auto("vol", 2).from(0).withSmallestSpan(2));
        Optional<Instant> early = lot.ready().early();
        if (early.isPresent() && lot.carbonation().trajectory().size() > 0) {
            int last = lot.carbonation().trajectory().size() - 1;
            long horizon = lot.carbonation().trajectory().timeAt(last);
            long late = lot.ready().late().map(Instant::getEpochSecond).orElse(horizon);
            Span window =
                    new Span(early.get().getEpochSecond(), Math.max(early.get().getEpochSecond(), late));
            plot = plot.with(SpanLayer.of(window, Role.READY, words.of("picture.ready")));
        }
        if (batch.batch().priming().targetVolumes().isPresent()) {
            double target = batch.batch().priming().targetVolumes().getAsDouble();
            plot = plot.with(new ThresholdLayer(
                    target,
                    Role.FAINT_INK,
                    words.of("picture.target", words.format().statedVolumes(target))));
        }
        return plot.with(new BandLayer(lot.carbonation().trajectory(), Role.CARBONATION, ""));
    }

    private Plot pressure() {
        PressureOutlook pressure = lot.pressure();
        Plot plot = Plot.of(words.of("picture.pressure", units.pressureUnit()), units.pressureAxis());
        for (SpellReview spell : ownSpells()) {
            plot = plot.with(SpanLayer.of(span(spell), spell.warm() ? Role.SPELL : Role.ROOM, ""));
        }
        plot = plot.with(new BandLayer(units.pressure(pressure.trajectory()), Role.PRESSURE, ""))
                .with(new ThresholdLayer(
                        units.pressure(pressure.workingPressureBar()),
                        Role.LIMIT,
                        words.of("picture.limit", words.format().barLimit(pressure.workingPressureBar()))));
        List<PointLayer.Point> gauges = gauges();
        return gauges.isEmpty() ? plot : plot.with(new PointLayer(gauges, MarkerShape.CIRCLE, Role.PRESSURE));
    }

    private List<PointLayer.Point> gauges() {
        List<PointLayer.Point> points = new ArrayList<>();
        for (Reading reading : batch.batch().readings()) {
            if (reading instanceof Reading.Gauge gauge
                    && gauge.lotId().equals(lot.lot().id())) {
                double value = units.pressure(gauge.gaugeBar());
                points.add(new PointLayer.Point(gauge.at().getEpochSecond(), value, value, value));
            }
        }
        return points;
    }

    private Plot temperature() {
        TemperatureOutlook temperature = lot.temperature();
        Plot plot = Plot.of(
                words.of(titleKey(temperature.coverage()), units.temperatureUnit(), measuredShare(temperature)),
                units.temperatureAxis());
        for (SpellReview spell : ownSpells()) {
            plot = plot.with(SpanLayer.of(span(spell), spell.warm() ? Role.SPELL : Role.ROOM, words(spell)));
        }
        if (!temperature.gaps().isEmpty()) {
            plot = plot.with(new SpanLayer(temperature.gaps(), Role.GAP, words.of("picture.gap")));
        }
        if (!temperature.air().isEmpty()) {
            plot = plot.with(new LineLayer(
                    units.temperature(temperature.air()),
                    LONGEST_LOG_STEP_SECONDS,
                    Stroke.of(Role.ROOM, 1).withOpacity(0.6),
                    words.of("picture.air")));
        }
        plot = plot.with(
                new BandLayer(units.temperature(temperature.bottles()), Role.TEMPERATURE, words.of("picture.bottles")));
        double heatLimit = lot.pressure().heatLimitCelsius();
        if (Double.isFinite(heatLimit)
                && heatLimit > 0
                && heatLimit < temperature.warmestCelsius() + HEAT_LIMIT_REACH_KELVIN) {
            String label = words.of("picture.heat-limit", words.format().celsiusLimit(heatLimit));
            plot = plot.with(new ThresholdLayer(units.temperature(heatLimit), Role.LIMIT, label));
        }
        return plot;
    }

    private static String titleKey(double coverage) {
        if (coverage >= WELL_COVERED) {
            return "plots.temperature.title";
        }
        return coverage < HARDLY_COVERED ? "plots.temperature.guessed" : "plots.temperature.measured";
    }

    /** Rounded down: 99.6 % measured is not all of it. */
    private String measuredShare(TemperatureOutlook temperature) {
        return words.format().number(Math.floor(100 * temperature.coverage()), 0);
    }

    private Plot light(Instant now) {
        Plot plot =
                Plot.of(words.of("picture.light"), ValueAxis.auto("", 2).from(0).withSmallestSpan(1.2));
        if (!lot.light().trajectory().isEmpty()) {
            plot = plot.with(new StripLayer(
                    lot.light().trajectory(),
                    now.getEpochSecond(),
                    Role.LIGHT,
                    new FigureWords(words).light(lot.light())));
        }
        return plot.with(new ThresholdLayer(1, Role.FAINT_INK, ""));
    }

    /** Spells that this lot felt. */
    private List<SpellReview> ownSpells() {
        return words.outlook().spells().stream()
                .filter(spell -> impact(spell).isPresent())
                .toList();
    }

    private Optional<SpellImpact> impact(SpellReview spell) {
        return spell.impact(batch.id(), lot.id());
    }

    private String words(SpellReview spell) {
        String kind = words.of(spell.warm() ? "picture.spell.warm" : "picture.spell.cold");
        double days = impact(spell).map(SpellImpact::shelfDaysCost).orElse(0.0);
        long rounded = Math.round(days);
        return rounded < 1 ? kind : words.of("picture.spell.cost", rounded, kind);
    }

    private static Span span(SpellReview spell) {
        return new Span(spell.from().getEpochSecond(), spell.until().getEpochSecond());
    }
}
