package undercroft.plot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import undercroft.plot.mark.Points;

final class DenseLineTest {
    /** Held against a slow walk along the line: at the middle of a column the area reaches as far as the line in it. */
    @Property(tries = 200, seed = "20260104")
    void everyColumnIsCoveredAsHighAndAsDeepAsTheLineGoes(
            @ForAll long seed, @ForAll @IntRange(min = 2, max = 400) int size) {
        Random random = new Random(seed);
        double[] xy = new double[2 * size];
        for (int i = 0; i < size; i++) {
            xy[2 * i] = i / 6.0;
            xy[2 * i + 1] = 50 + 20 * random.nextGaussian();
        }
        Points line = Points.of(xy);
        Points area = DenseLine.of(line, 1).area();
        int columns = area.size() / 2;
        assertEquals((int) Math.floor((size - 1) / 6.0) + 1, columns);
        for (int column = 0; column < columns; column++) {
            double top = area.y(column) + 0.5;
            double bottom = area.y(area.size() - 1 - column) - 0.5;
            double least = Double.POSITIVE_INFINITY;
            double most = Double.NEGATIVE_INFINITY;
            for (int i = 0; i < size; i++) {
                if (Math.floor(line.x(i)) == column) {
                    assertTrue(top - 1e-9 <= line.y(i) && line.y(i) <= bottom + 1e-9, "point " + i);
                    least = Math.min(least, line.y(i));
                    most = Math.max(most, line.y(i));
                }
            }
            double entry = column == 0 ? least : line.y(6 * column - 1);
            assertEquals(Math.min(least, entry), top, 1e-9);
            assertEquals(Math.max(most, entry), bottom, 1e-9);
        }
    }

    @Test
    void aLevelLineIsAsThickAsItsStroke() {
        Points area = DenseLine.of(Points.of(0.2, 5, 0.6, 5, 1.1, 5, 1.9, 5), 2).area();
        assertEquals(Points.of(0.4, 4, 1.5, 4, 1.5, 6, 0.4, 6), area);
    }
}
