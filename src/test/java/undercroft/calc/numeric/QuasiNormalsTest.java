package undercroft.calc.numeric;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Arrays;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.stat.inference.KolmogorovSmirnovTest;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import undercroft.quantity.Interval;

class QuasiNormalsTest {
    @ParameterizedTest
    @ValueSource(ints = {1, 2, 7, 100, 1024, 1500})
    void everyPointIsFinite(int count) {
        double[][] points = QuasiNormals.points(count, 21);
        assertEquals(count, points.length);
        for (double[] point : points) {
            assertTrue(Arrays.stream(point).allMatch(Double::isFinite));
        }
    }

    /** Far closer to the normal distribution than chance would bring 1,024 draws (about 0.027). */
    @Test
    void everyColumnIsStandardNormalAndFreeOfTheOthers() {
        double[][] points = QuasiNormals.points(1024, 13);
        for (int d = 0; d < 13; d++) {
            int column = d;
            double[] values = Arrays.stream(points).mapToDouble(p -> p[column]).toArray();
            assertTrue(
                    new KolmogorovSmirnovTest().kolmogorovSmirnovStatistic(new NormalDistribution(), values) < 0.002);
            for (int e = 0; e < d; e++) {
                double sum = 0;
                for (double[] point : points) {
                    sum += point[d] * point[e];
                }
                assertEquals(0, sum / 1024, 0.05, "columns " + d + " and " + e);
            }
        }
    }

    @Test
    void columnsDoNotDependOnHowManyThereAre() {
        double[][] few = QuasiNormals.points(64, 13);
        double[][] many = QuasiNormals.points(64, 20);
        for (int i = 0; i < 64; i++) {
            assertEquals(few[i][12], many[i][12]);
        }
    }

    @Test
    void aSpreadHasTheFiveFiftyAndNinetyFivePercentPointsOfItsInterval() {
        double z95 = new NormalDistribution().inverseCumulativeProbability(0.95);
        Interval skewed = Interval.of(0.4, 1, 3);
        assertEquals(0.4, Spread.at(skewed, -z95), 1e-12);
        assertEquals(1, Spread.at(skewed, 0));
        assertEquals(3, Spread.at(skewed, z95), 1e-12);
        Interval fromNothing = Interval.of(0, 1, 3);
        assertEquals(0, Spread.at(fromNothing, -z95), 1e-12);
        assertEquals(0, Spread.at(fromNothing, -3));
        assertEquals(3, Spread.at(fromNothing, z95), 1e-12);
        assertEquals(-2, Spread.normalAt(Interval.of(-2, 0, 2), -z95), 1e-12);
        assertEquals(0, Spread.at(Interval.exactly(0), 2));
    }

    @Test
    void probabilitiesAreThoseOfTheNormalDistribution() {
        // Published tables of the standard normal distribution: Φ(0) = 0.5, Φ(1) = 0.841345, Φ(1.959964) = 0.975.
        assertEquals(0.5, QuasiNormals.probability(0), 1e-6);
        assertEquals(0.841345, QuasiNormals.probability(1), 2e-6);
        assertEquals(0.975, QuasiNormals.probability(1.959964), 2e-6);
        assertEquals(0.025, QuasiNormals.probability(-1.959964), 2e-6);
        assertEquals(0, QuasiNormals.probability(-60));
        assertEquals(1, QuasiNormals.probability(60));
    }
}
