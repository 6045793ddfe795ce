package undercroft.calc.numeric;

import org.hipparchus.random.RandomGenerator;
import org.hipparchus.special.Gamma;

/**
 * A multivariate Student t fitted to a weighted cloud of points: where to look again. Seven degrees of freedom and a
 * covariance a third wider than the cloud's keep its tails heavier than what it stands for, as importance sampling
 * needs. The fit is drawn towards the prior as far as the cloud is worth few points.
 */
public final class Proposal {
    private static final double FREEDOM = 7;
    private static final double WIDER = 1.3;

    private final int dimensions;
    private final double[] mean;
    private final double[][] factor;
    private final double logConstant;

    private Proposal(double[] mean, double[][] covariance) {
        this.dimensions = mean.length;
        this.mean = mean;
        this.factor = cholesky(covariance);
        double logDeterminant = 0;
        for (int d = 0; d < dimensions; d++) {
            logDeterminant += Math.log(factor[d][d]);
        }
        this.logConstant = Gamma.logGamma((FREEDOM + dimensions) / 2)
                - Gamma.logGamma(FREEDOM / 2)
                - 0.5 * dimensions * Math.log(FREEDOM * Math.PI)
                - logDeterminant;
    }

    /** Fits to points with weights that sum to 1. */
    public static Proposal fittedTo(double[][] points, double[] weights, int dimensions) {
        double squares = 0;
        double[] mean = new double[dimensions];
        for (int i = 0; i < weights.length; i++) {
            squares += weights[i] * weights[i];
            for (int d = 0; d < dimensions; d++) {
                mean[d] += weights[i] * points[i][d];
            }
        }
        double[][] covariance = new double[dimensions][dimensions];
        for (int i = 0; i < weights.length; i++) {
            if (weights[i] < 1e-12) {
                continue;
            }
            for (int d = 0; d < dimensions; d++) {
                double weighted = weights[i] * (points[i][d] - mean[d]);
                for (int e = 0; e <= d; e++) {
                    covariance[d][e] += weighted * (points[i][e] - mean[e]);
                }
            }
        }
        double worth = 1 / squares;
        double trust = worth / (worth + dimensions);
        for (int d = 0; d < dimensions; d++) {
            for (int e = 0; e <= d; e++) {
                covariance[d][e] *= WIDER * trust;
            }
            covariance[d][d] += WIDER * (1 - trust);
        }
        return new Proposal(mean, covariance);
    }

    public double[] draw(RandomGenerator random) {
        double chiSquare = 0;
        for (int i = 0; i < FREEDOM; i++) {
            double g = random.nextGaussian();
            chiSquare += g * g;
        }
        double stretch = Math.sqrt(FREEDOM / chiSquare);
        double[] normal = new double[dimensions];
        double[] point = new double[dimensions];
        for (int d = 0; d < dimensions; d++) {
            normal[d] = random.nextGaussian() * stretch;
            point[d] = mean[d];
            for (int e = 0; e <= d; e++) {
                point[d] += factor[d][e] * normal[e];
            }
        }
        return point;
    }

    public double logDensity(double[] point) {
        double[] solved = new double[dimensions];
        double square = 0;
        for (int d = 0; d < dimensions; d++) {
            double left = point[d] - mean[d];
            for (int e = 0; e < d; e++) {
                left -= factor[d][e] * solved[e];
            }
            solved[d] = left / factor[d][d];
            square += solved[d] * solved[d];
        }
        return logConstant - (FREEDOM + dimensions) / 2 * Math.log1p(square / FREEDOM);
    }

    private static double[][] cholesky(double[][] covariance) {
        int n = covariance.length;
        double[][] l = new double[n][n];
        for (int d = 0; d < n; d++) {
            for (int e = 0; e <= d; e++) {
                double sum = covariance[d][e];
                for (int k = 0; k < e; k++) {
                    sum -= l[d][k] * l[e][k];
                }
                l[d][e] = d == e ? Math.sqrt(Math.max(sum, 1e-10)) : sum / l[e][e];
            }
        }
        return l;
    }
}
