package undercroft.calc.numeric;

import java.util.Arrays;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import org.hipparchus.distribution.continuous.NormalDistribution;
import org.hipparchus.random.SobolSequenceGenerator;

/**
 * Standard normal points spread evenly over many dimensions: a Sobol sequence (Joe and Kuo 2008 directions, as in
 * Hipparchus) through the normal quantile. No seed, no clock: the same size gives the same points.
 */
public final class QuasiNormals {
    private static final NormalDistribution NORMAL = new NormalDistribution();
    private static final double REACH = 8;
    private static final int CELLS = 4096;

    /** The widest table of each size that was asked for: every batch with readings asks for the same one. */
    private static final Map<Integer, double[][]> WIDEST = new ConcurrentHashMap<>();

    private QuasiNormals() {}

    /**
     * {@code count} rows of {@code dimensions} deviates. The block that follows the first power of two at or above
     * {@code count} is used: it is as even as the first block and holds no coordinate of 0, whose quantile is infinite.
     * Columns do not depend on how many there are. The rows are the caller's own.
     */
    public static double[][] points(int count, int dimensions) {
        double[][] widest = WIDEST.compute(
                count,
                (size, known) -> known != null && known[0].length >= dimensions ? known : made(size, dimensions));
        double[][] points = new double[count][];
        for (int i = 0; i < count; i++) {
            points[i] = Arrays.copyOf(widest[i], dimensions);
        }
        return points;
    }

    private static double[][] made(int count, int dimensions) {
        SobolSequenceGenerator sobol = new SobolSequenceGenerator(dimensions);
        int skip = Math.max(64, Integer.highestOneBit(Math.max(1, count - 1)) << 1);
        double[][] points = new double[count][];
        points[0] = sobol.skipTo(skip);
        for (int i = 1; i < count; i++) {
            points[i] = sobol.nextVector();
        }
        for (double[] point : points) {
            for (int d = 0; d < dimensions; d++) {
                point[d] = NORMAL.inverseCumulativeProbability(point[d]);
            }
        }
        return points;
    }

    /** Cumulative probability of a standard normal deviate, 0 to 1, within 1e-6; from a table, for it is asked a lot. */
    public static double probability(double z) {
        double place = (z + REACH) * CELLS / (2 * REACH);
        if (!(place > 0)) {
            return 0;
        }
        if (place >= CELLS) {
            return 1;
        }
        int cell = (int) place;
        return Table.CUMULATIVE[cell] + (place - cell) * (Table.CUMULATIVE[cell + 1] - Table.CUMULATIVE[cell]);
    }

    private static final class Table {
        static final double[] CUMULATIVE = new double[CELLS + 1];

        static {
            for (int i = 0; i <= CELLS; i++) {
                CUMULATIVE[i] = NORMAL.cumulativeProbability(-REACH + 2 * REACH * i / CELLS);
            }
        }
    }
}
