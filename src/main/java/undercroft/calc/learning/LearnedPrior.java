package undercroft.calc.learning;

import java.util.ArrayList;
import java.util.List;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.CholeskyDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import undercroft.calc.numeric.LogWeights;

/**
 * What a batch's traits may be before it is read: a mixture of normals, one for each size of scatter between batches, and a share
 * of the general prior for what this batch does differently from all before. Without that share a change of yeast that nobody
 * wrote down would be believed too little. Immutable.
 */
public final class LearnedPrior {
    /** How much the general prior keeps (assumed). */
    public static final double GENERAL_SHARE = 0.15;

    /** A step that never comes near to where it was: points fall evenly on the parts. */
    private static final double GOLDEN = 0.618_033_988_749_894_9;

    private static final double LOG_TWO_PI = Math.log(2 * Math.PI);

    private final List<Part> parts;
    private final List<Factor> factors = new ArrayList<>();

    /** A normal of the mixture: its share and moments in the order of {@link Trait#place}. */
    record Part(double share, RealVector mean, RealMatrix covariance) {
        static Part general(double share) {
            return new Part(share, new ArrayRealVector(Trait.COUNT), MatrixUtils.createRealIdentityMatrix(Trait.COUNT));
        }
    }

    /** The lower triangle whose leading rows are the factor of the leading traits. */
    private static final class Factor {
        final double until;
        final double share;
        final double[] mean;
        final double[][] root;

        Factor(double until, Part part) {
            this.until = until;
            this.share = part.share();
            this.mean = part.mean().toArray();
            this.root = new CholeskyDecomposition(part.covariance(), 1e-8, 1e-12)
                    .getL()
                    .getData();
        }

        void shape(double[] deviates) {
            for (int d = deviates.length - 1; d >= 0; d--) {
                double shaped = mean[d];
                for (int e = 0; e <= d; e++) {
                    shaped += root[d][e] * deviates[e];
                }
                deviates[d] = shaped;
            }
        }

        double density(double[] traits) {
            double[] solved = new double[traits.length];
            double log = -0.5 * traits.length * LOG_TWO_PI;
            for (int d = 0; d < traits.length; d++) {
                double left = traits[d] - mean[d];
                for (int e = 0; e < d; e++) {
                    left -= root[d][e] * solved[e];
                }
                solved[d] = left / root[d][d];
                log -= 0.5 * solved[d] * solved[d] + Math.log(root[d][d]);
            }
            return share * Math.exp(log);
        }
    }

    /** The parts' shares together 1. */
    LearnedPrior(List<Part> parts) {
        this.parts = List.copyOf(parts);
        double until = 0;
        for (Part part : parts) {
            until += part.share();
            factors.add(new Factor(until, part));
        }
    }

    /** With the general prior's share. */
    LearnedPrior withGeneral() {
        List<Part> mixed = new ArrayList<>();
        parts.forEach(part -> mixed.add(new Part((1 - GENERAL_SHARE) * part.share(), part.mean(), part.covariance())));
        mixed.add(Part.general(GENERAL_SHARE));
        return new LearnedPrior(mixed);
    }

    /**
     * Makes independent standard normal deviates into traits.
     *
     * @param point the how manieth point it is; the parts take turns by it
     * @param deviates in the order of {@link Trait#place}, the gauge's or more at the end may be left off; overwritten
     */
    public void shape(int point, double[] deviates) {
        double turn = (point * GOLDEN + 0.5) % 1;
        for (Factor factor : factors) {
            if (turn < factor.until) {
                factor.shape(deviates);
                return;
            }
        }
        factors.get(factors.size() - 1).shape(deviates);
    }

    /** Log of the probability density of traits, of the leading ones alone where the last are left off. */
    public double logDensity(double[] traits) {
        double density = 0;
        for (Factor factor : factors) {
            density += factor.density(traits);
        }
        return Math.log(density);
    }

    /** Log of how likely a batch's readings are, to a constant of their own. */
    double logEvidence(TraitLikelihood readings) {
        double[] logs = new double[parts.size()];
        for (int k = 0; k < logs.length; k++) {
            Part part = parts.get(k);
            logs[k] = Math.log(part.share()) + readings.logEvidence(part.mean(), part.covariance());
        }
        return LogWeights.logSum(logs);
    }

    /** How much likelier a batch's readings are than under the general prior; above 0. */
    double evidenceRatio(TraitLikelihood readings) {
        LearnedPrior general = new LearnedPrior(List.of(Part.general(1)));
        return Math.exp(logEvidence(readings) - general.logEvidence(readings));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof LearnedPrior that && parts.equals(that.parts);
    }

    @Override
    public int hashCode() {
        return parts.hashCode();
    }
}
