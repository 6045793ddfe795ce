package undercroft.calc.learning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import undercroft.calc.numeric.LogWeights;

/**
 * The brewer's part of every trait, from the summaries of earlier batches: a normal posterior for each of three sizes of scatter
 * between batches, with the evidence of each. Exact for normal likelihoods. The same batches in another order of equal age give
 * the same.
 */
public final class Brewer {
    /** Older batches count half for every so many newer ones of the same strain (assumed). */
    static final double HALF_LIFE_BATCHES = 4;

    /** How much more a brewer's batches scatter than assumed, as variance. */
    private static final double[] SCATTERS = {0.5, 1, 2};

    private static final double[] SCATTER_CHANCES = {0.25, 0.5, 0.25};

    private final List<BatchSummary> batches;
    private final double halfLifeBatches;
    private final Map<List<Object>, Integer> effects = new LinkedHashMap<>();
    private final double[] shares;
    private final List<RealVector> means = new ArrayList<>();
    private final List<RealMatrix> covariances = new ArrayList<>();
    private final RealMatrix before;

    private Brewer(List<BatchSummary> batches, BatchKeys next, double halfLifeBatches) {
        this.batches = batches;
        this.halfLifeBatches = halfLifeBatches;
        batches.forEach(batch -> number(batch.keys()));
        number(next);
        before = before();
        RealMatrix precision = MatrixUtils.inverse(before);
        double[] logEvidence = new double[SCATTERS.length];
        for (int k = 0; k < SCATTERS.length; k++) {
            logEvidence[k] = Math.log(SCATTER_CHANCES[k]) + update(precision, SCATTERS[k]);
        }
        shares = LogWeights.normalised(logEvidence);
    }

    /**
     * What is known before a batch.
     *
     * @param earlier summaries of earlier batches, the oldest first
     * @param next with what the batch is made
     */
    public static Brewer of(List<BatchSummary> earlier, BatchKeys next) {
        return of(earlier, next, HALF_LIFE_BATCHES);
    }

    /** The same with another forgetting; an infinite half-life forgets nothing. */
    static Brewer of(List<BatchSummary> earlier, BatchKeys next, double halfLifeBatches) {
        return new Brewer(List.copyOf(earlier), next, halfLifeBatches);
    }

    private void number(BatchKeys keys) {
        for (Trait trait : Trait.ALL) {
            effects.putIfAbsent(List.of(trait, keys.of(trait)), effects.size());
        }
    }

    private int effect(BatchKeys keys, Trait trait) {
        return effects.get(List.of(trait, keys.of(trait)));
    }

    private RealMatrix before() {
        RealMatrix covariance = new Array2DRowRealMatrix(effects.size(), effects.size());
        effects.forEach((one, i) -> effects.forEach((other, j) -> {
            Trait trait = (Trait) one.get(0);
            if (trait == other.get(0)) {
                double shared = trait.bond().isShared ? Trait.BETWEEN_YEASTS : 0;
                covariance.setEntry(i, j, trait.brewersShare() * (i.equals(j) ? 1 : shared));
            }
        }));
        return covariance;
    }

    /** How much a batch still counts, 0 to 1. */
    private double counts(int batch) {
        String strain = batches.get(batch).keys().strain();
        long newer = batches.subList(batch + 1, batches.size()).stream()
                .filter(each -> each.keys().strain().equals(strain))
                .count();
        return Math.pow(0.5, newer / halfLifeBatches);
    }

    /** Adds a scatter's posterior; returns its log evidence. */
    private double update(RealMatrix precision, double scatter) {
        RealMatrix information = precision.copy();
        RealVector pulls = new ArrayRealVector(effects.size());
        RealMatrix within = within(scatter);
        double log = 0;
        for (int b = 0; b < batches.size(); b++) {
            BatchSummary batch = batches.get(b);
            double counts = counts(b);
            LUDecomposition mixed = new LUDecomposition(MatrixUtils.createRealIdentityMatrix(Trait.COUNT)
                    .add(batch.likelihood().sharpness().multiply(within)));
            RealMatrix sharpness = mixed.getSolver().solve(batch.likelihood().sharpness());
            RealVector pull = mixed.getSolver().solve(batch.likelihood().pull());
            for (Trait trait : Trait.ALL) {
                int i = effect(batch.keys(), trait);
                pulls.addToEntry(i, counts * pull.getEntry(trait.place()));
                for (Trait other : Trait.ALL) {
                    int j = effect(batch.keys(), other);
                    double both = sharpness.getEntry(trait.place(), other.place())
                            + sharpness.getEntry(other.place(), trait.place());
                    information.addToEntry(i, j, counts * both / 2);
                }
            }
            log += counts
                    * (batch.likelihood().pull().dotProduct(within.operate(pull)) - Math.log(mixed.getDeterminant()))
                    / 2;
        }
        CholeskyDecomposition solved = new CholeskyDecomposition(information, 1e-8, 1e-12);
        RealVector mean = solved.getSolver().solve(pulls);
        means.add(mean);
        covariances.add(solved.getSolver().getInverse());
        return log
                + pulls.dotProduct(mean) / 2
                - Math.log(new LUDecomposition(information.multiply(before)).getDeterminant()) / 2;
    }

    private static RealMatrix within(double scatter) {
        RealMatrix within = new Array2DRowRealMatrix(Trait.COUNT, Trait.COUNT);
        for (Trait trait : Trait.ALL) {
            within.setEntry(trait.place(), trait.place(), scatter * (1 - trait.brewersShare()));
        }
        return within;
    }

    /** The prior of a batch made so: what the brewer's batches have in common, and how they scatter. */
    LearnedPrior prior(BatchKeys next) {
        List<LearnedPrior.Part> parts = new ArrayList<>();
        for (int k = 0; k < SCATTERS.length; k++) {
            parts.add(new LearnedPrior.Part(
                    shares[k], mean(k, next), covariance(k, next).add(within(SCATTERS[k]))));
        }
        return new LearnedPrior(parts);
    }

    /** The brewer's part alone, without what one batch does differently from another. */
    LearnedPrior ownPart(BatchKeys next) {
        List<LearnedPrior.Part> parts = new ArrayList<>();
        for (int k = 0; k < SCATTERS.length; k++) {
            parts.add(new LearnedPrior.Part(shares[k], mean(k, next), covariance(k, next)));
        }
        return new LearnedPrior(parts);
    }

    RealVector mean(int scatter, BatchKeys next) {
        RealVector mean = new ArrayRealVector(Trait.COUNT);
        for (Trait trait : Trait.ALL) {
            mean.setEntry(trait.place(), means.get(scatter).getEntry(effect(next, trait)));
        }
        return mean;
    }

    RealMatrix covariance(int scatter, BatchKeys next) {
        RealMatrix covariance = new Array2DRowRealMatrix(Trait.COUNT, Trait.COUNT);
        for (Trait trait : Trait.ALL) {
            for (Trait other : Trait.ALL) {
                covariance.setEntry(
                        trait.place(),
                        other.place(),
                        covariances.get(scatter).getEntry(effect(next, trait), effect(next, other)));
            }
        }
        return covariance;
    }

    /** How likely each size of scatter is, together 1. */
    double share(int scatter) {
        return shares[scatter];
    }

    /** Before less after, of all effects, for one scatter: what was learned; never negative definite. */
    RealMatrix learned(int scatter) {
        RealMatrix learned = before.subtract(covariances.get(scatter));
        return learned.add(learned.transpose()).scalarMultiply(0.5);
    }

    /** How many whole batches all those told of count as. */
    double effectiveBatches() {
        double all = 0;
        for (int b = 0; b < batches.size(); b++) {
            all += counts(b);
        }
        return all;
    }
}
