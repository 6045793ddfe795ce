package undercroft.quantity;

import java.util.List;

/**
 * A fault in something a person typed or a file holds: where it stands, and which sentence says what is wrong and what to
 * do. The sentence is a key with its arguments, so that it can be said in any language; {@code wording} says it.
 * Everything that reads input throws this and nothing else.
 */
public final class InvalidInput extends RuntimeException {
    /** Key of a fault on a line of a file; its arguments are the number of the line and what is wrong there. */
    public static final String LINE = "fault.line";

    private static final long serialVersionUID = 2L;

    private final String where;
    private final String key;
    private final transient List<Object> arguments;

    /**
     * A fault.
     *
     * @param where the field, file line or option at fault; may be empty
     * @param key the sentence's key in the bundles of {@code wording}
     * @param arguments what the sentence names: numbers, texts, or other faults
     */
    public InvalidInput(String where, String key, Object... arguments) {
        super((where.isEmpty() ? key : where + ": " + key) + (arguments.length == 0 ? "" : " " + List.of(arguments)));
        this.where = where;
        this.key = key;
        this.arguments = List.of(arguments);
    }

    /** The field, file line or option at fault, for example {@code batches[2].lots[0].count}; may be empty. */
    public String where() {
        return where;
    }

    /** Names the sentence that says what is wrong and what to do. */
    public String key() {
        return key;
    }

    /** What the sentence names, in its order. */
    public List<Object> arguments() {
        return arguments == null ? List.of() : arguments;
    }

    /** What is wrong and what to do, without the place. */
    public Phrase phrase() {
        return new Phrase(key, arguments());
    }

    /** The same fault, found to stand elsewhere. */
    public InvalidInput at(String place) {
        return new InvalidInput(place, key, arguments().toArray());
    }

    /** The same fault, found to stand on a line of the file that it names. */
    public InvalidInput onLine(int line) {
        return new InvalidInput(where, LINE, line, phrase());
    }

    /** The same fault seen from one level further out: {@code outer} is put before the place. */
    public InvalidInput within(String outer) {
        Object[] all = arguments().toArray();
        if (where.isEmpty()) {
            return new InvalidInput(outer, key, all);
        }
        String joint = where.startsWith("[") ? "" : ".";
        return new InvalidInput(outer + joint + where, key, all);
    }
}
