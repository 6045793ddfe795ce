package undercroft.outlook.lot;

/** How far a batch has come. */
public enum Stage {
    FILLING("being planned"),
    CARBONATING("carbonating"),
    CLEARING("clearing"),
    READY("ready"),
    PAST_BEST_BEFORE("past its best"),
    EMPTY("all gone");

    private final String label;

    Stage(String label) {
        this.label = label;
    }

    public String label() {
        return label;
    }
}
