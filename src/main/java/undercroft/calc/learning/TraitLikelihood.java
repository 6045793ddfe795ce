package undercroft.calc.learning;

import java.util.Arrays;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.LUDecomposition;
import org.hipparchus.linear.MatrixUtils;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;

/**
 * What readings say of a batch's traits, as a normal likelihood: the posterior's mean and covariance with the general prior
 * divided out. Made under the general prior always; one made under a learned prior would count every earlier batch again. Immutable.
 */
public final class TraitLikelihood {
    /** A direction seen less sharply than this part of the prior's is sampling noise. */
    private static final double LEAST_SEEN = 0.1;

    private static final double NOISE_DEVIATIONS = 3;

    /** Of readings that say nothing. */
    public static final TraitLikelihood NONE =
            new TraitLikelihood(new ArrayRealVector(Trait.COUNT), new Array2DRowRealMatrix(Trait.COUNT, Trait.COUNT));

    private final RealVector pull;
    private final RealMatrix sharpness;

    TraitLikelihood(RealVector pull, RealMatrix sharpness) {
        this.pull = pull;
        this.sharpness = sharpness;
    }

    /**
     * From weighted points of a posterior.
     *
     * @param points rows of standard normal deviates in the order of {@link Trait#place}; the gauge's may be left off in all
     * @param weights one for each point, together 1; worth at least two equal points
     */
    public static TraitLikelihood of(double[][] points, double[] weights) {
        int known = points[0].length;
        double[] mean = new double[known];
        double squares = 0;
        for (int i = 0; i < points.length; i++) {
            squares += weights[i] * weights[i];
            for (int d = 0; d < known; d++) {
                mean[d] += weights[i] * points[i][d];
            }
        }
        double[][] covariance = new double[known][known];
        for (int i = 0; i < points.length; i++) {
            for (int d = 0; d < known; d++) {
                double weighted = weights[i] * (points[i][d] - mean[d]);
                for (int e = 0; e < known; e++) {
                    covariance[d][e] += weighted * (points[i][e] - mean[e]);
                }
            }
        }
        RealMatrix precision = MatrixUtils.inverse(symmetric(new Array2DRowRealMatrix(covariance)));
        RealVector pull = precision.operate(new ArrayRealVector(mean));
        RealMatrix seen = symmetric(precision.subtract(MatrixUtils.createRealIdentityMatrix(known)));
        EigenDecompositionSymmetric directions = new EigenDecompositionSymmetric(seen);
        double least = Math.max(LEAST_SEEN, NOISE_DEVIATIONS * Math.sqrt(2 * squares));
        RealVector kept = new ArrayRealVector(Trait.COUNT);
        RealMatrix sharpness = new Array2DRowRealMatrix(Trait.COUNT, Trait.COUNT);
        for (int k = 0; k < known; k++) {
            double value = directions.getEigenvalue(k);
            if (value < least) {
                continue;
            }
            RealVector direction = directions.getEigenvector(k).append(new ArrayRealVector(Trait.COUNT - known));
            kept = kept.add(
                    direction.mapMultiply(direction.getSubVector(0, known).dotProduct(pull)));
            sharpness = sharpness.add(direction.outerProduct(direction).scalarMultiply(value));
        }
        return new TraitLikelihood(kept, sharpness);
    }

    private static RealMatrix symmetric(RealMatrix matrix) {
        return matrix.add(matrix.transpose()).scalarMultiply(0.5);
    }

    /** Whether the readings say anything of what can be learned. */
    public boolean isTelling() {
        return sharpness.getTrace() > 0;
    }

    /** The likelihood's linear part: precision times what was seen. */
    RealVector pull() {
        return pull;
    }

    /** The likelihood's precision; where nothing was seen it is 0, so that it has no inverse. */
    RealMatrix sharpness() {
        return sharpness;
    }

    /** Log of the mean likelihood under a normal prior, to a constant of its own. */
    double logEvidence(RealVector mean, RealMatrix covariance) {
        RealMatrix mixed = MatrixUtils.createRealIdentityMatrix(Trait.COUNT).add(sharpness.multiply(covariance));
        LUDecomposition solver = new LUDecomposition(mixed);
        RealVector centred = pull.subtract(sharpness.operate(mean));
        RealVector solved = solver.getSolver().solve(centred);
        return pull.dotProduct(mean)
                - 0.5 * mean.dotProduct(sharpness.operate(mean))
                + 0.5 * centred.dotProduct(covariance.operate(solved))
                - 0.5 * Math.log(solver.getDeterminant());
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof TraitLikelihood that
                && Arrays.equals(pull.toArray(), that.pull.toArray())
                && Arrays.deepEquals(sharpness.getData(), that.sharpness.getData());
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(pull.toArray());
    }
}
