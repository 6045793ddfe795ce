package undercroft.cellar;

import java.util.OptionalDouble;
import undercroft.catalogue.BeerStyle;
import undercroft.quantity.Check;

/**
 * What is in the bottles.
 *
 * @param abvPercent strength, % by volume
 * @param bitternessIbu bitterness, IBU
 * @param reducedHopShare share of the bitterness from light-stable hop products, 0 to 1
 * @param colourEbc colour, EBC
 * @param warmestCelsius warmest the beer has been since fermentation ended: sets the residual carbonation
 * @param gravityAtBottling specific gravity when bottled, if it was read
 * @param gravityIncludesPriming true when the priming sugar was in the beer already when that gravity was read
 * @param expectedFinalGravity specific gravity at which fermentation is complete, if known
 */
public record Beer(
        BeerStyle kind,
        double abvPercent,
        double bitternessIbu,
        double reducedHopShare,
        double colourEbc,
        double warmestCelsius,
        OptionalDouble gravityAtBottling,
        boolean gravityIncludesPriming,
        OptionalDouble expectedFinalGravity) {
    public Beer {
        Check.within("abvPercent", abvPercent, 0, 20, "%");
        Check.within("bitternessIbu", bitternessIbu, 0, 200, "IBU");
        Check.within("reducedHopShare", reducedHopShare, 0, 1, "");
        Check.within("colourEbc", colourEbc, 1, 200, "EBC");
        Check.within("warmestCelsius", warmestCelsius, -2, 45, "°C");
        if (gravityAtBottling.isPresent()) {
            Check.within("gravityAtBottling", gravityAtBottling.getAsDouble(), 0.980, 1.200, "");
        }
        if (expectedFinalGravity.isPresent()) {
            Check.within("expectedFinalGravity", expectedFinalGravity.getAsDouble(), 0.980, 1.200, "");
        }
    }

    /** A beer whose gravity, if any, was read before the sugar. */
    public Beer(
            BeerStyle kind,
            double abvPercent,
            double bitternessIbu,
            double reducedHopShare,
            double colourEbc,
            double warmestCelsius,
            OptionalDouble gravityAtBottling,
            OptionalDouble expectedFinalGravity) {
        this(
                kind,
                abvPercent,
                bitternessIbu,
                reducedHopShare,
                colourEbc,
                warmestCelsius,
                gravityAtBottling,
                false,
                expectedFinalGravity);
    }

    /** Gravity points still to ferment when it was bottled; 0 when unknown or finished. */
    public double unfinishedPoints() {
        if (gravityAtBottling.isEmpty() || expectedFinalGravity.isEmpty()) {
            return 0;
        }
        return Math.max(0, (gravityAtBottling.getAsDouble() - expectedFinalGravity.getAsDouble()) * 1000);
    }
}
