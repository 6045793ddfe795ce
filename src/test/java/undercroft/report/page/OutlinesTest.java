package undercroft.report.page;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.geom.Line2D;
import java.util.Random;
import org.junit.jupiter.api.Test;
import undercroft.plot.mark.Points;

/** Distances are measured by the JDK's own geometry, {@link Line2D#ptSegDist}. */
final class OutlinesTest {
    @Test
    void cornersOnAStraightLineGo() {
        assertEquals(Points.of(0, 0, 30, 60), Outlines.simplified(Points.of(0, 0, 10, 20, 20.1, 40, 30, 60)));
    }

    @Test
    void aCornerThatIsSeenStays() {
        Points peak = Points.of(0, 0, 10, 0, 11, 5, 12, 0, 30, 0);
        assertEquals(peak, Outlines.simplified(peak));
    }

    @Test
    void noCornerMovesFurtherThanThreeTenthsOfAPixel() {
        Random random = new Random(5);
        double[] xy = new double[2000];
        for (int i = 0; i < 1000; i++) {
            xy[2 * i] = i * 0.4;
            xy[2 * i + 1] = 100 + 40 * Math.sin(i / 60.0) + random.nextGaussian() * 0.2;
        }
        Points points = Points.of(xy);
        Points fewer = Outlines.simplified(points);
        assertTrue(fewer.size() < 400, fewer.size() + " corners");
        for (int i = 0; i < points.size(); i++) {
            double nearest = Double.POSITIVE_INFINITY;
            for (int k = 1; k < fewer.size(); k++) {
                nearest = Math.min(
                        nearest,
                        Line2D.ptSegDist(
                                fewer.x(k - 1), fewer.y(k - 1), fewer.x(k), fewer.y(k), points.x(i), points.y(i)));
            }
            assertTrue(nearest <= 0.3 + 1e-9, "corner " + i + " is off by " + nearest);
        }
    }
}
