package undercroft.plot;

import java.time.Instant;
import java.time.ZoneId;
import java.util.List;
import java.util.Locale;
import undercroft.plot.mark.MarkerShape;
import undercroft.plot.mark.Role;
import undercroft.plot.mark.Stroke;
import undercroft.series.Band;
import undercroft.series.Span;
import undercroft.series.TimeSeries;

/** A stack of made-up plots that uses every layer. */
public final class SamplePlots {
    static final long FROM = Instant.parse("2026-09-01T00:00:00Z").getEpochSecond();
    static final long DAY = 86_400;
    static final long UNTIL = FROM + 100 * DAY;
    static final long NOW = FROM + 70 * DAY;
    static final long GAP_BEGIN = FROM + 40 * DAY;
    static final long GAP_END = FROM + 44 * DAY;

    private SamplePlots() {}

    static Band band(double level, double spread) {
        int size = 101;
        long[] times = new long[size];
        double[][] levels = new double[5][size];
        double[] quantiles = {-1, -0.4, 0, 0.4, 1};
        for (int i = 0; i < size; i++) {
            times[i] = FROM + i * DAY;
            for (int k = 0; k < 5; k++) {
                levels[k][i] = level * (1 - Math.exp(-i / 15.0)) + 0.5 + quantiles[k] * spread;
            }
        }
        return Band.of(times, levels);
    }

    static TimeSeries temperature() {
        TimeSeries.Builder series = new TimeSeries.Builder();
        for (long time = FROM; time < NOW; time += 3600) {
            if (time <= GAP_BEGIN || time >= GAP_END) {
                series.add(time, 17 + 3 * Math.sin(time / 50_000.0));
            }
        }
        return series.build();
    }

    static TimeSeries light() {
        return TimeSeries.of(
                new long[] {FROM + 2 * DAY, FROM + 10 * DAY, FROM + 11 * DAY, FROM + 50 * DAY},
                new double[] {0.1, 2.5, 0.1, 0.2});
    }

    public static PlotStack stack(String name) {
        List<PointLayer.Point> readings = List.of(
                new PointLayer.Point(FROM + 10 * DAY, 1.4, 1.2, 1.6), new PointLayer.Point(FROM + 20 * DAY, 2, 2, 2));
        Span spell = new Span(FROM + 20 * DAY, FROM + 30 * DAY);
        Span ready = new Span(FROM + 25 * DAY, FROM + 60 * DAY);
        return PlotStack.of(FROM, UNTIL, ZoneId.of("Europe/Berlin"), Locale.UK)
                .with(Plot.of(
                        name,
                        ValueAxis.auto("vol", 2),
                        SpanLayer.of(ready, Role.READY, "ready window"),
                        new BandLayer(band(2, 0.2), Role.CARBONATION, name),
                        new PointLayer(readings, MarkerShape.DIAMOND, Role.INK)))
                .with(Plot.of(
                        "Pressure, bar gauge",
                        ValueAxis.auto("bar", 1).from(0),
                        new BandLayer(band(2.2, 0.3), Role.PRESSURE, ""),
                        new ThresholdLayer(4.7, Role.LIMIT, "working limit 4.7")))
                .with(Plot.of(
                        "Temperature, °C",
                        ValueAxis.auto("°C", 1),
                        SpanLayer.of(spell, Role.SPELL, "warm spell"),
                        SpanLayer.of(new Span(GAP_BEGIN, GAP_END), Role.GAP, "gap"),
                        new LineLayer(temperature(), 2 * 3600, Stroke.of(Role.TEMPERATURE, 1.3), "")))
                .with(Plot.of(
                                "Light",
                                ValueAxis.fixed(0, 3, "klx h", 1).unlabelled(),
                                new StripLayer(light(), NOW, Role.LIGHT, "kept dark"))
                        .withWeight(0.4))
                .withNow(NOW, "now");
    }
}
