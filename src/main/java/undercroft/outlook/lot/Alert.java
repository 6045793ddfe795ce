package undercroft.outlook.lot;

/** How much a batch wants attention; rising. */
public enum Alert {
    CLEAR("all well"),
    WATCH("watch"),
    ACT("act now");

    private final String label;

    Alert(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }

    public Alert or(Alert other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
