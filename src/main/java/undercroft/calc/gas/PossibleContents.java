package undercroft.calc.gas;

import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.random.SobolSequenceGenerator;
import undercroft.quantity.Interval;

/**
 * What the bottles of a lot may hold once everything has fermented, as equally likely versions: carbon dioxide by its
 * origin, how well the beer holds it, and the air. Independent of each other; drawn from a quasi-random sequence, so the
 * same input gives the same versions. Amounts in grams of CO2 per litre of beer.
 */
public final class PossibleContents {
    /** How many versions: with as many the 95 % pressure is within 0.02 bar of what ever more of them give. */
    public static final int VERSIONS = 512;

    private static final int DIMENSIONS = 6;

    private final double[] even;
    private final double[] primed;
    private final double[] beerFactor;
    private final double[] airAmount;
    private final double[] airTrapped;

    private PossibleContents(
            double[] even, double[] primed, double[] beerFactor, double[] airAmount, double[] airTrapped) {
        this.even = even;
        this.primed = primed;
        this.beerFactor = beerFactor;
        this.airAmount = airAmount;
        this.airTrapped = airTrapped;
    }

    /**
     * Versions of a lot.
     *
     * @param residual CO2 in the beer when capped, 0 or more
     * @param primed CO2 from the priming sugar, which one bottle gets more of than another, 0 or more
     * @param unfinished CO2 from what was not fermented out, the same in every bottle, 0 or more
     * @param beerFactor solubility over that in water, as from {@link BeerFactor#of}
     */
    public static PossibleContents of(
            Interval residual, Interval primed, Interval unfinished, Interval beerFactor, TrappedAir air) {
        double[] even = new double[VERSIONS];
        double[] sugar = new double[VERSIONS];
        double[] factor = new double[VERSIONS];
        double[] amount = new double[VERSIONS];
        double[] trapped = new double[VERSIONS];
        for (int v = 0; v < VERSIONS; v++) {
            even[v] = residual.valueAt(Points.NORMAL[v][0]) + unfinished.valueAt(Points.NORMAL[v][2]);
            sugar[v] = primed.valueAt(Points.NORMAL[v][1]);
            factor[v] = beerFactor.valueAt(Points.NORMAL[v][3]);
            amount[v] = air.amountAt(Points.UNIFORM[v][4]);
            trapped[v] = air.trappedAt(Points.UNIFORM[v][5]);
        }
        return new PossibleContents(even, sugar, factor, amount, trapped);
    }

    int size() {
        return even.length;
    }

    /** CO2 of a version in a bottle that got {@code factor} times the average sugar, g/L. */
    double gramsPerLitre(int version, double factor) {
        return even[version] + factor * primed[version];
    }

    double beerFactor(int version) {
        return beerFactor[version];
    }

    double airAmount(int version) {
        return airAmount[version];
    }

    double airTrapped(int version) {
        return airTrapped[version];
    }

    /** CO2 of the average bottle, volumes apart: 5, 50, 95 %, g/L. */
    public Interval gramsPerLitre() {
        double[] all = new double[size()];
        for (int v = 0; v < all.length; v++) {
            all[v] = gramsPerLitre(v, 1);
        }
        return FinishedPressure.interval(all);
    }

    /** The points, made once. The second block of the sequence is used, which holds no coordinate of 0. */
    private static final class Points {
        static final double[][] UNIFORM = new double[VERSIONS][];
        static final double[][] NORMAL = new double[VERSIONS][DIMENSIONS];

        static {
            SobolSequenceGenerator sobol = new SobolSequenceGenerator(DIMENSIONS);
            NormalDistribution normal = new NormalDistribution();
            UNIFORM[0] = sobol.skipTo(VERSIONS);
            for (int v = 0; v < VERSIONS; v++) {
                if (v > 0) {
                    UNIFORM[v] = sobol.nextVector();
                }
                for (int d = 0; d < DIMENSIONS; d++) {
                    NORMAL[v][d] = normal.inverseCumulativeProbability(UNIFORM[v][d]);
                }
            }
        }
    }
}
