package undercroft.catalogue;

/** What shuts the bottle. None of them is a safety valve. */
public enum Closure implements Listed {
    CROWN("crown", "crown cap"),
    SWING_TOP("swing-top", "swing-top"),
    WIRED_CORK("wired-cork", "wired cork"),
    SCREW("screw", "screw cap");

    private final String id;
    private final String label;

    Closure(String id, String label) {
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
