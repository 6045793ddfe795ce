package undercroft.calc.conditioning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import undercroft.quantity.Interval;

/** Two experiments whose truth is known because it was made here: a quick beer with much gas, a slow one with little. */
class GaugeFitTest {
    private static final int DAYS = 28;
    private static final ReferenceBatch BATCH = ReferenceBatch.wide(0.1);

    /** A beer whose constants lie so many standard deviations from their medians. */
    private record Truth(double rate, double lag, double dose, double air) {
        ConditioningEnsemble beer() {
            double[] z = new double[EnsembleParameters.DIMENSIONS];
            z[EnsembleParameters.RATE] = rate;
            z[EnsembleParameters.LAG] = lag;
            z[EnsembleParameters.DOSE] = dose;
            z[EnsembleParameters.AIR_TRAPPED] = air;
            return new ConditioningEnsemble(
                    BATCH.beer(),
                    1,
                    new double[][] {z},
                    Offsets.NONE,
                    1,
                    new double[] {1},
                    new ReadingsVerdict(ReadingsVerdict.Agreement.NO_READINGS, List.of(), 1));
        }

        /** Read once a day to 0.05 bar, by a gauge that shows as much more as {@code scale} says and trembles by 0.03 bar. */
        LotReadings read(double scale, long seed) {
            ConditioningEnsemble beer = beer();
            long[] days = new long[DAYS];
            for (int day = 0; day < DAYS; day++) {
                days[day] = Beers.CAPPED + (day + 1) * Beers.DAY;
            }
            ConditioningRun run = beer.run(BATCH.track(), Beers.CAPPED, days);
            Random tremble = new Random(seed);
            List<Observation> readings = new ArrayList<>();
            for (int i = 0; i < DAYS; i++) {
                double bar = ReferenceBatch.GAUGE.gaugeBar(
                        20, run.gramsPerLitre(0, i), beer.beerFactor(0), beer.airAmount(0), beer.airTrapped(0));
                double shown = Math.rint((bar * scale + 0.03 * tremble.nextGaussian()) * 20) / 20;
                readings.add(new Observation.GaugePressure(days[i], shown, 0, 0, 20));
            }
            return BATCH.lot(readings, 12);
        }
    }

    private static void contains(Interval range, double truth, String what) {
        assertTrue(range.low() <= truth && truth <= range.high(), what + ": " + truth + " in " + range);
    }

    private static void comesBack(Truth truth, double scale, long seed) {
        GaugeFit fit = GaugeFit.of(BATCH.beer(), truth.read(scale, seed));
        EnsembleParameters constants = truth.beer().memberConstants();
        contains(fit.after().gramsPerLitreDay(), constants.effectiveRate[0], "rate");
        contains(fit.after().lagDays(), constants.lagDays[0], "lag");
        contains(fit.after().finalGramsPerLitre(), constants.finalGramsPerLitre(0), "gas in the end");
        assertTrue(
                width(fit.after().gramsPerLitreDay()) < 0.6 * width(fit.before().gramsPerLitreDay()), "" + fit.after());
        assertTrue(width(fit.after().lagDays()) < 0.9 * width(fit.before().lagDays()), "" + fit.after());
        assertTrue(fit.isSound(), "" + fit.verdict());
        assertEquals(DAYS, fit.points().size());
        assertTrue(fit.fitMissesBar() < 0.12, "misses " + fit.fitMissesBar());
        assertTrue(fit.fitMissesBar() < 0.5 * fit.forecastMissedBar(), "against " + fit.forecastMissedBar());
    }

    /** On a scale of factors, as both are spread. */
    private static double width(Interval range) {
        return Math.log(range.high() / range.low());
    }

    @Test
    void readingsThatNoBeerCouldShowAreNotCalledAFit() {
        List<Observation> readings = new ArrayList<>();
        for (int day = 1; day <= DAYS; day++) {
            readings.add(ReferenceBatch.gauge(day, day % 2 == 0 ? 0.2 : 3.5, 0));
        }
        assertFalse(GaugeFit.of(BATCH.beer(), BATCH.lot(readings, 12)).isSound());
    }

    @Test
    void aQuickBeerWithMuchGasComesBack() {
        comesBack(new Truth(1, -0.8, 0.7, 0.3), 1.02, 7);
    }

    @Test
    void aSlowBeerWithLittleGasComesBack() {
        comesBack(new Truth(-1.2, 0.6, -0.8, -0.5), 0.98, 11);
    }
}
