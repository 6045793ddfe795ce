package undercroft.calc.learning;

import java.util.List;

/**
 * A constant of which a part belongs to the brewer, and with what it stays. The shares of the variance are assumed.
 *
 * <p>What decides over safety or is not seen by any reading is not among them: minimum temperature, death of yeast, how well beer
 * holds gas, what was dissolved before, tasters, hidden extract.
 */
public enum Trait {
    /** How fast the sugar is taken up: most of what is unknown is cell count and strain. */
    RATE(0, 0.75, Bond.YEAST),
    /** How long the yeast waits; its age at bottling varies more. */
    LAG(1, 0.60, Bond.YEAST),
    /** How early it slows down: a constant of the strain. */
    SATURATION(2, 0.75, Bond.STRAIN),
    /** A scale and volume marks, against weighing and mixing of the day. */
    DOSE(3, 0.40, Bond.BREWER),
    /** Air capped in that stays in the headspace. */
    AIR(4, 0.50, Bond.METHOD),
    /** How much warmer the bottles are than what the place tells. */
    PLACE(5, 0.70, Bond.PLACE),
    /** What the gauge shows over what is there. The last one, so that what knows no gauge leaves it off. */
    GAUGE(6, 0.80, Bond.GAUGE);

    /** All traits; a batch without a gauge has one fewer. */
    public static final int COUNT = 7;

    /** Two yeasts of one brewer share this much of the brewer's part (assumed). */
    static final double BETWEEN_YEASTS = 0.5;

    /** With what a brewer's part stays. */
    enum Bond {
        YEAST(true),
        STRAIN(true),
        BREWER(false),
        METHOD(false),
        PLACE(false),
        GAUGE(false);

        final boolean isShared;

        Bond(boolean isShared) {
            this.isShared = isShared;
        }
    }

    static final List<Trait> ALL = List.of(values());

    private final int place;
    private final double brewersShare;
    private final Bond bond;

    Trait(int place, double brewersShare, Bond bond) {
        this.place = place;
        this.brewersShare = brewersShare;
        this.bond = bond;
    }

    /** Its row among the traits. */
    public int place() {
        return place;
    }

    /** The brewer's share of the variance, 0 to 1. */
    double brewersShare() {
        return brewersShare;
    }

    Bond bond() {
        return bond;
    }
}
