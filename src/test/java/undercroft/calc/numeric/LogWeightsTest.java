package undercroft.calc.numeric;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;

/** Worked by hand: weights of one to three, moved to where their exponentials are 0 or infinite. */
class LogWeightsTest {
    private static final double[] ONE_TO_THREE = {0.25, 0.75};

    private static double[] oneToThree(double log) {
        return new double[] {log, log + Math.log(3)};
    }

    @Test
    void weightsTooSmallOrTooLargeForANumberKeepTheirShares() {
        for (double log : new double[] {-10_000, -1, 0, 10_000}) {
            assertArrayEquals(ONE_TO_THREE, LogWeights.normalised(oneToThree(log)), 1e-9, "at " + log);
            assertEquals(log + Math.log(4), LogWeights.logSum(oneToThree(log)), 1e-9, "at " + log);
        }
    }

    @Test
    void whatIsImpossibleWeighsNothing() {
        double[] logs = {Double.NEGATIVE_INFINITY, -5};
        assertArrayEquals(new double[] {0, 1}, LogWeights.normalised(logs));
        assertEquals(-5, LogWeights.logSum(logs));
    }
}
