package undercroft.calc.conditioning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static undercroft.calc.conditioning.Beers.CAPPED;
import static undercroft.calc.conditioning.Beers.at;
import static undercroft.calc.conditioning.Beers.constant;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.LongRange;
import net.jqwik.api.constraints.Size;
import undercroft.calc.numeric.WeightedQuantiles;
import undercroft.catalogue.YeastState;
import undercroft.catalogue.YeastStrain;
import undercroft.series.Track;

class ConditioningPropertyTest {
    private static final ConditioningEnsemble ENSEMBLE = ConditioningEnsemble.of(Beers.ale(), 128);

    @Property(tries = 40, seed = "20260104")
    void aWarmerCellarIsNeverLaterBelowTheOptimum(
            @ForAll @DoubleRange(min = 5, max = 27) double celsius,
            @ForAll @DoubleRange(min = 0.1, max = 3) double warmer) {
        ConditioningRun cool = ENSEMBLE.run(constant(celsius, 500), CAPPED, new long[0]);
        ConditioningRun warm = ENSEMBLE.run(constant(celsius + warmer, 500), CAPPED, new long[0]);
        assertTrue(warm.t95EpochSeconds().median() <= cool.t95EpochSeconds().median());
        assertTrue(warm.readyEpochSeconds().median() <= cool.readyEpochSeconds().median());
    }

    @Property(tries = 40, seed = "20260104")
    void shiftingAllDatesShiftsTheAnswerAndNothingElse(
            @ForAll @LongRange(min = -1_500_000_000, max = 1_500_000_000) long shift,
            @ForAll @IntRange(min = 0, max = 9) int swing) {
        double[] celsius = new double[100 * 24];
        double[] spread = new double[celsius.length];
        for (int i = 0; i < celsius.length; i++) {
            celsius[i] = 17 + swing / 2.0 * Math.sin(i / 24.0 * 2 * Math.PI);
            spread[i] = i < 500 ? 0.2 : 1.5;
        }
        ConditioningRun here = ENSEMBLE.run(Track.of(CAPPED, 3600, celsius, spread), CAPPED, at(3, 9, 20));
        long[] later = at(3, 9, 20);
        for (int i = 0; i < later.length; i++) {
            later[i] += shift;
        }
        ConditioningRun there = ENSEMBLE.run(Track.of(CAPPED + shift, 3600, celsius, spread), CAPPED + shift, later);
        for (int m = 0; m < ENSEMBLE.size(); m++) {
            assertEquals(here.gramsPerLitre(m, 1), there.gramsPerLitre(m, 1));
            assertEquals(here.t95EpochSecond(m) + shift, there.t95EpochSecond(m), 0.01);
        }
    }

    @Property(tries = 40, seed = "20260104")
    void carbonDioxideOnlyRisesAndStaysWithinWhatThereIs(
            @ForAll @DoubleRange(min = 0, max = 12) double grams,
            @ForAll @DoubleRange(min = 0, max = 6) double extra,
            @ForAll @DoubleRange(min = 0, max = 6) double dextrin,
            @ForAll @DoubleRange(min = -2, max = 45) double celsius) {
        ConditioningRun run = ConditioningEnsemble.of(Beers.primedWith(grams, extra, dextrin), 32)
                .run(constant(celsius, 60), CAPPED, at(0, 1, 4, 9, 16, 25, 36, 59));
        for (int m = 0; m < 32; m++) {
            double before = 0;
            for (int i = 0; i < run.instants(); i++) {
                double now = run.gramsPerLitre(m, i);
                assertTrue(now >= before - 1e-6, "falls from " + before + " to " + now);
                assertTrue(now <= run.finalGramsPerLitre(m) + 1e-9);
                before = now;
            }
        }
    }

    @Property(tries = 30, seed = "20260104")
    void strongerBeerIsNeverSooner(
            @ForAll @DoubleRange(min = 0, max = 16) double abv, @ForAll @DoubleRange(min = 0, max = 3) double more) {
        assertTrue(t95(abv) <= t95(abv + more));
    }

    private static double t95(double abv) {
        return ConditioningEnsemble.medianOf(Beers.of(YeastStrain.ALE, YeastState.ORDINARY, abv))
                .run(constant(20, 300), CAPPED, new long[0])
                .t95EpochSecond(0);
    }

    /** Against sorting: the smallest value with at least the wanted share of the weight at or below it. */
    @Property(tries = 300, seed = "20260104")
    void quantilesAreThoseOfTheSortedValues(
            @ForAll @Size(min = 1, max = 200) List<@IntRange(min = -3, max = 60) Integer> drawn,
            @ForAll @DoubleRange(min = 0.1, max = 5) double unevenness,
            @ForAll boolean farOff) {
        int n = drawn.size();
        double[] values = new double[n];
        double[] weights = new double[n];
        for (int i = 0; i < n; i++) {
            values[i] = drawn.get(i) > 55 ? Double.POSITIVE_INFINITY : drawn.get(i) / 7.0;
            weights[i] = Math.pow(0.01 + ((i * 7919) % 100) / 100.0, unevenness);
        }
        if (farOff) {
            values[0] = 1e7;
        }
        double[] levels = {0.05, 0.25, 0.5, 0.75, 0.95};
        double[] out = new double[5];
        new WeightedQuantiles(weights).of(values, levels, out);
        Integer[] order = new Integer[n];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, (a, b) -> Double.compare(values[a], values[b]));
        double total = Arrays.stream(weights).sum();
        for (int k = 0; k < 5; k++) {
            double sum = 0;
            int at = -1;
            while (at < n - 1 && sum < levels[k] * total * (1 - 1e-12)) {
                at++;
                sum += weights[order[at]];
            }
            assertEquals(values[order[at]], out[k]);
        }
    }
}
