package undercroft.picture;

import undercroft.outlook.CellarOutlook;
import undercroft.outlook.WhatIf;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.LotOutlook;
import undercroft.plot.BandLayer;
import undercroft.plot.LineLayer;
import undercroft.plot.Plot;
import undercroft.plot.PlotStack;
import undercroft.plot.ThresholdLayer;
import undercroft.plot.ValueAxis;
import undercroft.plot.mark.Dash;
import undercroft.plot.mark.Role;
import undercroft.plot.mark.Stroke;
import undercroft.series.Band;
import undercroft.wording.Messages;

/** Pressure and temperature of a lot as they would be, beside the median as it is. */
public record WhatIfPicture(WhatIf answer, WhatIf.Change change, Messages messages) {
    private static final long BACK_SECONDS = 7 * 86_400;
    private static final long AHEAD_SECONDS = 45 * 86_400;
    private static final long NO_GAP = 40L * 86_400;

    public PlotStack stack() {
        LotOutlook is = lot(answer.today());
        LotOutlook would = lot(answer.supposed());
        long now = answer.today().at().getEpochSecond();
        PictureUnits units = new PictureUnits(answer.today().cellar().settings().units());
        Plot pressures = plot(
                        messages.of("whatif.plot.pressure", change.batchName(), units.pressureUnit()),
                        units.pressureAxis(),
                        units.pressure(would.pressure().trajectory()),
                        units.pressure(is.pressure().trajectory()),
                        Role.PRESSURE)
                .with(new ThresholdLayer(
                        units.pressure(change.workingPressureBar()), Role.LIMIT, messages.of("whatif.plot.limit")));
        Plot temperatures = plot(
                messages.of("whatif.plot.temperature", units.temperatureUnit()),
                units.temperatureAxis(),
                units.temperature(would.temperature().bottles()),
                units.temperature(is.temperature().bottles()),
                Role.TEMPERATURE);
        return PlotStack.of(
                        now - BACK_SECONDS,
                        now + AHEAD_SECONDS,
                        answer.today().cellar().zone(),
                        messages.locale())
                .with(pressures)
                .with(temperatures)
                .withNow(now, messages.of("date.now"));
    }

    private Plot plot(String title, ValueAxis axis, Band would, Band is, Role role) {
        Stroke stroke = Stroke.of(Role.ROOM, 1.5).with(Dash.DASHED);
        return Plot.of(
                title,
                axis,
                new BandLayer(would, role, messages.of("whatif.plot.then")),
                new LineLayer(is.medianSeries(), NO_GAP, stroke, messages.of("whatif.plot.today")));
    }

    private LotOutlook lot(CellarOutlook outlook) {
        BatchOutlook batch = outlook.batch(change.batchId());
        return batch.lots().stream()
                .filter(each -> each.lot().id().equals(change.lotId()))
                .findFirst()
                .orElseGet(batch::mainLot);
    }
}
