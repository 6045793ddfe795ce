package undercroft.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import undercroft.calc.conditioning.Explanation;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.Evidence;

/** What was seen of a batch and what may explain it, as report.json has it. */
final class EvidenceJson {
    private EvidenceJson() {}

    static void put(ObjectNode node, BatchOutlook batch) {
        Evidence evidence = batch.mainLot().evidence();
        node.put("readings", evidence.readings().name());
        putExplanation(node.putObject("before"), evidence.before());
        putExplanation(node.putObject("now"), evidence.now());
        ArrayNode bursts = node.putArray("bursts");
        for (Evidence.Burst burst : evidence.bursts()) {
            bursts.addObject()
                    .put("lot", burst.lotId())
                    .put("at", burst.at().toString())
                    .put("bottles", burst.bottles())
                    .put("cause", burst.cause().map(Enum::name).orElse(null));
        }
    }

    private static void putExplanation(ObjectNode node, Explanation explanation) {
        JsonShapes.put(node, "asWrittenDownChance", explanation.asWrittenDown());
        JsonShapes.put(node, "moreSugarChance", explanation.moreSugar());
        JsonShapes.put(node, "moreToFermentChance", explanation.moreToFerment());
    }
}
