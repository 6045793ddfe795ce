package undercroft.report;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.ArrayList;
import java.util.List;
import undercroft.quantity.Interval;

/** A command's answer: one object for programs, lines for people. Grown by its maker, then read. */
public final class Answer {
    private final ObjectNode json = JsonShapes.object();
    private final List<String> lines = new ArrayList<>();

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

    /** Adds a line for people. */
    public Answer say(String line) {
        lines.add(line);
        return this;
    }

    public String json() {
        return JsonShapes.text(json);
    }

    public String text() {
        return String.join("\n", lines) + "\n";
    }
}
