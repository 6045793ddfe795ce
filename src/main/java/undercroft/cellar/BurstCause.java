package undercroft.cellar;

import undercroft.catalogue.Listed;

/** What a person holds to be why a bottle burst, once asked. */
public enum BurstCause implements Listed {
    CHIPPED("chipped"),
    OVER_PRIMED("over-primed"),
    UNFINISHED("unfinished"),
    UNKNOWN("unknown");

    private final String id;

    BurstCause(String id) {
        this.id = id;
    }

    @Override
    public String id() {
        return id;
    }
}
