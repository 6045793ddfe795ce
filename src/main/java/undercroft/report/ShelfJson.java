package undercroft.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.Problem;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.serving.ServingPlan;
import undercroft.outlook.spell.SpellImpact;
import undercroft.outlook.spell.SpellReview;
import undercroft.outlook.task.Task;
import undercroft.quantity.UnitSystem;
import undercroft.wording.Headlines;
import undercroft.wording.Messages;
import undercroft.wording.ProblemWords;
import undercroft.wording.QuantityFormat;
import undercroft.wording.ServingWords;
import undercroft.wording.ShelfWords;
import undercroft.wording.SpellWords;
import undercroft.wording.TaskWords;

/**
 * The shelf as report.json, schema 2; its JSON Schema stands beside this class in the jar. Keys and sentences are the
 * same for every reader's language and units. Every figure of a batch is that of the lot that stands for it; all lots follow
 * with their own.
 */
public final class ShelfJson {
    private ShelfJson() {}

    public static String of(CellarOutlook outlook) {
        ObjectNode root = JsonShapes.object();
        root.put("schema", 2);
        root.put("at", outlook.at().toString());
        root.put("cellar", outlook.cellar().name());
        ShelfWords words = new ShelfWords(
                outlook,
                QuantityFormat.of(
                        Messages.english(), UnitSystem.METRIC, outlook.cellar().zone()));
        ArrayNode batches = root.putArray("batches");
        outlook.batches().forEach(batch -> putBatch(batches.addObject(), batch, words));
        ArrayNode spells = root.putArray("spells");
        outlook.spells().forEach(spell -> putSpell(spells.addObject(), spell, new SpellWords(words)));
        ArrayNode servings = root.putArray("servings");
        outlook.servings().forEach(serving -> putServing(servings.addObject(), serving, new ServingWords(words)));
        ArrayNode problems = root.putArray("problems");
        ProblemWords said = new ProblemWords(words);
        for (Problem problem : outlook.problems()) {
            problems.addObject().put("where", said.where(problem)).put("what", said.what(problem));
        }
        root.put("caution", Messages.english().of("caution.estimate"));
        return JsonShapes.text(root);
    }

    private static void putBatch(ObjectNode node, BatchOutlook batch, ShelfWords words) {
        node.put("id", batch.id());
        node.put("name", batch.batch().name());
        node.put("stage", batch.stage().name());
        node.put("alert", batch.alert().name());
        node.put("headline", new Headlines(words).of(batch));
        node.put("bottlesLeft", batch.bottlesLeft());
        if (batch.isCapped()) {
            LotJson.putFigures(node, batch);
        } else {
            for (String key : List.of("carbonation", "pressure", "light", "ageing", "temperature", "ready")) {
                node.putNull(key);
            }
        }
        ArrayNode lots = node.putArray("lots");
        batch.lots().forEach(lot -> LotJson.putLot(lots.addObject(), lot));
        ArrayNode causes = node.putArray("causes");
        batch.verdict().causes().forEach(cause -> LotJson.putCause(causes.addObject(), cause));
        if (batch.isCapped()) {
            EvidenceJson.put(node.putObject("evidence"), batch);
        } else {
            node.putNull("evidence");
        }
        batch.learned().ifPresent(learned -> {
            ObjectNode taught = node.putObject("learned");
            taught.put("batches", learned.batches());
            taught.put("readings", learned.readings());
            JsonShapes.put(taught, "timesAsFast", learned.timesAsFast());
            taught.put("isUnlike", learned.isUnlike());
        });
        putTasks(node.putArray("tasks"), words.outlook().tasksOf(batch), new TaskWords(words));
    }

    private static void putTasks(ArrayNode node, List<Task> tasks, TaskWords words) {
        for (Task task : tasks) {
            node.addObject()
                    .put("when", task.when().toString())
                    .put("what", words.what(task))
                    .put("why", words.why(task));
        }
    }

    private static void putSpell(ObjectNode node, SpellReview spell, SpellWords words) {
        node.put("place", spell.place().id());
        node.put("from", spell.from().toString());
        node.put("until", spell.until().toString());
        JsonShapes.put(node, "peakCelsius", spell.peakCelsius());
        node.put("kind", spell.warm() ? "WARM" : "COLD");
        ArrayNode impacts = node.putArray("lots");
        for (SpellImpact impact : spell.impacts()) {
            ObjectNode entry = impacts.addObject();
            entry.put("batch", impact.batchId());
            entry.put("lot", impact.lotId());
            JsonShapes.put(entry, "peakGaugeBar", impact.peakGaugeBar());
            JsonShapes.put(entry, "hoursOverWorkingPressure", impact.hoursOverWorkingPressure());
            JsonShapes.put(entry, "shelfDaysCost", impact.shelfDaysCost());
            JsonShapes.put(entry, "carbonationDaysGained", impact.carbonationDaysGained());
            entry.put("verdict", words.verdict(spell, impact));
        }
    }

    private static void putServing(ObjectNode node, ServingPlan plan, ServingWords words) {
        node.put("at", plan.serving().at().toString());
        node.put("batch", plan.serving().batchId());
        node.put("bottles", plan.serving().bottles());
        JsonShapes.put(node, "chillFrom", plan.chillFrom());
        node.put("why", words.why(plan));
    }
}
