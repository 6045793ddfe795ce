package undercroft.catalogue;

/** How an opened bottle pours and tastes for fizz, weakest first. */
public enum Liveliness implements Listed {
    FLAT("flat", "flat"),
    FAINT("faint", "a faint prickle"),
    SOFT("soft", "soft"),
    FULL("full", "as it should be"),
    VERY_LIVELY("very-lively", "very lively");

    private final String id;
    private final String label;

    Liveliness(String id, String label) {
        this.id = id;
        this.label = label;
    }

    @Override
    public String id() {
        return id;
    }

    @Override
    public String label() {
        return label;
    }
}
