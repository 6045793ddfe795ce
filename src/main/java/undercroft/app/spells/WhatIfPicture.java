package undercroft.app.spells;

import java.util.Locale;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.WhatIf;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.LotOutlook;
import undercroft.plot.BandLayer;
import undercroft.plot.Dash;
import undercroft.plot.LineLayer;
import undercroft.plot.Plot;
import undercroft.plot.PlotStack;
import undercroft.plot.Role;
import undercroft.plot.Stroke;
import undercroft.plot.ThresholdLayer;
import undercroft.plot.ValueAxis;
import undercroft.quantity.Pressure;
import undercroft.quantity.Temperature;
import undercroft.quantity.UnitSystem;
import undercroft.series.Band;
import undercroft.series.TimeSeries;
import undercroft.wording.Texts;

/** Pressure and temperature of a lot as they would be, beside the median as it is. */
public record WhatIfPicture(WhatIf answer, WhatIf.Change change) {
    private static final long BACK_SECONDS = 7 * 86_400;
    private static final long AHEAD_SECONDS = 45 * 86_400;
    private static final long NO_GAP = 40L * 86_400;

    private interface Shown {
        double of(double value);
    }

    public PlotStack stack() {
        LotOutlook is = lot(answer.today());
        LotOutlook would = lot(answer.supposed());
        long now = answer.today().at().getEpochSecond();
        boolean us = answer.today().cellar().settings().units() == UnitSystem.US;
        Shown pressure = bar -> us ? Pressure.ofBar(bar).psi() : bar;
        Shown temperature = celsius -> us ? Temperature.ofCelsius(celsius).fahrenheit() : celsius;
        String barUnit = us ? "psi" : "bar";
        String degrees = us ? "°F" : "°C";
        Plot pressures = plot(
                        Texts.of("whatif.plot.pressure", change.batchName(), barUnit),
                        ValueAxis.auto(barUnit, us ? 0 : 2).from(0).withSmallestSpan(pressure.of(2)),
                        shown(would.pressure().trajectory(), pressure),
                        shown(is.pressure().trajectory(), pressure),
                        Role.PRESSURE)
                .with(new ThresholdLayer(
                        pressure.of(change.workingPressureBar()), Role.LIMIT, Texts.of("whatif.plot.limit")));
        Plot temperatures = plot(
                Texts.of("whatif.plot.temperature", degrees),
                ValueAxis.auto(degrees, 1).withSmallestSpan(us ? 14 : 8),
                shown(would.temperature().bottles(), temperature),
                shown(is.temperature().bottles(), temperature),
                Role.TEMPERATURE);
        return PlotStack.of(
                        now - BACK_SECONDS,
                        now + AHEAD_SECONDS,
                        answer.today().cellar().zone(),
                        Locale.UK)
                .with(pressures)
                .with(temperatures)
                .withNow(now, Texts.of("words.when.now"));
    }

    private static Plot plot(String title, ValueAxis axis, Band would, Band is, Role role) {
        TimeSeries.Builder median = new TimeSeries.Builder();
        for (int i = 0; i < is.size(); i++) {
            median.add(is.timeAt(i), is.medianAt(i));
        }
        Stroke stroke = Stroke.of(Role.ROOM, 1.5).with(Dash.DASHED);
        return Plot.of(
                title,
                axis,
                new BandLayer(would, role, Texts.of("whatif.plot.then")),
                new LineLayer(median.build(), NO_GAP, stroke, Texts.of("whatif.plot.today")));
    }

    private LotOutlook lot(CellarOutlook outlook) {
        BatchOutlook batch = outlook.batch(change.batchId());
        return batch.lots().stream()
                .filter(each -> each.lot().id().equals(change.lotId()))
                .findFirst()
                .orElseGet(batch::mainLot);
    }

    private static Band shown(Band band, Shown shown) {
        long[] times = new long[band.size()];
        double[][] levels = new double[5][band.size()];
        for (int i = 0; i < times.length; i++) {
            times[i] = band.timeAt(i);
            levels[0][i] = shown.of(band.lowAt(i));
            levels[1][i] = shown.of(band.lowerQuartileAt(i));
            levels[2][i] = shown.of(band.medianAt(i));
            levels[3][i] = shown.of(band.upperQuartileAt(i));
            levels[4][i] = shown.of(band.highAt(i));
        }
        return Band.of(times, levels);
    }
}
