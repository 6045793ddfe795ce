package undercroft.store.json;

import com.fasterxml.jackson.core.JacksonException;
import com.fasterxml.jackson.core.JsonLocation;
import com.fasterxml.jackson.core.JsonParser;
import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.core.JsonStreamContext;
import com.fasterxml.jackson.core.StreamReadFeature;
import com.fasterxml.jackson.core.exc.StreamConstraintsException;
import com.fasterxml.jackson.core.json.JsonReadFeature;
import com.fasterxml.jackson.core.util.DefaultIndenter;
import com.fasterxml.jackson.core.util.DefaultPrettyPrinter;
import com.fasterxml.jackson.core.util.Separators;
import com.fasterxml.jackson.databind.DeserializationFeature;
import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectWriter;
import com.fasterxml.jackson.databind.cfg.JsonNodeFeature;
import com.fasterxml.jackson.databind.json.JsonMapper;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import undercroft.quantity.InvalidInput;
import undercroft.quantity.Phrase;

/**
 * JSON as text: bytes to a tree and back. NaN and its like are let through here, so that the fault can be told by its
 * field; numbers keep their digits, so that values of unknown keys come back as they were.
 */
public final class JsonText {
    private static final JsonMapper MAPPER = JsonMapper.builder()
            .enable(StreamReadFeature.STRICT_DUPLICATE_DETECTION)
            .enable(JsonReadFeature.ALLOW_NON_NUMERIC_NUMBERS)
            .enable(DeserializationFeature.USE_BIG_DECIMAL_FOR_FLOATS)
            .disable(JsonNodeFeature.STRIP_TRAILING_BIGDECIMAL_ZEROES)
            .build();
    private static final ObjectWriter WRITER = MAPPER.writer(printer());

    private JsonText() {}

    private static DefaultPrettyPrinter printer() {
        DefaultIndenter indenter = new DefaultIndenter("  ", "\n");
        Separators separators =
                Separators.createDefaultInstance().withObjectFieldValueSpacing(Separators.Spacing.AFTER);
        DefaultPrettyPrinter printer = new DefaultPrettyPrinter(separators);
        printer.indentArraysWith(indenter);
        printer.indentObjectsWith(indenter);
        return printer;
    }

    public static byte[] print(ObjectNode tree) {
        try {
            return (WRITER.writeValueAsString(tree) + "\n").getBytes(StandardCharsets.UTF_8);
        } catch (JsonProcessingException impossible) {
            throw new IllegalArgumentException("a tree that cannot be printed", impossible);
        }
    }

    /** The object the bytes hold, or one sentence with line and column. */
    public static ObjectNode parse(byte[] bytes) {
        if (new String(bytes, StandardCharsets.UTF_8).isBlank()) {
            throw new InvalidInput("", "store.fault.empty");
        }
        try (JsonParser parser = MAPPER.createParser(bytes)) {
            return parse(parser, bytes.length);
        } catch (IOException fault) {
            throw new InvalidInput("", "store.fault.not-utf8");
        }
    }

    private static ObjectNode parse(JsonParser parser, int length) {
        try {
            JsonNode tree = MAPPER.readTree(parser);
            if (parser.nextToken() != null) {
                throw new InvalidInput("", "store.fault.goes-on", at(parser.currentTokenLocation()));
            }
            if (tree instanceof ObjectNode object) {
                return object;
            }
            throw new InvalidInput("", "store.fault.no-object");
        } catch (NumberFormatException beyondAnyNumber) {
            // An exponent of many digits comes out of the library as it is.
            throw new InvalidInput(
                    path(parser.getParsingContext()), "store.fault.not-json", at(parser.currentLocation()));
        } catch (JacksonException fault) {
            throw described(parser, length, fault);
        } catch (IOException fault) {
            throw new InvalidInput("", "store.fault.not-utf8");
        }
    }

    private static InvalidInput described(JsonParser parser, int length, JacksonException fault) {
        String message = fault.getOriginalMessage() == null ? "" : fault.getOriginalMessage();
        boolean atEnd = parser.currentLocation().getByteOffset() >= length;
        if (!parser.getParsingContext().inRoot() && (atEnd || message.startsWith("Unexpected end-of-input"))) {
            return new InvalidInput("", "store.fault.breaks-off", at(fault.getLocation()));
        }
        String where = path(parser.getParsingContext());
        if (message.startsWith("Duplicate field")) {
            return new InvalidInput(where, "store.fault.twice", at(fault.getLocation()));
        }
        if (fault instanceof StreamConstraintsException) {
            return new InvalidInput("", "store.fault.too-deep", at(fault.getLocation()));
        }
        return new InvalidInput(where, "store.fault.not-json", at(fault.getLocation()));
    }

    private static Phrase at(JsonLocation location) {
        return location == null
                ? Phrase.of("store.at.unknown")
                : Phrase.of("store.at.line", location.getLineNr(), Math.max(1, location.getColumnNr()));
    }

    private static String path(JsonStreamContext context) {
        if (context == null || context.inRoot()) {
            return "";
        }
        String outer = path(context.getParent());
        if (context.inArray()) {
            return outer + "[" + context.getCurrentIndex() + "]";
        }
        if (context.getCurrentName() == null) {
            return outer;
        }
        String name = context.getCurrentName();
        String shown = name.length() > 60 ? name.substring(0, 60) + "..." : name;
        return outer.isEmpty() ? shown : outer + "." + shown;
    }
}
