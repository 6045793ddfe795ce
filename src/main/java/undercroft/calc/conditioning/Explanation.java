package undercroft.calc.conditioning;

/**
 * What may explain a batch, as probabilities that add up to 1.
 *
 * @param asWrittenDown the sugar and the beer are as the user told
 * @param moreSugar a fifth more priming sugar or more got into the bottles than was written down
 * @param moreToFerment the beer held fermentable matter nobody wrote down: it was not finished, or a wild or diastatic
 *     yeast reaches what the pitched one left
 */
public record Explanation(double asWrittenDown, double moreSugar, double moreToFerment) {
    /** A priming dose this many times the one written down, or more, is called more sugar. */
    public static final double MORE_SUGAR_FACTOR = 1.2;
}
