package undercroft.calc.conditioning;

import static org.junit.jupiter.api.Assertions.assertTrue;
import static undercroft.calc.conditioning.Beers.CAPPED;
import static undercroft.calc.conditioning.Beers.DAY;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.hipparchus.random.RandomGenerator;
import org.hipparchus.random.Well19937c;
import org.junit.jupiter.api.Tag;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import undercroft.calc.extract.HiddenExtract;
import undercroft.calc.gas.ClosedBottle;
import undercroft.calc.gas.PressureTable;
import undercroft.calc.gas.TrappedAir;
import undercroft.catalogue.BottleFeel;
import undercroft.catalogue.FillingMethod;
import undercroft.catalogue.PerceivedCarbonation;
import undercroft.quantity.Interval;
import undercroft.series.Track;

/**
 * Beers drawn from what the forecast believes, and from worlds it does not believe in, read with errors and looked at on day
 * 70: how often the 90 % ranges hold the truth, and how often the strongest bottle's 95 % pressure is not passed (simulation-based
 * calibration after Talts et al. 2018, arXiv 1804.06788). What is demanded is what a prototype of this model reached, worked
 * out for this project, unpublished; nothing is demanded without a reading in a world outside the prior.
 */
class CalibrationWorldsTest {
    private static final ReferenceBatch USUAL = ReferenceBatch.wide(0.05);
    private static final double SLIP = 0.02;
    private static final int LONG = Integer.getInteger("replicates", 1000);

    /** When what is read. */
    private enum Turn {
        NOTHING,
        GAUGE_DAY_14,
        ONE_BOTTLE_THREE_TIMES,
        THREE_BOTTLES_DAY_40,
        GAUGE_AND_GRAVITY,
        THREE_WORDS,
        GAUGE_UP_TO_DAY_65;

        private List<Observation> planned() {
            return switch (this) {
                case NOTHING -> List.of();
                case GAUGE_DAY_14 -> List.of(gauge(14, 0));
                case ONE_BOTTLE_THREE_TIMES -> List.of(gauge(7, 0), gauge(14, 0), gauge(28, 0));
                case THREE_BOTTLES_DAY_40 -> List.of(gauge(40, 0), gauge(40, 1), gauge(40, 2));
                case GAUGE_AND_GRAVITY -> List.of(gauge(21, 0), ReferenceBatch.gravity(30, 0));
                case THREE_WORDS ->
                    List.of(
                            new Observation.Opened(day(21), PerceivedCarbonation.SOFT),
                            new Observation.Squeeze(day(28), BottleFeel.FIRM),
                            new Observation.Opened(day(35), PerceivedCarbonation.SOFT));
                case GAUGE_UP_TO_DAY_65 -> List.of(gauge(14, 0), gauge(40, 0), gauge(65, 0));
            };
        }

        private static Observation gauge(int day, int bottle) {
            return ReferenceBatch.gauge(day, 1, bottle);
        }
    }

    /** What the truth is like, and what of it must be held how often with which turns. */
    private enum World {
        PRIOR(0.87, 0.93, 0.92, Turn.values()),
        /** The prototype reached 0.87, 0.82 and 0.92, this model 0.78, 0.77 and 0.79: a slow yeast still looks ordinary. */
        DOUBLED_DOSE(0.73, 1, 0, Turn.ONE_BOTTLE_THREE_TIMES),
        GAUGE_TEN_PER_CENT_LOW(0.82, 1, 0, Turn.values()),
        FOAM_CAPPED(0.80, 1, 0, Turn.GAUGE_DAY_14, Turn.ONE_BOTTLE_THREE_TIMES, Turn.THREE_BOTTLES_DAY_40),
        THREE_KELVIN_WARMER(0.87, 1, 0, Turn.values()),
        WILD_YEAST(0, 1, 0, Turn.GAUGE_UP_TO_DAY_65);

        private final double least;
        private final double most;
        private final double leastHolds;
        private final List<Turn> turns;

        World(double least, double most, double leastHolds, Turn... turns) {
            this.least = least;
            this.most = most;
            this.leastHolds = leastHolds;
            this.turns = List.of(turns);
        }

        private ReferenceBatch batch() {
            return switch (this) {
                case PRIOR -> USUAL;
                case DOUBLED_DOSE -> new ReferenceBatch(240, HiddenExtract.NONE, USUAL.leftover(), false);
                default -> ReferenceBatch.narrow(0.05);
            };
        }

        private Refermentation beer() {
            Refermentation beer = batch().beer();
            return switch (this) {
                case FOAM_CAPPED ->
                    new Refermentation(
                            beer.strain(),
                            beer.state(),
                            beer.abvPercent(),
                            beer.residualGramsPerLitre(),
                            beer.primingGramsPerLitre(),
                            beer.dose(),
                            beer.leftover(),
                            beer.hidden(),
                            TrappedAir.of(FillingMethod.FOAM_CAPPED),
                            beer.beerFactor());
                case WILD_YEAST ->
                    beer.withHidden(new HiddenExtract(1, 15, 1e-6, 1000, Interval.of(0.01199, 0.012, 0.01201)));
                default -> beer;
            };
        }

        /** The true temperature of the bottles. */
        private Track track() {
            Track told = batch().track();
            if (this != THREE_KELVIN_WARMER) {
                return told;
            }
            double[] celsius = new double[told.size()];
            double[] spread = new double[told.size()];
            Arrays.setAll(celsius, i -> told.valueAt(i) + 3);
            Arrays.setAll(spread, told::spreadAt);
            return Track.of(CAPPED, 3600, celsius, spread);
        }

        private double gaugeShows() {
            return this == GAUGE_TEN_PER_CENT_LOW ? 0.9 : 1;
        }
    }

    /** How often each was held, of so many. */
    private static final class Held {
        private int replicates;
        private int ready;
        private int atEnd;
        private int now;
        private int limit;
        private int bound;

        private double share(int held) {
            return held / (double) replicates;
        }

        private String line(World world) {
            return String.format(
                    Locale.ROOT,
                    "| %s | %d | %.2f | %.2f | %.2f | %.2f | %.2f |",
                    world.name().toLowerCase(Locale.ROOT).replace('_', ' '),
                    replicates,
                    share(ready),
                    share(atEnd),
                    share(now),
                    share(limit),
                    share(bound));
        }
    }

    /** Enough to see a fault of the model, not a shift of some per cent: the long version sees that. */
    @Test
    void theRangesHoldInTheWorldTheForecastBelievesIn() {
        Held held = run(World.PRIOR, 56, 1);
        assertTrue(held.share(held.atEnd) > 0.80, held.line(World.PRIOR));
        assertTrue(held.share(held.now) > 0.80, held.line(World.PRIOR));
        assertTrue(held.share(held.limit) > 0.80, held.line(World.PRIOR));
        assertTrue(held.share(held.bound) > 0.87, held.line(World.PRIOR));
    }

    @Test
    void aDoubledDoseIsFoundByThreeGaugeDates() {
        Held held = run(World.DOUBLED_DOSE, 40, 2);
        assertTrue(held.share(held.now) > 0.58, held.line(World.DOUBLED_DOSE));
        assertTrue(held.share(held.bound) > 0.75, held.line(World.DOUBLED_DOSE));
    }

    @ParameterizedTest
    @EnumSource(World.class)
    @Tag("calibration")
    void aThousandReplicatesOfAWorld(World world) {
        Held held = run(world, LONG, 3);
        System.out.println(held.line(world));
        if (world == World.WILD_YEAST) {
            assertTrue(held.share(held.now) >= 0.88, held.line(world));
            return;
        }
        for (int each : List.of(held.atEnd, held.now, held.limit)) {
            assertTrue(held.share(each) >= world.least && held.share(each) <= world.most, held.line(world));
        }
        assertTrue(held.share(held.bound) >= world.leastHolds, held.line(world));
    }

    private static Held run(World world, int replicates, int seed) {
        RandomGenerator random = new Well19937c(seed);
        Held held = new Held();
        for (int k = 0; k < replicates; k++) {
            replicate(world, world.turns.get(k % world.turns.size()), random, held);
        }
        return held;
    }

    private static void replicate(World world, Turn turn, RandomGenerator random, Held held) {
        Refermentation beer = world.beer();
        List<Observation> planned = turn.planned();
        Offsets offsets = planned.isEmpty() ? Offsets.NONE : Offsets.of(List.of(USUAL.lot(planned, 12)));
        double[][] z = new double[1][offsets.dimensions()];
        for (int d = 0; d < z[0].length; d++) {
            z[0][d] = random.nextGaussian();
        }
        int firstHidden = random.nextDouble() < beer.hidden().probability() ? 0 : 1;
        ConditioningEnsemble truth = new ConditioningEnsemble(beer, 1, z, offsets, firstHidden, new double[] {1}, null);
        Track track = world.track();
        ConditioningEnsemble known = USUAL.after(read(world, planned, truth, z, offsets, track, random));
        ReferenceBatch.Figures figures = USUAL.figures(known);
        long[] now = {CAPPED + ReferenceBatch.NOW * DAY};
        ConditioningRun run = truth.run(track, CAPPED, now);
        PressureForecast forecast = PressureForecast.of(
                truth, run, PressureTable.of(ReferenceBatch.BOTTLE, ClosedBottle.MOST_GRAMS_PER_LITRE, 0.95));
        double celsius = track.valueAt(track.indexAt(now[0]));
        double spread = track.spreadAt(track.indexAt(now[0]));
        double strongest = forecast.strongestAt(0, celsius, spread, ReferenceBatch.STRONGEST)
                .median();
        double limit = forecast.limitTemperatures(ReferenceBatch.STRONGEST, ReferenceBatch.LIMITS)
                .median()
                .orInfinite();
        held.replicates++;
        held.ready += holds(
                known.run(USUAL.track(), CAPPED, now).readyEpochSeconds(),
                run.readyEpochSeconds().median());
        held.atEnd += holds(figures.atEnd(), run.finalCarbonationVolumes().median());
        held.now += holds(figures.bar(), forecast.at(0, celsius, spread).median());
        held.limit += limitHolds(known, limit);
        held.bound += strongest <= figures.strongest().high() ? 1 : 0;
    }

    private static int holds(Interval range, double truth) {
        return truth >= range.low() && truth <= range.high() ? 1 : 0;
    }

    /** Whether the true limit lies between the 5 and the 95 % limit: by the chance that a place as warm is over it. */
    private static int limitHolds(ConditioningEnsemble known, double limit) {
        ConditioningRun run = known.run(USUAL.track(), CAPPED, new long[] {CAPPED + ReferenceBatch.NOW * DAY});
        double below = PressureForecast.of(
                        known, run, PressureTable.of(ReferenceBatch.BOTTLE, ClosedBottle.MOST_GRAMS_PER_LITRE, 0.95))
                .limitTemperatures(ReferenceBatch.STRONGEST, ReferenceBatch.LIMITS)
                .probabilityOver(limit);
        return below >= 0.05 && below <= 0.95 ? 1 : 0;
    }

    private static long day(int day) {
        return CAPPED + day * DAY;
    }

    /** What comes out when the planned readings are taken on the true beer. */
    private static List<Observation> read(
            World world,
            List<Observation> planned,
            ConditioningEnsemble truth,
            double[][] z,
            Offsets offsets,
            Track track,
            RandomGenerator random) {
        if (planned.isEmpty()) {
            return planned;
        }
        List<Observation> there = planned.stream().map(plan -> at(plan, track)).toList();
        LotReadings lot = new LotReadings(there, track, CAPPED, ReferenceBatch.GAUGE, Optional.empty());
        // A world outside the prior has the one fault alone, and no other in its gauge.
        double scale = world == World.PRIOR ? ConditioningEnsemble.GAUGE_SCALE : 0;
        double[][] expected = new ReadingLikelihood(lot, offsets, scale).expected(z, truth.memberConstants());
        List<Observation> read = new ArrayList<>();
        for (int i = 0; i < planned.size(); i++) {
            read.add(outcome(planned.get(i), expected[i][0], world.gaugeShows(), random));
        }
        return read;
    }

    /** A gauge is as warm as its bottle truly is, whatever is written down of the place. */
    private static Observation at(Observation plan, Track track) {
        return plan instanceof Observation.GaugePressure gauge
                ? new Observation.GaugePressure(
                        gauge.epochSecond(),
                        gauge.gaugeBar(),
                        gauge.bottle(),
                        gauge.instrument(),
                        track.valueAt(track.indexAt(gauge.epochSecond())))
                : plan;
    }

    private static Observation outcome(Observation plan, double expected, double shows, RandomGenerator random) {
        boolean slip = random.nextDouble() < SLIP;
        if (plan instanceof Observation.GaugePressure gauge) {
            double bar = slip
                    ? expected * random.nextDouble()
                    : shows * expected + ReadingLaw.gaugeSpread(expected) * random.nextGaussian();
            return new Observation.GaugePressure(
                    gauge.epochSecond(),
                    Math.max(-1, Math.min(15, bar)),
                    gauge.bottle(),
                    gauge.instrument(),
                    gauge.celsius());
        }
        if (plan instanceof Observation.ApparentGravity gravity) {
            double points = expected + ReadingLaw.POINTS_SPREAD * random.nextGaussian() + (slip ? 5 : 0);
            return new Observation.ApparentGravity(
                    gravity.epochSecond(),
                    gravity.gravityAtBottling() + points / 1000,
                    gravity.gravityAtBottling(),
                    gravity.sugarWasIn());
        }
        double u = random.nextDouble();
        double logistic = Math.log(u / (1 - u));
        if (plan instanceof Observation.Squeeze squeeze) {
            double felt = expected + ReadingLaw.LOGIT_BAR * logistic;
            BottleFeel[] words = BottleFeel.values();
            BottleFeel word = Arrays.stream(words)
                    .filter(each -> felt < each.untilBar())
                    .findFirst()
                    .orElse(BottleFeel.SOLID);
            return new Observation.Squeeze(
                    squeeze.epochSecond(), slip ? words[random.nextInt(words.length)] : word, squeeze.hand());
        }
        Observation.Opened opened = (Observation.Opened) plan;
        double tasted = expected + ReadingLaw.LOGIT_VOLUMES * logistic;
        PerceivedCarbonation[] words = PerceivedCarbonation.values();
        PerceivedCarbonation word = Arrays.stream(words)
                .filter(each -> tasted < each.untilVolumes())
                .findFirst()
                .orElse(PerceivedCarbonation.VERY_LIVELY);
        return new Observation.Opened(
                opened.epochSecond(), slip ? words[random.nextInt(words.length)] : word, opened.taster());
    }
}
