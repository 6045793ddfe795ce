package undercroft.catalogue;

/** What shuts the bottle. None of them is a safety valve. */
public enum Closure implements Listed {
    CROWN("crown"),
    SWING_TOP("swing-top"),
    WIRED_CORK("wired-cork"),
    SCREW("screw");

    private final String id;

    Closure(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
