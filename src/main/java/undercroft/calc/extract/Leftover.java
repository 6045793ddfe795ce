package undercroft.calc.extract;

import undercroft.quantity.Check;

/**
 * Fermentable extract that was left when the beer was bottled, told by a hydrometer: a gravity above the expected end. It
 * ferments like the priming sugar. Told as the carbon dioxide it gives, 1 g/L for a gravity point.
 *
 * @param gramsPerLitre expected, g/L of carbon dioxide, 0 to 60
 * @param deviation its standard deviation, g/L, 0 to 5
 */
public record Leftover(double gramsPerLitre, double deviation) {
    /** Finished beer. */
    public static final Leftover NONE = new Leftover(0, 0);

    /** A hydrometer read twice: half a division and what the gas in the sample does, points (assumed). */
    private static final double READ_TWICE = 0.7;

    /** What one reading adds to that, points (assumed). */
    private static final double READ_ONCE = 1.0;

    public Leftover {
        Check.within("extraGramsPerLitre", gramsPerLitre, 0, 60, "g/L");
        Check.within("deviation", deviation, 0, 5, "g/L");
    }

    /**
     * From how far the last gravity stands above the expected end. At the expected end the beer counts as finished; the
     * spread grows from there to its full size at one point, so that nothing jumps.
     *
     * @param points 0 to 60, thousandths of specific gravity
     * @param steady whether two readings some days apart were equal
     */
    public static Leftover ofPoints(double points, boolean steady) {
        double spread = steady ? READ_TWICE : Math.hypot(READ_TWICE, READ_ONCE);
        return new Leftover(points, spread * Math.min(1, points));
    }

    /** Carbon dioxide at a standard normal deviate, g/L, never below 0. */
    public double gramsPerLitreAt(double deviate) {
        return Math.max(0, gramsPerLitre + deviation * deviate);
    }
}
