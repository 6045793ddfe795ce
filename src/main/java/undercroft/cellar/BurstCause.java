package undercroft.cellar;

import undercroft.catalogue.Listed;

/** What a person holds to be why a bottle burst, once asked. */
public enum BurstCause implements Listed {
    CHIPPED("chipped", "that bottle was chipped or worn"),
    OVER_PRIMED("over-primed", "too much sugar went in"),
    UNFINISHED("unfinished", "the beer was not finished"),
    UNKNOWN("unknown", "not known");

    private final String id;
    private final String label;

    BurstCause(String id, String label) {
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
