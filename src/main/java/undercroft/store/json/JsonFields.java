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
import undercroft.quantity.Phrase;

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
            fault("kind", "fault.unknown", kind, known);
        }
    }

    void fault(String key, String sentence, Object... arguments) {
        faults.add(new InvalidInput(pathOf(key), sentence, arguments));
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
            fault(key, "store.fault.no-value", Phrase.of(wanted));
            return null;
        }
        if (!fits.apply(value)) {
            fault(key, "store.fault.other-kind", kindOf(value), Phrase.of(wanted));
            return null;
        }
        return value;
    }

    private static Phrase kindOf(JsonNode value) {
        return Phrase.of(
                switch (value.getNodeType()) {
                    case STRING -> "store.kind.text";
                    case NUMBER -> "store.kind.number";
                    case BOOLEAN -> "store.kind.flag";
                    case ARRAY -> "store.kind.list";
                    case OBJECT -> "store.kind.object";
                    default -> "store.kind.null";
                });
    }

    String text(String key) {
        return text(key, LONGEST_WORD);
    }

    private String text(String key, int longest) {
        JsonNode value = required(key, JsonNode::isTextual, "store.wanted.text");
        if (value == null) {
            return "";
        }
        if (value.textValue().length() > longest) {
            fault(key, "fault.too-long", longest);
            return "";
        }
        return value.textValue();
    }

    /** Free text that may be left out. */
    String note(String key) {
        return isAbsent(key) ? "" : text(key, LONGEST_NOTE);
    }

    double number(String key) {
        JsonNode value = required(key, JsonNode::isNumber, "store.wanted.number");
        if (value == null) {
            return Double.NaN;
        }
        return value.doubleValue();
    }

    OptionalDouble optionalNumber(String key) {
        return isAbsent(key) ? OptionalDouble.empty() : OptionalDouble.of(number(key));
    }

    int whole(String key) {
        JsonNode value = required(key, JsonNode::isNumber, "store.wanted.whole");
        if (value == null) {
            return 0;
        }
        double number = value.doubleValue();
        if (number != Math.rint(number) || !(Math.abs(number) <= Integer.MAX_VALUE)) {
            fault(key, "store.fault.not-whole");
            return 0;
        }
        return (int) number;
    }

    boolean flag(String key) {
        JsonNode value = required(key, JsonNode::isBoolean, "store.wanted.flag");
        return value != null && value.booleanValue();
    }

    /** A flag that is false when it is left out. */
    boolean optionalFlag(String key) {
        return !isAbsent(key) && flag(key);
    }

    Optional<String> optionalText(String key) {
        return isAbsent(key) ? Optional.empty() : Optional.of(text(key));
    }

    /** The value made from a text; {@code sentence} is the key of what is wrong with the text when it cannot be made. */
    <T> T parsed(String key, Function<String, T> parser, String sentence) {
        int before = faults.size();
        String text = text(key);
        if (faults.size() > before) {
            return null;
        }
        try {
            return parser.apply(text);
        } catch (DateTimeException | IllegalArgumentException fault) {
            fault(key, sentence, text);
            return null;
        }
    }

    Instant instant(String key) {
        Instant instant = parsed(key, Instant::parse, "store.fault.time");
        if (instant != null && (instant.isBefore(EARLIEST) || !instant.isBefore(LATEST))) {
            fault(key, "store.fault.year");
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
        JsonNode value = required(key, JsonNode::isObject, "store.wanted.object");
        return value == null ? null : reader.apply(new JsonFields((ObjectNode) value, pathOf(key), faults));
    }

    <T> T optionalObject(String key, Function<JsonFields, T> reader, T otherwise) {
        return isAbsent(key) ? otherwise : object(key, reader);
    }

    <T> List<T> list(String key, Function<JsonFields, T> reader) {
        JsonNode value = required(key, JsonNode::isArray, "store.wanted.list");
        List<T> read = new ArrayList<>();
        if (value instanceof ArrayNode array) {
            for (int i = 0; i < array.size(); i++) {
                String at = key + "[" + i + "]";
                if (array.get(i) instanceof ObjectNode element) {
                    read.add(reader.apply(new JsonFields(element, pathOf(at), faults)));
                } else {
                    fault(at, "store.fault.other-kind", kindOf(array.get(i)), Phrase.of("store.wanted.object"));
                }
            }
        }
        return read;
    }

    <T> List<T> optionalList(String key, Function<JsonFields, T> reader) {
        return isAbsent(key) ? List.of() : list(key, reader);
    }
}
