package undercroft.report;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import undercroft.quantity.Interval;
import undercroft.quantity.Phrase;
import undercroft.wording.Messages;

/** A command's answer: one object for programs, lines for people. Grown by its maker, then read. */
public final class Answer {
    private static final Messages ENGLISH = Messages.english();

    private final Messages messages;
    private final ObjectNode json = JsonShapes.object();
    private final List<String> lines = new ArrayList<>();
    private final List<Phrase> warnings = new ArrayList<>();

    /** Nothing said yet; lines for people will be in this language. */
    public Answer(Messages messages) {
        this.messages = messages;
    }

    public Answer put(String key, String value) {
        json.put(key, value);
        return this;
    }

    public Answer put(String key, boolean value) {
        json.put(key, value);
        return this;
    }

    public Answer put(String key, int value) {
        json.put(key, value);
        return this;
    }

    /** A number; what is not finite becomes null. */
    public Answer put(String key, double value) {
        JsonShapes.put(json, key, value);
        return this;
    }

    public Answer put(String key, Interval value) {
        JsonShapes.put(json, key, value);
        return this;
    }

    public Answer put(String key, List<String> values) {
        values.forEach(json.putArray(key)::add);
        return this;
    }

    /** Adds a line for people: the sentence with that key. */
    public Answer say(String key, Object... arguments) {
        lines.add(messages.of(key, arguments));
        return this;
    }

    /** Adds a line for people that is worded already. */
    public Answer line(String line) {
        lines.add(line);
        return this;
    }

    /** Adds a warning, for people and programs; its arguments must not be worded yet. */
    public Answer warn(Phrase warning) {
        warnings.add(warning);
        lines.add(messages.of(warning));
        return this;
    }

    /** Ends an answer that shows a pressure, a dose or a limit: the warnings, and that all of it is an estimate. */
    public Answer estimate() {
        put("warnings", warnings.stream().map(ENGLISH::of).toList());
        put("caution", ENGLISH.of("caution.estimate"));
        return say("caution.estimate");
    }

    public String json() {
        return JsonShapes.text(json);
    }

    public String text() {
        return String.join("\n", lines) + "\n";
    }
}
