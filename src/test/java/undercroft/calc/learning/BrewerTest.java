package undercroft.calc.learning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.EigenDecompositionSymmetric;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.junit.jupiter.api.Test;

/**
 * One trait at a time, each batch seen at 1.0 ± 0.32. The expected figures follow from conjugate normal updating (Lindley and Smith
 * 1972, J. R. Stat. Soc. B 34:1) and were worked out apart from this program, to four decimals.
 */
class BrewerTest {
    private static final BatchKeys ALE = new BatchKeys("ale", "fresh", "bottling-wand", "cupboard", "gauge");
    private static final BatchKeys SAISON = new BatchKeys("saison", "fresh", "bottling-wand", "cupboard", "gauge");
    private static final double NEVER = Double.POSITIVE_INFINITY;
    private static final int RATE = Trait.RATE.place();
    private static final int USUAL_SCATTER = 1;

    private static BatchSummary seen(BatchKeys keys, double at) {
        RealVector pull = new ArrayRealVector(Trait.COUNT);
        pull.setEntry(RATE, 10 * at);
        RealMatrix sharpness = new Array2DRowRealMatrix(Trait.COUNT, Trait.COUNT);
        sharpness.setEntry(RATE, RATE, 10);
        return new BatchSummary(keys, 2, new TraitLikelihood(pull, sharpness));
    }

    private static Brewer after(BatchKeys next, double... seen) {
        List<BatchSummary> batches = new ArrayList<>();
        for (double each : seen) {
            batches.add(seen(ALE, each));
        }
        return Brewer.of(batches, next, NEVER);
    }

    private static double[] ones(int count) {
        double[] ones = new double[count];
        java.util.Arrays.fill(ones, 1);
        return ones;
    }

    private static void assertBrewer(int batches, double mean, double variance, double nextVariance, double... levels) {
        Brewer brewer = after(ALE, ones(batches));
        double spread = brewer.covariance(USUAL_SCATTER, ALE).getEntry(RATE, RATE);
        assertEquals(mean, brewer.mean(USUAL_SCATTER, ALE).getEntry(RATE), 1e-4);
        assertEquals(variance, spread, 1e-4);
        assertEquals(nextVariance, spread + 0.25, 1e-4);
        NormalDistribution learned =
                new NormalDistribution(brewer.mean(USUAL_SCATTER, ALE).getEntry(RATE), Math.sqrt(spread + 0.25));
        NormalDistribution general = new NormalDistribution();
        double[] wanted = {0.05, 0.5, 0.95};
        for (int i = 0; i < wanted.length; i++) {
            double level = wanted[i];
            double found = new BrentSolver(1e-10)
                    .solve(
                            200,
                            z -> (1 - LearnedPrior.GENERAL_SHARE) * learned.cumulativeProbability(z)
                                    + LearnedPrior.GENERAL_SHARE * general.cumulativeProbability(z)
                                    - level,
                            -4,
                            4);
            assertEquals(levels[i], found, 1e-4);
        }
    }

    @Test
    void batchesSeenAlikeDrawTheBrewersPartTowardsThemAndNarrowTheNextOne() {
        assertBrewer(0, 0, 0.75, 1, -1.6449, 0, 1.6449);
        assertBrewer(1, 0.6818, 0.2386, 0.4886, -0.7618, 0.6108, 1.8139);
        assertBrewer(3, 0.8654, 0.1010, 0.3510, -0.5602, 0.7904, 1.8240);
        assertBrewer(10, 0.9554, 0.0334, 0.2834, -0.4846, 0.8819, 1.8174);
    }

    @Test
    void anotherStrainOfTheSameBrewerTakesHalf() {
        Brewer brewer = after(SAISON, 1);
        assertEquals(0.3409, brewer.mean(USUAL_SCATTER, SAISON).getEntry(RATE), 1e-4);
        assertEquals(0.6222, brewer.covariance(USUAL_SCATTER, SAISON).getEntry(RATE, RATE), 1e-4);
    }

    private static void assertScatter(double[] seen, double[] shares, double[] means) {
        Brewer brewer = after(ALE, seen);
        for (int k = 0; k < 3; k++) {
            assertEquals(shares[k], brewer.share(k), 5e-4, "share of scatter " + k);
            if (means.length > 0) {
                assertEquals(means[k], brewer.mean(k, ALE).getEntry(RATE), 1e-4, "mean at scatter " + k);
            }
        }
    }

    @Test
    void batchesThatDifferMakeAGreaterScatterLikely() {
        assertScatter(
                new double[] {1, 1, 1}, new double[] {0.3745, 0.4837, 0.1417}, new double[] {0.9091, 0.8654, 0.7895});
        assertScatter(
                new double[] {1, -1, 1}, new double[] {0.0388, 0.4055, 0.5556}, new double[] {0.3030, 0.2885, 0.2632});
        assertScatter(new double[] {2, -2, 2}, new double[] {0, 0.006, 0.994}, new double[] {});
    }

    /** A share of 0.1 forgotten with each newer batch; over ten batches that leaves this many. */
    @Test
    void olderBatchesCountLess() {
        List<BatchSummary> ten = Collections.nCopies(10, seen(ALE, 1));
        assertEquals(7.466, Brewer.of(ten, ALE, 10).effectiveBatches(), 1e-3);
        assertEquals(10, Brewer.of(ten, ALE, NEVER).effectiveBatches(), 1e-12);
        List<BatchSummary> two = List.of(seen(SAISON, 1), seen(ALE, 1));
        assertEquals(2, Brewer.of(two, ALE).effectiveBatches(), 1e-12, "a batch of another strain makes none older");
    }

    @Test
    void theOrderOfBatchesOfEqualAgeDoesNotMatter() {
        Brewer one = after(ALE, 1, -0.3, 0.4);
        Brewer other = after(ALE, 0.4, 1, -0.3);
        for (int k = 0; k < 3; k++) {
            assertEquals(one.share(k), other.share(k), 1e-9);
            assertEquals(0, one.mean(k, ALE).subtract(other.mean(k, ALE)).getNorm(), 1e-9);
        }
    }

    @Test
    void aBatchThatSawNothingChangesNothing() {
        BatchSummary blind = new BatchSummary(ALE, 1, TraitLikelihood.NONE);
        assertFalse(blind.likelihood().isTelling());
        Brewer with = Brewer.of(List.of(seen(ALE, 1), blind), ALE, NEVER);
        Brewer without = after(ALE, 1);
        for (int k = 0; k < 3; k++) {
            assertEquals(without.share(k), with.share(k), 1e-9);
            assertEquals(0, with.mean(k, ALE).subtract(without.mean(k, ALE)).getNorm(), 1e-9);
        }
    }

    @Test
    void whatIsKnownAfterwardsIsNeverLess() {
        Brewer brewer = Brewer.of(List.of(seen(ALE, 1), seen(SAISON, -1), seen(ALE, 0.2)), SAISON);
        for (int k = 0; k < 3; k++) {
            double least = Double.POSITIVE_INFINITY;
            for (double value : new EigenDecompositionSymmetric(brewer.learned(k)).getEigenvalues()) {
                least = Math.min(least, value);
            }
            assertTrue(least > -1e-9, "learned " + least);
        }
    }

    @Test
    void aBatchFarFromTheOthersIsUnlikeThem() {
        Lessons lessons = new Lessons(List.of(seen(ALE, 1), seen(ALE, 1.1), seen(ALE, 0.9)), ALE);
        assertTrue(lessons.evidenceRatio(seen(ALE, 1)) > 1);
        assertTrue(lessons.isUnlike(seen(ALE, -2.5)));
    }
}
