package undercroft.store.json;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.time.DateTimeException;
import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.function.Supplier;
import undercroft.catalogue.Listed;
import undercroft.quantity.InvalidInput;

/**
 * One JSON object while it is read, with its path in the file. A fault is noted and a stand-in handed back (NaN, null,
 * an empty text), so that one reading finds the faults of all fields; {@link #made} builds nothing from stand-ins.
 */
public final class JsonFields {
    /** Times outside this span are slips of the pen. */
    public static final Instant EARLIEST = Instant.parse("1900-01-01T00:00:00Z");

    public static final Instant LATEST = Instant.parse("2200-01-01T00:00:00Z");

    private static final int LONGEST_WORD = 200;
    private static final int LONGEST_NOTE = 100_000;

    private final ObjectNode node;
    private final String path;
    private final List<InvalidInput> faults;
    private final int faultsBefore;

    JsonFields(ObjectNode node, String path, List<InvalidInput> faults) {
        this.node = node;
        this.path = path;
        this.faults = faults;
        this.faultsBefore = faults.size();
    }

    /** Builds the value, unless a field of it is at fault. Returns null after a fault. */
    <T> T made(Supplier<T> value) {
        if (faults.size() > faultsBefore) {
            return null;
        }
        try {
            return value.get();
        } catch (InvalidInput fault) {
            faults.add(path.isEmpty() ? fault : fault.within(path));
            return null;
        }
    }

    /** Notes that {@code kind} is none of the known ones, unless it was at fault already. */
    void refuseKind(String kind, String known) {
        if (faults.size() == faultsBefore) {
            fault("kind", "\"" + kind + "\" is not known; use one of " + known);
        }
    }

    void fault(String key, String sentence) {
        faults.add(new InvalidInput(pathOf(key), sentence));
    }

    private String pathOf(String key) {
        return path.isEmpty() ? key : path + "." + key;
    }

    boolean isAbsent(String key) {
        return !node.hasNonNull(key);
    }

    /** The value of a key that has to be there; null, with the fault noted, when it is not or is of another type. */
    private JsonNode required(String key, Function<JsonNode, Boolean> fits, String wanted) {
        JsonNode value = node.get(key);
        if (value == null) {
            fault(key, "is missing; give " + wanted);
            return null;
        }
        if (!fits.apply(value)) {
            fault(key, "is " + kindOf(value) + "; give " + wanted);
            return null;
        }
        return value;
    }

    private static String kindOf(JsonNode value) {
        return switch (value.getNodeType()) {
            case STRING -> "text";
            case NUMBER -> "a number";
            case BOOLEAN -> "true or false";
            case ARRAY -> "a list";
            case OBJECT -> "an object";
            default -> "null";
        };
    }

    String text(String key) {
        return text(key, LONGEST_WORD);
    }

    private String text(String key, int longest) {
        JsonNode value = required(key, JsonNode::isTextual, "text in quotes");
        if (value == null) {
            return "";
        }
        if (value.textValue().length() > longest) {
            fault(key, "is longer than " + longest + " characters; shorten it");
            return "";
        }
        return value.textValue();
    }

    /** Free text that may be left out. */
    String note(String key) {
        return isAbsent(key) ? "" : text(key, LONGEST_NOTE);
    }

    double number(String key) {
        JsonNode value = required(key, JsonNode::isNumber, "a number");
        if (value == null) {
            return Double.NaN;
        }
        return value.doubleValue();
    }

    OptionalDouble optionalNumber(String key) {
        return isAbsent(key) ? OptionalDouble.empty() : OptionalDouble.of(number(key));
    }

    int whole(String key) {
        JsonNode value = required(key, JsonNode::isNumber, "a whole number");
        if (value == null) {
            return 0;
        }
        double number = value.doubleValue();
        if (number != Math.rint(number) || !(Math.abs(number) <= Integer.MAX_VALUE)) {
            fault(key, "is not a whole number; give one without decimals");
            return 0;
        }
        return (int) number;
    }

    boolean flag(String key) {
        JsonNode value = required(key, JsonNode::isBoolean, "true or false");
        return value != null && value.booleanValue();
    }

    /** A flag that is false when it is left out. */
    boolean optionalFlag(String key) {
        return !isAbsent(key) && flag(key);
    }

    Optional<String> optionalText(String key) {
        return isAbsent(key) ? Optional.empty() : Optional.of(text(key));
    }

    /** The value made from a text; {@code sentence} says what is wrong when it cannot be made. */
    <T> T parsed(String key, Function<String, T> parser, String sentence) {
        int before = faults.size();
        String text = text(key);
        if (faults.size() > before) {
            return null;
        }
        try {
            return parser.apply(text);
        } catch (DateTimeException fault) {
            fault(key, "\"" + text + "\" " + sentence);
            return null;
        }
    }

    Instant instant(String key) {
        Instant instant =
                parsed(key, Instant::parse, "is no time that exists; write it in UTC, such as 2026-03-29T01:30:00Z");
        if (instant != null && (instant.isBefore(EARLIEST) || !instant.isBefore(LATEST))) {
            fault(key, "is not between the years 1900 and 2200; correct the date");
            return null;
        }
        return instant;
    }

    Optional<Instant> optionalInstant(String key) {
        return isAbsent(key) ? Optional.empty() : Optional.ofNullable(instant(key));
    }

    <T extends Enum<T> & Listed> T listed(Class<T> list, String key) {
        int before = faults.size();
        String id = text(key);
        if (faults.size() > before) {
            return null;
        }
        try {
            return Listed.find(list, id, pathOf(key));
        } catch (InvalidInput fault) {
            faults.add(fault);
            return null;
        }
    }

    <T extends Enum<T> & Listed> T optionalListed(Class<T> list, String key, T otherwise) {
        return isAbsent(key) ? otherwise : listed(list, key);
    }

    <T extends Enum<T> & Listed> Optional<T> optionalListed(Class<T> list, String key) {
        return Optional.ofNullable(optionalListed(list, key, null));
    }

    <T> T object(String key, Function<JsonFields, T> reader) {
        JsonNode value = required(key, JsonNode::isObject, "an object { ... }");
        return value == null ? null : reader.apply(new JsonFields((ObjectNode) value, pathOf(key), faults));
    }

    <T> T optionalObject(String key, Function<JsonFields, T> reader, T otherwise) {
        return isAbsent(key) ? otherwise : object(key, reader);
    }

    <T> List<T> list(String key, Function<JsonFields, T> reader) {
        JsonNode value = required(key, JsonNode::isArray, "a list [ ... ]");
        List<T> read = new ArrayList<>();
        if (value instanceof ArrayNode array) {
            for (int i = 0; i < array.size(); i++) {
                String at = key + "[" + i + "]";
                if (array.get(i) instanceof ObjectNode element) {
                    read.add(reader.apply(new JsonFields(element, pathOf(at), faults)));
                } else {
                    fault(at, "is " + kindOf(array.get(i)) + "; give an object { ... }");
                }
            }
        }
        return read;
    }

    <T> List<T> optionalList(String key, Function<JsonFields, T> reader) {
        return isAbsent(key) ? List.of() : list(key, reader);
    }
}
