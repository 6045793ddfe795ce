package undercroft.store.json;

import static java.nio.charset.StandardCharsets.UTF_8;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.BitSet;
import java.util.List;
import java.util.Map;
import undercroft.quantity.InvalidInput;

/**
 * What this program does not know stays in the file. Three trees are compared: the file as it was read, the same cellar
 * as this program writes it (same shape, known keys only), and the changed cellar. A key in the first that the second
 * lacks is unknown and goes over to the third. List entries are the same when their ids are; entries without an id when
 * nothing known changed, or when they keep their place in a list as long as before. With an entry its unknown keys go.
 */
final class KeptKeys {
    private KeptKeys() {}

    static void carryOver(ObjectNode asRead, ObjectNode known, ObjectNode changed) {
        for (Map.Entry<String, JsonNode> entry : asRead.properties()) {
            String key = entry.getKey();
            if (!known.has(key)) {
                if (!changed.has(key)) {
                    changed.set(key, entry.getValue().deepCopy());
                }
            } else if (entry.getValue() instanceof ObjectNode inner
                    && known.get(key) instanceof ObjectNode innerKnown
                    && changed.get(key) instanceof ObjectNode innerChanged) {
                carryOver(inner, innerKnown, innerChanged);
            } else if (entry.getValue() instanceof ArrayNode inner
                    && known.get(key) instanceof ArrayNode innerKnown
                    && changed.get(key) instanceof ArrayNode innerChanged) {
                carryOver(inner, innerKnown, innerChanged);
            }
        }
    }

    private static void carryOver(ArrayNode asRead, ArrayNode known, ArrayNode changed) {
        BitSet taken = new BitSet();
        int[] origins = new int[changed.size()];
        for (int i = 0; i < changed.size(); i++) {
            origins[i] = originOf(changed.get(i), known, taken, i);
            if (origins[i] >= 0) {
                taken.set(origins[i]);
            }
        }
        for (int i = 0; i < changed.size(); i++) {
            boolean editedInPlace = origins[i] < 0
                    && changed.size() == known.size()
                    && !changed.get(i).has("id")
                    && !taken.get(i);
            int origin = editedInPlace ? i : origins[i];
            if (origin >= 0
                    && asRead.get(origin) instanceof ObjectNode old
                    && known.get(origin) instanceof ObjectNode oldKnown
                    && changed.get(i) instanceof ObjectNode target) {
                carryOver(old, oldKnown, target);
            }
        }
    }

    private static int originOf(JsonNode entry, ArrayNode known, BitSet taken, int likely) {
        JsonNode id = entry.get("id");
        if (id == null && likely < known.size() && !taken.get(likely) && entry.equals(known.get(likely))) {
            return likely;
        }
        for (int j = 0; j < known.size(); j++) {
            boolean same = id == null
                    ? entry.equals(known.get(j))
                    : id.equals(known.get(j).get("id"));
            if (same && !taken.get(j)) {
                return j;
            }
        }
        return -1;
    }

    /**
     * Notes what could be read but not be written again: NaN and infinities, which JSON does not have, and texts with half
     * of a surrogate pair, which UTF-8 does not have; unless a fault is known of that place already.
     */
    static void refuseUnwritable(JsonNode node, String path, List<InvalidInput> faults) {
        boolean infinite = node.isDouble() && !Double.isFinite(node.doubleValue());
        if (infinite && faults.stream().noneMatch(fault -> fault.where().equals(path))) {
            faults.add(new InvalidInput(path, "store.fault.not-finite"));
        }
        if (node.isTextual() && !UTF_8.newEncoder().canEncode(node.textValue())) {
            faults.add(new InvalidInput(path, "store.fault.half-character"));
        }
        for (Map.Entry<String, JsonNode> entry : node.properties()) {
            String inner = path.isEmpty() ? entry.getKey() : path + "." + entry.getKey();
            if (!UTF_8.newEncoder().canEncode(entry.getKey())) {
                faults.add(new InvalidInput(path, "store.fault.half-key"));
            }
            refuseUnwritable(entry.getValue(), inner, faults);
        }
        if (node instanceof ArrayNode array) {
            for (int i = 0; i < array.size(); i++) {
                refuseUnwritable(array.get(i), path + "[" + i + "]", faults);
            }
        }
    }
}
