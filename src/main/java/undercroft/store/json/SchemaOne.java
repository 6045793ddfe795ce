package undercroft.store.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.IntNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import com.fasterxml.jackson.databind.node.TextNode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import undercroft.quantity.InvalidInput;

/**
 * {@code cellar.json} as the first version wrote it. Its tree is brought to schema 2 before anything else looks at it:
 * some keys got another name, nothing else changed. Keys nobody knows stay where they are.
 */
final class SchemaOne {
    static final int NUMBER = 1;

    private static final Map<String, String> CELLAR = Map.of("pours", "servings", "tonight", "taskNotes");
    private static final Map<String, String> SERVING = Map.of("surroundings", "coolingMedium");
    private static final Map<String, String> BATCH = Map.of("fillHabit", "fillingMethod");
    private static final Map<String, String> BEER = Map.of(
            "kind",
            "style",
            "gravityAtBottling",
            "specificGravityAtBottling",
            "expectedFinalGravity",
            "expectedFinalSpecificGravity");
    private static final Map<String, String> YEAST = Map.of("settling", "flocculation");
    private static final Map<String, String> READING =
            Map.of("gauge", "instrument", "barGauge", "gaugeBar", "liveliness", "perceivedCarbonation");

    private SchemaOne() {}

    /** The same in schema 2; the tree given is not changed. */
    static ObjectNode upgraded(ObjectNode tree) {
        ObjectNode cellar = renamed(tree.deepCopy(), CELLAR);
        cellar.set("schema", IntNode.valueOf(CellarJson.SCHEMA));
        each(cellar, "servings", SERVING);
        if (cellar.get("batches") instanceof ArrayNode batches) {
            for (int i = 0; i < batches.size(); i++) {
                if (batches.get(i) instanceof ObjectNode batch) {
                    batches.set(i, upgradedBatch(batch));
                }
            }
        }
        return cellar;
    }

    private static ObjectNode upgradedBatch(ObjectNode old) {
        ObjectNode batch = renamed(old, BATCH);
        if (batch.path("fillingMethod").asText().equals("capped-on-foam")) {
            batch.set("fillingMethod", TextNode.valueOf("foam-capped"));
        }
        one(batch, "beer", BEER);
        one(batch, "yeast", YEAST);
        each(batch, "readings", READING);
        return batch;
    }

    private static void one(ObjectNode parent, String key, Map<String, String> names) {
        if (parent.get(key) instanceof ObjectNode child) {
            parent.set(key, renamed(child, names));
        }
    }

    private static void each(ObjectNode parent, String key, Map<String, String> names) {
        if (parent.get(key) instanceof ArrayNode list) {
            for (int i = 0; i < list.size(); i++) {
                if (list.get(i) instanceof ObjectNode child) {
                    list.set(i, renamed(child, names));
                }
            }
        }
    }

    /** Keys keep their order. A new name that is there already, which schema 1 did not know, gives way to the known one. */
    private static ObjectNode renamed(ObjectNode node, Map<String, String> names) {
        Map<String, JsonNode> fields = new LinkedHashMap<>();
        node.properties().forEach(field -> {
            String name = names.getOrDefault(field.getKey(), field.getKey());
            if (names.containsKey(field.getKey()) || !names.containsValue(name) || !fields.containsKey(name)) {
                fields.put(name, field.getValue());
            }
        });
        node.removeAll();
        node.setAll(fields);
        return node;
    }

    /** A fault of the upgraded tree, at the place where it stands in the file. */
    static InvalidInput asInFile(InvalidInput fault) {
        String where = fault.where();
        for (Map<String, String> names : List.of(CELLAR, SERVING, BATCH, YEAST, READING)) {
            for (Map.Entry<String, String> name : names.entrySet()) {
                where = where.replaceAll("(?<![A-Za-z])" + name.getValue() + "(?![A-Za-z])", name.getKey());
            }
        }
        for (Map.Entry<String, String> name : BEER.entrySet()) {
            where = where.replaceAll("\\.beer\\." + name.getValue() + "$", ".beer." + name.getKey());
        }
        return new InvalidInput(where, fault.key(), fault.arguments().toArray());
    }
}
