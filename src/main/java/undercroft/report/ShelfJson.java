package undercroft.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.Problem;
import undercroft.outlook.Wording;
import undercroft.outlook.lot.AgeingOutlook;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.Cause;
import undercroft.outlook.lot.LotOutlook;
import undercroft.outlook.lot.PressureOutlook;
import undercroft.outlook.serving.ServingPlan;
import undercroft.outlook.spell.SpellImpact;
import undercroft.outlook.spell.SpellReview;
import undercroft.outlook.task.Task;
import undercroft.wording.Headlines;
import undercroft.wording.TaskWords;

/**
 * The shelf as report.json, schema 1; its JSON Schema stands beside this class in the jar. Carbonation and temperature are
 * of the lot with most bottles left; pressure, light and ageing of the lot that has it worst.
 */
public final class ShelfJson {
    private ShelfJson() {}

    public static String of(CellarOutlook outlook) {
        ObjectNode root = JsonShapes.object();
        root.put("schema", 1);
        root.put("at", outlook.at().toString());
        root.put("cellar", outlook.cellar().name());
        Headlines headlines = new Headlines(Wording.of(outlook));
        ArrayNode batches = root.putArray("batches");
        outlook.batches().forEach(batch -> putBatch(batches.addObject(), batch, outlook, headlines));
        ArrayNode spells = root.putArray("spells");
        outlook.spells().forEach(spell -> putSpell(spells.addObject(), spell));
        ArrayNode servings = root.putArray("pours");
        outlook.servings().forEach(serving -> putServing(servings.addObject(), serving));
        ArrayNode problems = root.putArray("problems");
        for (Problem problem : outlook.problems()) {
            problems.addObject().put("where", problem.where()).put("what", problem.what());
        }
        return JsonShapes.text(root);
    }

    private static void putBatch(ObjectNode node, BatchOutlook batch, CellarOutlook outlook, Headlines headlines) {
        node.put("id", batch.id());
        node.put("name", batch.batch().name());
        node.put("stage", batch.stage().name());
        node.put("alert", batch.alert().name());
        node.put("headline", headlines.of(batch));
        node.put("bottlesLeft", batch.bottlesLeft());
        if (batch.isCapped()) {
            putFigures(node, batch);
        } else {
            for (String key : List.of("carbonation", "pressure", "light", "ageing", "temperature", "ready")) {
                node.putNull(key);
            }
        }
        putTasks(node.putArray("tasks"), outlook.tasksOf(batch), new TaskWords(outlook, Wording.of(outlook)));
    }

    private static void putFigures(ObjectNode node, BatchOutlook batch) {
        LotOutlook main = batch.mainLot();
        ObjectNode carbonation = node.putObject("carbonation");
        JsonShapes.put(carbonation, "now", main.carbonation().atPresent());
        JsonShapes.put(carbonation, "final", main.carbonation().atEnd());
        JsonShapes.put(carbonation, "fractionDone", main.carbonation().fractionDone());
        putPressure(node.putObject("pressure"), batch);
        ObjectNode light = node.putObject("light");
        JsonShapes.put(light, "dose", batch.brightestLot().light().dose());
        light.put("alert", batch.verdict().alert(Cause.Topic.LIGHT).name());
        light.put("worstLot", batch.brightestLot().lot().id());
        putAgeing(node.putObject("ageing"), batch.oldestLot().ageing());
        ObjectNode temperature = node.putObject("temperature");
        JsonShapes.put(temperature, "now", main.temperature().nowCelsius());
        JsonShapes.put(temperature, "meanKinetic", main.temperature().meanKineticCelsius());
        JsonShapes.put(temperature, "coverage", main.temperature().coverage());
        ObjectNode ready = node.putObject("ready");
        JsonShapes.put(ready, "early", main.ready().early());
        JsonShapes.put(ready, "median", main.ready().median());
        JsonShapes.put(ready, "late", main.ready().late());
    }

    private static void putPressure(ObjectNode node, BatchOutlook batch) {
        PressureOutlook pressure = batch.limitingLot().pressure();
        JsonShapes.put(node, "now", pressure.atPresent());
        JsonShapes.put(node, "peakPast", pressure.peakPast());
        JsonShapes.put(node, "peakAhead", pressure.peakAhead());
        JsonShapes.put(node, "working", pressure.workingPressureBar());
        node.put("weakestBottle", pressure.bottle().id());
        JsonShapes.put(node, "heatLimitCelsius", batch.heatLimitLot().pressure().heatLimitCelsius());
        node.put("alert", batch.verdict().alert(Cause.Topic.PRESSURE).name());
    }

    private static void putAgeing(ObjectNode node, AgeingOutlook ageing) {
        JsonShapes.put(node, "shelfDaysUsed", ageing.daysUsed());
        JsonShapes.put(node, "shelfDaysBudget", ageing.budgetDays().median());
        node.put("bestBefore", ageing.bestBefore().map(Object::toString).orElse(null));
    }

    private static void putTasks(ArrayNode node, List<Task> tasks, TaskWords words) {
        for (Task task : tasks) {
            node.addObject()
                    .put("when", task.when().toString())
                    .put("what", words.what(task))
                    .put("why", words.why(task));
        }
    }

    private static void putSpell(ObjectNode node, SpellReview spell) {
        node.put("place", spell.place().id());
        node.put("from", spell.from().toString());
        node.put("until", spell.until().toString());
        JsonShapes.put(node, "peakCelsius", spell.peakCelsius());
        node.put("kind", spell.warm() ? "WARM" : "COLD");
        ArrayNode impacts = node.putArray("batches");
        for (SpellImpact impact : spell.impacts()) {
            ObjectNode entry = impacts.addObject();
            entry.put("id", impact.batchId());
            JsonShapes.put(entry, "peakBarGauge", impact.peakBarGauge());
            JsonShapes.put(entry, "hoursOverWorking", impact.hoursOverWorking());
            JsonShapes.put(entry, "shelfDaysCost", impact.shelfDaysCost());
            JsonShapes.put(entry, "carbonationDaysGained", impact.carbonationDaysGained());
            entry.put("verdict", impact.verdict());
        }
    }

    private static void putServing(ObjectNode node, ServingPlan plan) {
        node.put("at", plan.serving().at().toString());
        node.put("batch", plan.serving().batchId());
        node.put("bottles", plan.serving().bottles());
        JsonShapes.put(node, "chillFrom", plan.chillFrom());
        node.put("why", plan.why());
    }
}
