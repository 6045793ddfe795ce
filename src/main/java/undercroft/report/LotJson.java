package undercroft.report;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.Locale;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.Cause;
import undercroft.outlook.lot.CauseFigure;
import undercroft.outlook.lot.FigureKind;
import undercroft.outlook.lot.LotOutlook;
import undercroft.outlook.lot.Verdict;

/** The figures of lots, and of a batch by the lots that stand for it, as report.json has them. */
final class LotJson {
    private LotJson() {}

    /** One lot with all its figures. */
    static void putLot(ObjectNode node, LotOutlook lot) {
        Verdict verdict = lot.verdict();
        node.put("id", lot.id());
        node.put("place", lot.place().id());
        node.put("bottle", lot.pressure().bottle().id());
        node.put("bottlesLeft", lot.left());
        node.put("stage", lot.stage().name());
        node.put("alert", verdict.alert().name());
        putCarbonation(node, lot);
        ObjectNode pressure = putPressure(node, lot);
        JsonShapes.putLimit(pressure, "heatLimitCelsius", lot.pressure().heatLimitCelsius());
        pressure.put("alert", verdict.alert(Cause.Topic.PRESSURE).name());
        putLight(node, lot, verdict.alert(Cause.Topic.LIGHT));
        putAgeing(node, lot);
        putTemperature(node, lot);
        putReady(node, lot);
    }

    /** The batch's figures, each of the lot that stands for it. */
    static void putFigures(ObjectNode node, BatchOutlook batch) {
        Verdict verdict = batch.verdict();
        putCarbonation(node, batch.lotFor(FigureKind.CARBONATION));
        LotOutlook limiting = batch.lotFor(FigureKind.PRESSURE);
        LotOutlook weakest = batch.lotFor(FigureKind.HEAT_LIMIT);
        ObjectNode pressure = putPressure(node, limiting);
        pressure.put("limitingLot", limiting.id());
        JsonShapes.putLimit(pressure, "heatLimitCelsius", weakest.pressure().heatLimitCelsius());
        pressure.put("heatLimitLot", weakest.id());
        pressure.put("alert", verdict.alert(Cause.Topic.PRESSURE).name());
        LotOutlook brightest = batch.lotFor(FigureKind.LIGHT);
        putLight(node, brightest, verdict.alert(Cause.Topic.LIGHT)).put("worstLot", brightest.id());
        putAgeing(node, batch.lotFor(FigureKind.BEST_BEFORE));
        putTemperature(node, batch.mainLot());
        putReady(node, batch.lotFor(FigureKind.READY));
    }

    private static void putCarbonation(ObjectNode node, LotOutlook lot) {
        ObjectNode carbonation = node.putObject("carbonation");
        JsonShapes.put(carbonation, "nowVolumes", lot.carbonation().atPresent());
        JsonShapes.put(carbonation, "finalVolumes", lot.carbonation().atEnd());
        JsonShapes.put(carbonation, "fractionDone", lot.carbonation().fractionDone());
    }

    private static ObjectNode putPressure(ObjectNode node, LotOutlook lot) {
        ObjectNode pressure = node.putObject("pressure");
        JsonShapes.put(pressure, "nowGaugeBar", lot.pressure().atPresent());
        JsonShapes.put(pressure, "peakPastGaugeBar", lot.pressure().peakPast());
        JsonShapes.put(pressure, "peakAheadGaugeBar", lot.pressure().peakAhead());
        JsonShapes.put(pressure, "strongestNowGaugeBar", lot.pressure().strongestBottle());
        JsonShapes.putLimit(pressure, "workingPressureGaugeBar", lot.pressure().workingPressureBar());
        return pressure;
    }

    private static ObjectNode putLight(ObjectNode node, LotOutlook lot, Alert alert) {
        ObjectNode light = node.putObject("light");
        JsonShapes.put(light, "dose", lot.light().dose());
        return light.put("alert", alert.name());
    }

    private static void putAgeing(ObjectNode node, LotOutlook lot) {
        ObjectNode ageing = node.putObject("ageing");
        JsonShapes.put(ageing, "shelfDaysUsed", lot.ageing().daysUsed());
        JsonShapes.put(ageing, "shelfDaysBudget", lot.ageing().budgetDays().median());
        ageing.put("bestBefore", lot.ageing().bestBefore().map(Object::toString).orElse(null));
    }

    private static void putTemperature(ObjectNode node, LotOutlook lot) {
        ObjectNode temperature = node.putObject("temperature");
        JsonShapes.put(temperature, "nowCelsius", lot.temperature().nowCelsius());
        JsonShapes.put(temperature, "meanKineticCelsius", lot.temperature().meanKineticCelsius());
        JsonShapes.put(temperature, "coverage", lot.temperature().coverage());
    }

    private static void putReady(ObjectNode node, LotOutlook lot) {
        ObjectNode ready = node.putObject("ready");
        JsonShapes.put(ready, "early", lot.ready().early());
        JsonShapes.put(ready, "median", lot.ready().median());
        JsonShapes.put(ready, "late", lot.ready().late());
    }

    /** Why a batch has its alert; each figure's key tells its unit, as {@link CauseFigure} does. */
    static void putCause(ObjectNode node, Cause cause) {
        node.put("kind", cause.kind().name());
        node.put("topic", cause.kind().topic().name());
        node.put("bite", cause.kind().bite().name());
        node.put("alert", cause.alert().name());
        node.put("lot", cause.lotId().orElse(null));
        JsonShapes.put(node, "since", cause.since());
        ObjectNode figures = node.putObject("figures");
        cause.figures().forEach((figure, value) -> JsonShapes.put(figures, key(figure), value));
    }

    /** {@code WORKING_PRESSURE_GAUGE_BAR} becomes {@code workingPressureGaugeBar}. */
    private static String key(CauseFigure figure) {
        StringBuilder key = new StringBuilder();
        for (String word : figure.name().toLowerCase(Locale.ROOT).split("_", -1)) {
            key.append(key.length() == 0 ? word : Character.toUpperCase(word.charAt(0)) + word.substring(1));
        }
        return key.toString();
    }
}
