package undercroft.calc.chill;

import undercroft.catalogue.Listed;

/**
 * How bottles stand together, with how many times longer they take than one alone. Assumed; a crate of twenty reckoned
 * as one block with U = 7 W/(m²·K) gives 1.7 to 1.9, and tight packing up to twice that.
 */
public enum Arrangement implements Listed {
    SINGLE("single", 1),
    ROW("row", 1.3),
    FULL_SHELF("full-shelf", 1.8),
    CRATE("crate", 2.2);

    private final String id;
    private final double timeFactor;

    Arrangement(String id, double timeFactor) {
        this.id = id;
        this.timeFactor = timeFactor;
    }

    @Override
    public String id() {
        return id;
    }

    public double timeFactor() {
        return timeFactor;
    }

    /**
     * How so many bottles are likely to stand in a household fridge: one alone, up to five in a row, up to eleven on a
     * full shelf, from twelve on as tight as a crate (assumed).
     *
     * @param bottles 1 or more
     */
    public static Arrangement ofCount(int bottles) {
        if (bottles < 1) {
            throw new IllegalArgumentException("no bottles stand in no arrangement");
        }
        if (bottles == 1) {
            return SINGLE;
        }
        if (bottles <= 5) {
            return ROW;
        }
        return bottles <= 11 ? FULL_SHELF : CRATE;
    }
}
