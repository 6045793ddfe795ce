package undercroft.quantity;

/**
 * A fault in something a person typed or a file holds: where it stands, and one sentence that says what is wrong and
 * what to do. Everything that reads input throws this and nothing else; it is shown as it is.
 */
public final class InvalidInput extends RuntimeException {
    private static final long serialVersionUID = 1L;

    private final String where;
    private final String what;

    public InvalidInput(String where, String what) {
        super(where.isEmpty() ? what : where + ": " + what);
        this.where = where;
        this.what = what;
    }

    /** The field, file line or option at fault, for example {@code batches[2].lots[0].count}; may be empty. */
    public String where() {
        return where;
    }

    /** What is wrong and what to do, as one sentence without the place. */
    public String what() {
        return what;
    }

    /** The same fault seen from one level further out: {@code outer} is put before the place. */
    public InvalidInput within(String outer) {
        if (where.isEmpty()) {
            return new InvalidInput(outer, what);
        }
        String joint = where.startsWith("[") ? "" : ".";
        return new InvalidInput(outer + joint + where, what);
    }
}
