package undercroft.outlook.lot;

/** How much a batch wants attention; rising. */
public enum Alert {
    CLEAR,
    WATCH,
    ACT;

    public Alert or(Alert other) {
        return compareTo(other) >= 0 ? this : other;
    }
}
