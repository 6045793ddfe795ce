package undercroft.calc.conditioning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static undercroft.calc.conditioning.Beers.CAPPED;
import static undercroft.calc.conditioning.Beers.DAY;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import undercroft.calc.learning.BatchKeys;
import undercroft.calc.learning.BatchSummary;
import undercroft.calc.learning.Lessons;
import undercroft.calc.learning.Trait;
import undercroft.quantity.Interval;
import undercroft.series.Track;

/**
 * Brewers drawn from the assumed split into the brewer's and the batch's part, their batches read with a gauge, the next one
 * foretold from them. What is demanded of widths and coverage is what a prototype reached, worked out for this project,
 * unpublished.
 */
class LearningSimulationTest {
    private static final double[] SHARES = {0.75, 0.60, 0.75, 0.40, 0.50, 0.70, 0.80};
    private static final int[] TWICE = {5, 12};
    private static final int[] FIVE_TIMES = {3, 6, 10, 16, 28};
    private static final int[] NEVER = {};
    private static final int BREWERS = Integer.getInteger("replicates", 200);
    private static final Offsets GAUGED = new Offsets(1, 1, 0, 0);
    private static final BatchKeys KEYS = new BatchKeys("ale", "ordinary", "wand", "cupboard", "gauge");
    private static final ReferenceBatch BATCH = ReferenceBatch.wide(0.05);
    private static final Track TRACK = track();

    private static Track track() {
        double[] celsius = new double[400 * 24 + 1];
        double[] spread = new double[celsius.length];
        Arrays.fill(celsius, 20);
        Arrays.fill(spread, 1);
        return Track.of(CAPPED, 3600, celsius, spread);
    }

    /** How the truth is drawn, how often old batches and the next one are read, and what is demanded. */
    private enum World {
        PRIOR(5, 0.88, 0.97),
        PRIOR_READ_TWICE(2, 0.88, 0.97),
        PRIOR_NEXT_READ_TWICE(5, 0.85, 0.95),
        ANOTHER_YEAST_NOT_TOLD_NEXT_READ_TWICE(5, 0.83, 1),
        ANOTHER_YEAST_TOLD(5, 0.85, 1),
        WIDER_BREWERS(5, 0.85, 1);

        private final int[] days;
        private final double least;
        private final double most;

        World(int readings, double least, double most) {
            this.days = readings == 5 ? FIVE_TIMES : TWICE;
            this.least = least;
            this.most = most;
        }

        private int[] nextDays() {
            return this == PRIOR_NEXT_READ_TWICE || this == ANOTHER_YEAST_NOT_TOLD_NEXT_READ_TWICE ? TWICE : NEVER;
        }
    }

    /** A brewer's part of the traits. */
    private static double[] brewer(RandomGenerator random, double wider) {
        double[] own = new double[Trait.COUNT];
        for (int t = 0; t < own.length; t++) {
            own[t] = wider * Math.sqrt(SHARES[t]) * random.nextGaussian();
        }
        return own;
    }

    /** One batch's deviates. */
    private static double[] batch(double[] brewer, RandomGenerator random) {
        double[] z = new double[GAUGED.dimensions()];
        for (int d = 0; d < z.length; d++) {
            z[d] = random.nextGaussian();
        }
        int[] places = {
            EnsembleParameters.RATE,
            EnsembleParameters.LAG,
            EnsembleParameters.SATURATION,
            EnsembleParameters.DOSE,
            EnsembleParameters.AIR_TRAPPED,
            EnsembleParameters.TEMPERATURE,
            GAUGED.instrument(0)
        };
        for (int t = 0; t < places.length; t++) {
            z[places[t]] = brewer[t] + Math.sqrt(1 - SHARES[t]) * random.nextGaussian();
        }
        return z;
    }

    private static ConditioningEnsemble truth(double[] z) {
        return new ConditioningEnsemble(BATCH.beer(), 1, new double[][] {z}, GAUGED, 1, new double[] {1}, null);
    }

    private static List<LotReadings> read(double[] z, int[] days, RandomGenerator random) {
        if (days.length == 0) {
            return List.of();
        }
        List<Observation> planned = new ArrayList<>();
        for (int day : days) {
            planned.add(ReferenceBatch.gauge(day, 1, 0));
        }
        double[][] expected = new ReadingLikelihood(lot(planned), GAUGED, ConditioningEnsemble.GAUGE_SCALE)
                .expected(new double[][] {z}, truth(z).memberConstants());
        List<Observation> read = new ArrayList<>();
        for (int i = 0; i < days.length; i++) {
            double bar = expected[i][0] + ReadingLaw.gaugeSpread(expected[i][0]) * random.nextGaussian();
            read.add(ReferenceBatch.gauge(days[i], Math.max(-1, Math.min(15, bar)), 0));
        }
        return List.of(lot(read));
    }

    private static LotReadings lot(List<Observation> readings) {
        return new LotReadings(readings, TRACK, CAPPED, ReferenceBatch.GAUGE, java.util.Optional.empty());
    }

    private static Interval t95Days(ConditioningEnsemble ensemble) {
        Interval seconds =
                ensemble.run(TRACK, CAPPED, new long[] {CAPPED + DAY}).t95EpochSeconds();
        return seconds.plus(-CAPPED).times(1.0 / DAY);
    }

    private static ConditioningEnsemble told(List<BatchSummary> earlier, BatchKeys keys, List<LotReadings> own) {
        Lessons lessons = new Lessons(earlier, keys);
        ConditioningEnsemble general =
                ConditioningEnsemble.of(BATCH.beer(), 512).updated(own);
        if (lessons.isEmpty()) {
            return general;
        }
        ConditioningEnsemble taught = ConditioningEnsemble.of(
                        BATCH.beer(), 512, lessons.prior().orElseThrow())
                .updated(own);
        return Lessons.isUnlike(taught.evidenceRatio(general)) ? general : taught;
    }

    /** What came out after so many batches. */
    private static final class Found {
        private int brewers;
        private int held;
        private final List<Double> widths = new ArrayList<>();

        private double width() {
            double[] sorted =
                    widths.stream().mapToDouble(Double::doubleValue).sorted().toArray();
            return sorted[sorted.length / 2];
        }

        private double coverage() {
            return held / (double) brewers;
        }
    }

    private static Found[] run(World world, int[] after, int brewers, int seed) {
        Found[] found = new Found[after.length];
        Arrays.setAll(found, i -> new Found());
        for (int b = 0; b < brewers; b++) {
            RandomGenerator random = new Well19937c(seed * 10_007 + b);
            double[] own = brewer(random, world == World.WIDER_BREWERS ? 1.7 : 1);
            double[] other = brewer(random, 1);
            List<BatchSummary> earlier = new ArrayList<>();
            int asked = 0;
            for (int k = 0; asked < after.length; k++) {
                if (k == after[asked]) {
                    boolean fresh =
                            world == World.ANOTHER_YEAST_NOT_TOLD_NEXT_READ_TWICE || world == World.ANOTHER_YEAST_TOLD;
                    double[] next = own.clone();
                    if (fresh) {
                        System.arraycopy(other, 0, next, 0, 3);
                    }
                    if (world == World.ANOTHER_YEAST_TOLD) {
                        // Two yeasts of one brewer share half of the brewer's part.
                        for (int t = 0; t < 3; t++) {
                            next[t] = 0.5 * own[t] + Math.sqrt(0.75) * other[t];
                        }
                    }
                    RandomGenerator aside = new Well19937c(seed * 20_011 + 31 * b + k);
                    double[] z = batch(next, aside);
                    BatchKeys keys = world == World.ANOTHER_YEAST_TOLD
                            ? new BatchKeys("saison", "ordinary", "wand", "cupboard", "gauge")
                            : KEYS;
                    Interval days = t95Days(told(earlier, keys, read(z, world.nextDays(), aside)));
                    double truth = t95Days(truth(z)).median();
                    found[asked].brewers++;
                    found[asked].held += truth >= days.low() && truth <= days.high() ? 1 : 0;
                    found[asked].widths.add(days.high() - days.low());
                    asked++;
                }
                if (asked == after.length) {
                    break;
                }
                double[] z = batch(own, random);
                ConditioningEnsemble seen =
                        ConditioningEnsemble.of(BATCH.beer(), 512).updated(read(z, world.days, random));
                BatchSummary summary = new BatchSummary(KEYS, world.days.length, seen.traits());
                if (seen.traits().isTelling() && !new Lessons(earlier, KEYS).isUnlike(summary)) {
                    earlier.add(summary);
                }
            }
        }
        return found;
    }

    @ParameterizedTest
    @EnumSource(World.class)
    @Tag("calibration")
    void whatTheOldBatchesTaughtHoldsForTheNextOne(World world) {
        int[] after = {0, 1, 3, 10};
        Found[] found = run(world, after, BREWERS, 7);
        StringBuilder line =
                new StringBuilder("| " + world.name().toLowerCase(Locale.ROOT).replace('_', ' '));
        for (Found each : found) {
            line.append(String.format(Locale.ROOT, " | %.1f | %.2f", each.width(), each.coverage()));
        }
        System.out.println(line + " |");
        for (int i = 1; i < after.length; i++) {
            double coverage = found[i].coverage();
            assertTrue(coverage >= world.least && coverage <= world.most, line.toString());
        }
    }

    @Test
    void withoutReadingsNothingIsLearned() {
        ConditioningEnsemble unread = ConditioningEnsemble.of(BATCH.beer(), 512);
        assertTrue(!unread.traits().isTelling());
        Lessons lessons = new Lessons(List.of(), KEYS);
        assertTrue(lessons.prior().isEmpty());
        assertEquals(1, lessons.evidenceRatio(new BatchSummary(KEYS, 1, unread.traits())));
    }

    /** Half of what ten batches give in the long run is demanded of the first three. */
    @Test
    void eachBatchWithReadingsMakesTheNextForecastNarrower() {
        Found[] found = run(World.PRIOR, new int[] {0, 3}, 6, 11);
        assertTrue(found[1].width() < 0.85 * found[0].width(), found[1].width() + " of " + found[0].width());
        assertTrue(found[1].held >= 4, found[1].held + " of 6");
    }
}
