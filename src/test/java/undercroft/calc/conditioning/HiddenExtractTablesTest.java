package undercroft.calc.conditioning;

import static org.junit.jupiter.api.Assertions.assertAll;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static undercroft.calc.conditioning.Beers.CAPPED;
import static undercroft.calc.conditioning.Beers.DAY;
import static undercroft.calc.conditioning.ReferenceBatch.bursts;
import static undercroft.calc.conditioning.ReferenceBatch.gauge;
import static undercroft.calc.conditioning.ReferenceBatch.gauges;
import static undercroft.calc.conditioning.ReferenceBatch.gravity;
import static undercroft.calc.conditioning.ReferenceBatch.narrow;
import static undercroft.calc.conditioning.ReferenceBatch.wide;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import undercroft.calc.extract.HiddenExtract;
import undercroft.calc.extract.Leftover;
import undercroft.catalogue.PerceivedCarbonation;

/**
 * What evidence makes of the reference batch, against a prototype of another kind (Henry's law with Weiss' solubility, loss of
 * yeast left out): worked out for this project, unpublished. Within 0.05 vol, 0.1 bar and 1.5 K where plain batches decide, 0.3
 * vol, 0.4 bar and 3 K where hidden extract does, and 0.07 of its probability. Twice that at the 95 % end after a burst or two:
 * where hidden extract has a share of 5 to 25 % that end stands on a steep slope.
 */
class HiddenExtractTablesTest {
    private static final double ANY = Double.NaN;

    /**
     * A line of the table.
     *
     * @param end 5, 50 and 95 % of the final carbonation, volumes
     * @param bar the same of the pressure on day 70
     * @param strongest 95 % of the strongest of fifty
     * @param heat limit, and the median
     */
    record Row(
            String name,
            ReferenceBatch batch,
            List<Observation> seen,
            double hidden,
            List<Double> end,
            List<Double> bar,
            double strongest,
            List<Double> heat) {
        @Override
        public String toString() {
            return name;
        }
    }

    private static Row row(
            String name,
            ReferenceBatch batch,
            List<Observation> seen,
            double hidden,
            List<Double> end,
            List<Double> bar,
            double strongest,
            Double... heat) {
        return new Row(name, batch, seen, hidden, end, bar, strongest, List.of(heat));
    }

    private static List<Double> v(Double... values) {
        return List.of(values);
    }

    private static List<Observation> lively(int words) {
        List<Observation> seen = new ArrayList<>();
        for (int i = 0; i < words; i++) {
            seen.add(new Observation.Opened(CAPPED + 40 * DAY + i, PerceivedCarbonation.VERY_LIVELY));
        }
        return seen;
    }

    static List<Row> narrowRows() {
        List<Observation> none = List.of();
        return List.of(
                row(
                        "no reading, nothing hidden",
                        narrow(0),
                        none,
                        0,
                        v(2.25, 2.39, 2.54),
                        v(2.33, 2.61, 2.92),
                        3.17,
                        33.7,
                        37.5),
                row("no reading", narrow(0.1), none, 0.1, v(2.26, 2.40, 3.10), v(2.34, 2.63, 3.36), 3.59, 27.5, 37.2),
                row(
                        "no reading, 0.05",
                        narrow(0.05),
                        none,
                        0.05,
                        v(2.25, 2.40, 2.62),
                        v(2.34, 2.62, 3.03),
                        3.27,
                        32.4,
                        37.4),
                row(
                        "leftover of 0 by a hydrometer",
                        new ReferenceBatch(120, HiddenExtract.NONE, new Leftover(0, 0.7), false),
                        none,
                        0,
                        v(2.28, 2.47, 2.99),
                        v(2.37, 2.74, 3.40),
                        3.62,
                        28.9,
                        35.9),
                row(
                        "gauges of 2.6",
                        narrow(0.1),
                        gauges(2.6, 2.6, 2.6),
                        0.016,
                        v(2.26, 2.39, 2.53),
                        v(2.43, 2.60, 2.79),
                        3.02,
                        34.9,
                        37.5),
                row(
                        "gauges of 3.2",
                        narrow(0.1),
                        gauges(3.2, 3.2, 3.2),
                        0.52,
                        v(2.40, 2.64, 3.29),
                        v(2.85, 3.08, 3.40),
                        3.63,
                        26.2,
                        31.7),
                row(
                        "gauges of 3.3",
                        narrow(0.1),
                        gauges(3.3, 3.3, 3.3),
                        0.75,
                        v(2.46, 2.91, 3.43),
                        v(2.95, 3.23, 3.53),
                        3.76,
                        24.6,
                        29.7),
                row(
                        "gauges of 4.5 to 4.7",
                        narrow(0.1),
                        gauges(4.5, 4.6, 4.7),
                        1,
                        v(3.70, 4.18, 5.04),
                        v(4.22, 4.54, 4.94),
                        5.21,
                        11.8,
                        17.8),
                row(
                        "one bottle, 4.5 to 4.7",
                        narrow(0.1),
                        List.of(gauge(60, 4.5, 0), gauge(64, 4.6, 0), gauge(68, 4.7, 0)),
                        1,
                        v(3.63, 4.18, 5.17),
                        v(4.10, 4.58, 5.08),
                        5.31,
                        10.9,
                        17.5),
                row(
                        "one gauge of 2.6",
                        narrow(0.1),
                        gauges(2.6),
                        0.03,
                        v(ANY, 2.39, 2.55),
                        v(ANY, 2.61, 2.86),
                        3.10,
                        34.1),
                row(
                        "one gauge of 3.3",
                        narrow(0.1),
                        gauges(3.3),
                        0.42,
                        v(ANY, 2.55, 3.40),
                        v(ANY, 2.98, 3.59),
                        3.82,
                        24.7),
                row(
                        "one gauge of 6.0",
                        narrow(0.1),
                        gauges(6.0),
                        1,
                        v(4.54, 5.32, 6.77),
                        v(5.20, 5.94, 6.69),
                        6.94,
                        3.6,
                        10.3),
                row(
                        "gravity fallen by six",
                        narrow(0.1),
                        List.of(gravity(68, -6)),
                        0.96,
                        v(3.15, 4.97, 6.84),
                        v(3.39, 5.48, 7.19),
                        7.40,
                        2.7,
                        12.2),
                row(
                        "gravity unchanged",
                        narrow(0.1),
                        List.of(gravity(68, 0)),
                        0.045,
                        v(2.25, 2.39, 2.59),
                        v(2.34, 2.62, 2.97),
                        3.21,
                        33.0,
                        37.4),
                row(
                        "three very lively",
                        narrow(0.1),
                        lively(3),
                        0.69,
                        v(2.35, 3.44, 6.67),
                        v(2.48, 3.74, 7.25),
                        7.50,
                        4.0,
                        24.2),
                row(
                        "one very lively",
                        narrow(0.1),
                        lively(1),
                        0.25,
                        v(2.28, 2.45, 4.61),
                        v(2.38, 2.71, 4.94),
                        5.18,
                        14.6,
                        36.2),
                row(
                        "one burst",
                        narrow(0.1),
                        bursts(1, 50),
                        0.20,
                        v(2.28, 2.44, 4.36),
                        v(2.42, 2.74, 4.80),
                        5.03,
                        16.2,
                        36.0),
                row(
                        "two burst",
                        narrow(0.1),
                        bursts(2, 50),
                        0.44,
                        v(2.31, 2.53, 6.12),
                        v(2.50, 2.93, 6.81),
                        7.08,
                        6.4,
                        33.5),
                row(
                        "diastatic",
                        new ReferenceBatch(120, HiddenExtract.DIASTATIC, Leftover.NONE, false),
                        none,
                        1,
                        v(3.59, 4.79, 7.18),
                        v(3.22, 4.59, 7.36),
                        7.58,
                        1.9,
                        13.3),
                row(
                        "three points left",
                        new ReferenceBatch(120, HiddenExtract.undeclared(0.1), new Leftover(3, 1.2), false),
                        none,
                        0.1,
                        v(2.93, 3.96, 5.19),
                        v(3.24, 4.57, 6.13),
                        6.37,
                        10.5,
                        19.4),
                row(
                        "190 g",
                        new ReferenceBatch(190, HiddenExtract.NONE, Leftover.NONE, false),
                        none,
                        0,
                        v(3.10, 3.30, 3.52),
                        v(ANY, 3.74, 4.14),
                        4.55,
                        21.1));
    }

    static List<Row> wideRows() {
        List<Observation> none = List.of();
        return List.of(
                row("no reading, 0.10", wide(0.1), none, 0.1, v(2.25, 2.40, 3.22), v(1.91, 2.59, 3.47), 3.71, 26.7),
                row(
                        "two equal gravities",
                        wide(0.03),
                        none,
                        0.03,
                        v(2.25, 2.39, 2.63),
                        v(1.89, 2.57, 3.02),
                        3.27,
                        32.9,
                        37.9),
                row("one gravity", wide(0.05), none, 0.05, v(2.25, 2.40, 2.81), v(1.90, 2.57, 3.10), 3.37, 31.0, 37.8),
                row("no gravity", wide(0.08), none, 0.08, v(2.25, 2.40, 3.07), v(1.90, 2.58, 3.29), 3.56, 28.2, 37.7),
                row(
                        "gauges of 2.6",
                        wide(0.05),
                        gauges(2.6, 2.6, 2.6),
                        0.013,
                        v(2.27, 2.39, 2.54),
                        v(2.40, 2.60, 2.84),
                        3.11,
                        34.3,
                        37.5),
                row(
                        "gauges of 3.3",
                        wide(0.05),
                        gauges(3.3, 3.3, 3.3),
                        0.32,
                        v(2.36, 2.54, 3.39),
                        v(2.75, 3.04, 3.54),
                        3.79,
                        25.1,
                        33.0),
                row(
                        "one gauge of 6.0",
                        wide(0.05),
                        gauges(6.0),
                        0.91,
                        v(4.40, 5.30, 6.77),
                        v(4.99, 5.86, 6.80),
                        7.11,
                        4.2,
                        10.7),
                row(
                        "gravity fallen by six",
                        wide(0.05),
                        List.of(gravity(68, -6)),
                        0.92,
                        v(2.42, 4.96, 6.82),
                        v(2.64, 5.35, 7.16),
                        7.37,
                        3.3,
                        13.2),
                row("one very lively", wide(0.05), lively(1), 0.13, v(ANY, ANY, 4.02), v(ANY, ANY, 4.35), 4.66, 19.4),
                row("one burst", wide(0.05), bursts(1, 50), 0.11, v(ANY, ANY, 3.76), v(ANY, ANY, 4.31), 4.55, 20.5),
                row("two burst", wide(0.05), bursts(2, 50), 0.26, v(ANY, ANY, 5.63), v(ANY, ANY, 6.35), 6.56, 8.9));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource({"narrowRows", "wideRows"})
    void theTableStands(Row row) {
        ReferenceBatch.Figures found = row.batch().figures(row.seen());
        boolean slab = row.hidden() > 0.05 || row.batch().leftover().deviation() > 0;
        double plainVolumes = row.hidden() > 0.3 ? 0.3 : 0.05;
        double plainBar = row.hidden() > 0.3 ? 0.4 : 0.1;
        double steep = row.name().endsWith("burst") ? 2 : 1;
        assertAll(
                () -> assertEquals(row.hidden(), found.hidden(), 0.07, "probability of hidden extract"),
                () -> near(row.end().get(0), found.atEnd().low(), plainVolumes, "volumes, low"),
                () -> near(row.end().get(1), found.atEnd().median(), plainVolumes, "volumes"),
                () -> near(row.end().get(2), found.atEnd().high(), steep * (slab ? 0.3 : 0.05), "volumes, high"),
                () -> near(row.bar().get(0), found.bar().low(), plainBar, "bar, low"),
                () -> near(row.bar().get(1), found.bar().median(), plainBar, "bar"),
                () -> near(row.bar().get(2), found.bar().high(), steep * (slab ? 0.4 : 0.1), "bar, high"),
                () -> near(row.strongest(), found.strongest().high(), steep * (slab ? 0.4 : 0.1), "strongest"),
                () -> near(row.heat().get(0), found.heatLimit(), slab ? 3 : 1.5, "heat limit"),
                () -> near(
                        row.heat().size() > 1 ? row.heat().get(1) : ANY,
                        found.heatMedian(),
                        slab ? 3 : 1.5,
                        "median limit"));
    }

    private static void near(double expected, double found, double give, String what) {
        if (!Double.isNaN(expected)) {
            assertEquals(expected, found, give, what);
        }
    }
}
