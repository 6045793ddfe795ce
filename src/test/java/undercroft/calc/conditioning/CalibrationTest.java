package undercroft.calc.conditioning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static undercroft.calc.conditioning.Beers.CAPPED;
import static undercroft.calc.conditioning.Beers.constant;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.ToDoubleBiFunction;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;
import org.hipparchus.stat.inference.InferenceTestUtils;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import undercroft.catalogue.BottleFeel;
import undercroft.series.Track;

/**
 * Simulation-based calibration (Talts et al. 2018, arXiv 1804.06788): beers drawn from the prior, readings drawn from
 * the beers; the rank of the truth among the updated members must be uniform, and the 90 % interval hold it in nine of
 * ten.
 */
class CalibrationTest {
    private static final Track CELLAR = constant(18, 300);
    private static final int MEMBERS = 1024;

    /** What came of many replicates: ranks of the truth, 0 to 1, for the day of 95 % and for the uptake rate. */
    private record Ranks(List<Double> t95, List<Double> rate) {
        static double coverage(List<Double> ranks) {
            return ranks.stream().filter(u -> u > 0.05 && u < 0.95).count() / (double) ranks.size();
        }

        /** Probability of a chi-square as large if the ranks are uniform over ten bins. */
        static double uniformity(List<Double> ranks) {
            long[] counts = new long[10];
            double[] expected = new double[10];
            for (double u : ranks) {
                counts[(int) Math.min(9, 10 * u)]++;
            }
            Arrays.fill(expected, ranks.size() / 10.0);
            return InferenceTestUtils.chiSquareTest(expected, counts);
        }
    }

    @Test
    void theForecastKeepsItsPromiseAndLosesItWithoutTheAirTerm() {
        double honest = Ranks.coverage(replicate(100, Gauge.WITH_AIR).t95());
        assertEquals(0.90, honest, 0.09);
        double withoutAir = Ranks.coverage(replicate(50, Gauge.WITHOUT_AIR).t95());
        assertTrue(withoutAir < 0.82, "coverage without air " + withoutAir);
    }

    @Test
    @Tag("calibration")
    void aThousandReplicatesAreCalibrated() {
        Ranks ranks = replicate(1000, Gauge.WITH_AIR);
        System.out.printf(
                Locale.ROOT,
                "coverage t95 %.3f, rate %.3f; uniformity t95 %.3f, rate %.3f%n",
                Ranks.coverage(ranks.t95()),
                Ranks.coverage(ranks.rate()),
                Ranks.uniformity(ranks.t95()),
                Ranks.uniformity(ranks.rate()));
        assertEquals(0.90, Ranks.coverage(ranks.t95()), 0.03);
        assertEquals(0.90, Ranks.coverage(ranks.rate()), 0.03);
        assertTrue(Ranks.uniformity(ranks.t95()) > 0.01, "ranks of t95 are not uniform");
        assertTrue(Ranks.uniformity(ranks.rate()) > 0.01, "ranks of the rate are not uniform");
    }

    @Test
    @Tag("calibration")
    void withoutTheAirTermAThousandReplicatesAreNotCalibrated() {
        Ranks ranks = replicate(1000, Gauge.WITHOUT_AIR);
        System.out.printf(Locale.ROOT, "without air: coverage t95 %.3f%n", Ranks.coverage(ranks.t95()));
        assertTrue(Ranks.coverage(ranks.t95()) < 0.85);
        assertTrue(Ranks.uniformity(ranks.t95()) < 1e-6);
    }

    private static Ranks replicate(int replicates, PressureModel analysis) {
        RandomGenerator random = new Well19937c(42);
        ConditioningEnsemble prior = ConditioningEnsemble.of(Beers.ale(), MEMBERS);
        Ranks ranks = new Ranks(new ArrayList<>(), new ArrayList<>());
        for (int k = 0; k < replicates; k++) {
            double[][] z = new double[1][EnsembleParameters.DIMENSIONS + 1];
            for (int d = 0; d < z[0].length; d++) {
                z[0][d] = random.nextGaussian();
            }
            ConditioningEnsemble truth =
                    new ConditioningEnsemble(Beers.ale(), 1, z, Offsets.NONE, 1, new double[] {1}, null);
            ConditioningEnsemble updated = prior.updated(readings(truth, z[0], random), CELLAR, CAPPED, analysis);
            ConditioningRun run = updated.run(CELLAR, CAPPED, new long[0]);
            double truthT95 = truth.run(CELLAR, CAPPED, new long[0]).t95EpochSecond(0);
            double truthRate = truth.memberConstants().effectiveRate[0];
            ranks.t95().add(rank(updated, (e, m) -> run.t95EpochSecond(m), truthT95));
            ranks.rate().add(rank(updated, (e, m) -> e.memberConstants().effectiveRate[m], truthRate));
        }
        return ranks;
    }

    private static double rank(
            ConditioningEnsemble ensemble, ToDoubleBiFunction<ConditioningEnsemble, Integer> value, double truth) {
        double below = 0;
        for (int m = 0; m < ensemble.size(); m++) {
            double here = value.applyAsDouble(ensemble, m);
            below += here < truth ? ensemble.weight(m) : here == truth ? ensemble.weight(m) / 2 : 0;
        }
        return below;
    }

    /** A gauge on days 4, 8 and 12, a plastic bottle squeezed on day 6; one reading in fifty is a slip. */
    private static List<Observation> readings(ConditioningEnsemble truth, double[] z, RandomGenerator random) {
        long[] instants = Beers.at(4, 6, 8, 12);
        ConditioningRun run = truth.run(CELLAR, CAPPED, instants);
        double bottle = Math.exp(z[EnsembleParameters.DIMENSIONS]
                / 1.6448536
                * (z[EnsembleParameters.DIMENSIONS] < 0 ? -Math.log(0.92) : Math.log(1.087)));
        List<Observation> readings = new ArrayList<>();
        for (int i = 0; i < instants.length; i++) {
            double grams = run.gramsPerLitre(0, i);
            if (i == 1) {
                double bar = Gauge.WITH_AIR.gaugeBar(18, grams, truth.beerFactor(0), 0, 0);
                readings.add(new Observation.Squeeze(instants[i], felt(bar, random)));
                continue;
            }
            double expected = Gauge.WITH_AIR.gaugeBar(
                    18, grams * bottle, truth.beerFactor(0), truth.airAmount(0), truth.airTrapped(0));
            double spread = Math.hypot(0.08, 0.04 * (Math.max(0, expected) + 1));
            double read = expected + spread * student(random);
            if (random.nextDouble() < 0.02) {
                read = -1 + 10 * random.nextDouble();
            }
            readings.add(new Observation.GaugePressure(instants[i], Math.max(-1, Math.min(15, read)), 0, 18));
        }
        return readings;
    }

    private static double student(RandomGenerator random) {
        double chiSquare = 0;
        for (int i = 0; i < 5; i++) {
            chiSquare += Math.pow(random.nextGaussian(), 2);
        }
        return random.nextGaussian() / Math.sqrt(chiSquare / 5);
    }

    private static BottleFeel felt(double bar, RandomGenerator random) {
        BottleFeel[] words = BottleFeel.values();
        if (random.nextDouble() < 0.02) {
            return words[random.nextInt(words.length)];
        }
        double u = random.nextDouble();
        double latent = bar + 0.15 * Math.log(u / (1 - u));
        for (BottleFeel word : words) {
            if (latent < word.untilBar()) {
                return word;
            }
        }
        return BottleFeel.SOLID;
    }
}
