package undercroft.calc.conditioning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static undercroft.calc.conditioning.Beers.CAPPED;
import static undercroft.calc.conditioning.Beers.DAY;
import static undercroft.calc.conditioning.Beers.at;
import static undercroft.calc.conditioning.Beers.constant;
import static undercroft.calc.conditioning.Beers.days;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import undercroft.calc.extract.DoseSpread;
import undercroft.calc.extract.HiddenExtract;
import undercroft.calc.extract.Leftover;
import undercroft.calc.gas.TrappedAir;
import undercroft.calc.numeric.QuasiNormals;
import undercroft.catalogue.FillingMethod;
import undercroft.catalogue.YeastState;
import undercroft.catalogue.YeastStrain;
import undercroft.quantity.Interval;
import undercroft.quantity.InvalidInput;
import undercroft.series.Band;
import undercroft.series.Track;

class ConditioningRunTest {
    private static final ConditioningEnsemble MEDIAN = ConditioningEnsemble.medianOf(Beers.ale());

    /** Regression vectors of this model: its medians with loss of yeast, computed by an independent script. */
    @ParameterizedTest
    @CsvSource({
        "8, 154, 176, 234",
        "10, 65, 73, 100",
        "12, 36.5, 41, 56",
        "15, 19.9, 22.3, 30.7",
        "18, 13.0, 14.5, 20.0",
        "21, 9.4, 10.5, 14.5",
        "25, 7.0, 7.9, 10.8",
        "30, 6.1, 6.8, 9.3",
        "35, 9.4, 11.1, 14.0"
    })
    void theMedianBeerKeepsItsPace(double celsius, double t90, double t95, double ready) {
        ConditioningRun run = MEDIAN.run(constant(celsius, 300), CAPPED, new long[0]);
        assertEquals(t90, days(run.t90EpochSecond(0)), 0.006 * t90 + 0.05);
        assertEquals(t95, days(run.t95EpochSecond(0)), 0.006 * t95 + 0.05);
        assertEquals(ready, days(run.readyEpochSecond(0)), 0.006 * ready + 0.05);
    }

    /** Common practice, no source: two weeks at room temperature; 3 to 5 weeks at 12 to 15 °C (here for the sugar). */
    @Test
    void takesTwoWeeksAtRoomTemperatureAndThreeToFiveAndAHalfInACoolCellar() {
        assertEquals(14, days(MEDIAN.run(constant(21, 60), CAPPED, new long[0]).readyEpochSecond(0)), 1);
        double cool = days(MEDIAN.run(constant(15, 90), CAPPED, new long[0]).t90EpochSecond(0));
        double cold = days(MEDIAN.run(constant(12, 90), CAPPED, new long[0]).t90EpochSecond(0));
        assertTrue(cool > 18 && cold < 38 && cool < cold, cool + " to " + cold);
    }

    /** Regression vectors of this model: strength and yeast state, days to 95 % at 21 °C. */
    @ParameterizedTest
    @CsvSource({
        "ALE, ORDINARY, 3.5, 9.1",
        "ALE, ORDINARY, 7, 13.4",
        "ALE, ORDINARY, 9, 18.9",
        "ALE, ORDINARY, 11, 33",
        "ALE, FRESH_ADDED, 5, 6.4",
        "ALE, LONG_COLD, 5, 22",
        "ALE, FILTERED, 5, 66",
        "LAGER, ORDINARY, 5, 10.5"
    })
    void strengthAndTiredYeastSlowIt(YeastStrain strain, YeastState state, double abv, double t95) {
        ConditioningRun run =
                ConditioningEnsemble.medianOf(Beers.of(strain, state, abv)).run(constant(21, 200), CAPPED, new long[0]);
        assertEquals(t95, days(run.t95EpochSecond(0)), 0.03 * t95);
    }

    /** Regression vectors of this model: lager yeast in the cold, days to 95 %. */
    @ParameterizedTest
    @CsvSource({"5, 79", "10, 30", "15, 16.7"})
    void lagerYeastWorksInTheCold(double celsius, double t95) {
        ConditioningRun run = ConditioningEnsemble.medianOf(Beers.of(YeastStrain.LAGER, YeastState.ORDINARY, 5))
                .run(constant(celsius, 200), CAPPED, new long[0]);
        assertEquals(t95, days(run.t95EpochSecond(0)), 0.015 * t95);
    }

    /** Sparkling wine: 24 g/L sugar, about 12 °C, 4 to 8 weeks (Oxford Companion to Wine, read second-hand). */
    @Test
    void sparklingWineTakesFourToEightWeeks() {
        double grams = 24 * EnsembleParameters.GRAMS_PER_GRAM_HEXOSE * 1.05;
        Refermentation wine = new Refermentation(
                YeastStrain.SPARKLING_WINE,
                YeastState.FRESH_ADDED,
                11,
                Interval.exactly(1),
                Interval.exactly(grams),
                DoseSpread.USUAL,
                Leftover.NONE,
                HiddenExtract.NONE,
                TrappedAir.of(FillingMethod.CAREFUL),
                Interval.exactly(0.9));
        ConditioningRun run = ConditioningEnsemble.medianOf(wine).run(constant(12, 120), CAPPED, new long[0]);
        double weeks = days(run.t95EpochSecond(0)) / 7;
        assertTrue(weeks > 4 && weeks < 8, weeks + " weeks");
    }

    /**
     * Wheat beer refermented with S. cerevisiae var. boulardii and glucose was held 12 days at 22 °C before cold storage
     * (abstract, "The use of probiotic yeast", Polish J. Food Technol.): nearly all sugar must be gone by then.
     */
    @Test
    void aPublishedProtocolOfTwelveDaysAtTwentyTwoDegreesSuffices() {
        ConditioningRun run = MEDIAN.run(constant(22, 30), CAPPED, at(12));
        assertTrue(run.fractionDone(0, 0) > 0.95, "done: " + run.fractionDone(0, 0));
    }

    /** Common practice, no source: ale yeast stops in a fridge and goes on when it is warm again. */
    @Test
    void aStalledBatchResumesWhereItStopped() {
        double[] celsius = new double[60 * 24 + 1];
        for (int i = 0; i < celsius.length; i++) {
            celsius[i] = i >= 4 * 24 && i < 14 * 24 ? 4 : 20;
        }
        Track track = Track.of(CAPPED, 3600, celsius, new double[celsius.length]);
        ConditioningRun stalled = MEDIAN.run(track, CAPPED, at(4.1, 13.9, 16));
        assertEquals(stalled.fractionDone(0, 0), stalled.fractionDone(0, 1), 1e-6);
        assertTrue(stalled.fractionDone(0, 2) > stalled.fractionDone(0, 1) + 0.05);
        double straight = days(MEDIAN.run(constant(20, 60), CAPPED, new long[0]).t95EpochSecond(0));
        assertEquals(straight + 10, days(stalled.t95EpochSecond(0)), 0.3);
    }

    @Test
    void beerAboveTheYeastsLimitIsNeverReady() {
        ConditioningRun run = ConditioningEnsemble.of(Beers.of(YeastStrain.ALE, YeastState.ORDINARY, 14.5), 64)
                .run(constant(21, 400), CAPPED, at(390));
        assertEquals(Double.POSITIVE_INFINITY, run.readyEpochSeconds().low());
        assertEquals(0, run.fractionDoneAt(0).high());
        assertEquals(0, run.probabilityReadyBy(CAPPED + 400 * DAY));
    }

    @Test
    void withoutSugarNothingIsMadeAndOnlyTheCleanUpTakesTime() {
        ConditioningRun run =
                ConditioningEnsemble.medianOf(Beers.primedWith(0, 0, 0)).run(constant(21, 40), CAPPED, at(0, 20));
        assertEquals(1.7, run.gramsPerLitre(0, 1), 1e-12);
        assertEquals(1, run.fractionDone(0, 0));
        assertEquals(4, days(run.readyEpochSecond(0)), 1e-6);
    }

    @Test
    void carbonDioxideRisesFromTheResidualToAllTheSugarCanGive() {
        ConditioningRun run = MEDIAN.run(constant(21, 200), CAPPED, at(-3, 0, 5, 10, 200, 900));
        assertEquals(1.7, run.gramsPerLitre(0, 0), 1e-12);
        assertEquals(1.7, run.gramsPerLitre(0, 1), 1e-12);
        assertTrue(run.gramsPerLitre(0, 2) > 1.8 && run.gramsPerLitre(0, 3) > run.gramsPerLitre(0, 2));
        assertEquals(1.7 + Beers.DOSE, run.gramsPerLitre(0, 4), 1e-9);
        assertEquals(run.gramsPerLitre(0, 4), run.gramsPerLitre(0, 5));
        assertEquals(run.finalGramsPerLitre(0), run.gramsPerLitre(0, 4), 1e-9);
    }

    /** By hand: 1.70 held, 2.99 from the priming, 5.69 (1 − exp(−0.02 × 0.91 × days)) of 12 g/L of dextrins at 20 °C. */
    @Test
    void diastaticYeastGoesOnMakingGasForMonths() {
        double dextrin = 12 * EnsembleParameters.GRAMS_PER_GRAM_HEXOSE;
        double[][] medians = new double[1][EnsembleParameters.DIMENSIONS];
        ConditioningRun run = new ConditioningEnsemble(
                        Beers.primedWith(Beers.DOSE, 0, dextrin), 1, medians, Offsets.NONE, 0, new double[] {1}, null)
                .run(constant(20, 400), CAPPED, at(7, 28, 120));
        assertEquals(4.3, run.gramsPerLitre(0, 0), 0.25);
        assertEquals(6.8, run.gramsPerLitre(0, 1), 0.25);
        assertEquals(9.7, run.gramsPerLitre(0, 2), 0.1);
    }

    @Test
    void heatKillsTheYeastBeforeTheSugarIsGone() {
        ConditioningRun run = MEDIAN.run(constant(45, 100), CAPPED, at(90));
        assertEquals(0, run.fractionDone(0, 0), 1e-6);
        assertEquals(Double.POSITIVE_INFINITY, run.readyEpochSecond(0));
    }

    @Test
    void theBandAndItsHelpersAgree() {
        ConditioningEnsemble ensemble = ConditioningEnsemble.of(Beers.ale(), 256);
        ConditioningRun run = ensemble.run(constant(18, 60), CAPPED, at(3, 9, 14));
        Band band = run.carbonationVolumes();
        Interval day9 = run.carbonationVolumesAt(1);
        assertEquals(day9.low(), band.lowAt(1));
        assertEquals(day9.median(), band.medianAt(1));
        assertEquals(day9.high(), band.highAt(1));
        assertTrue(band.lowAt(1) < band.lowerQuartileAt(1) && band.lowerQuartileAt(1) < band.medianAt(1));
        assertTrue(run.t90EpochSeconds().median() < run.t95EpochSeconds().median());
        assertEquals(0.5, run.probabilityReadyBy((long) run.readyEpochSeconds().median() + 1), 0.01);
    }

    /**
     * Regression vectors of this model: the 90 % bands of the day by which 95 % are done, from another quasi-random
     * sequence, with half-saturation at its median and without loss of yeast.
     */
    @ParameterizedTest
    @CsvSource({"15, 9.7, 51", "21, 4.7, 24", "25, 3.4, 18"})
    void theSpreadBeforeAnyReadingIsWide(double celsius, double low, double high) {
        double[][] z = QuasiNormals.points(2048, EnsembleParameters.DIMENSIONS);
        double[] weights = new double[z.length];
        for (int m = 0; m < z.length; m++) {
            z[m][EnsembleParameters.SATURATION] = 0;
            z[m][EnsembleParameters.DEATH] = -40;
            weights[m] = 1;
        }
        Interval t95 = new ConditioningEnsemble(Beers.ale(), z.length, z, Offsets.NONE, z.length, weights, null)
                .run(constant(celsius, 300), CAPPED, new long[0])
                .t95EpochSeconds();
        assertEquals(low, days(t95.low()), 0.05 * low);
        assertEquals(high, days(t95.high()), 0.05 * high);
    }

    @Test
    void theSameInputGivesTheSameAnswer() {
        ConditioningRun one = ConditioningEnsemble.of(Beers.ale(), 128).run(constant(18, 60), CAPPED, at(7));
        ConditioningRun two = ConditioningEnsemble.of(Beers.ale(), 128).run(constant(18, 60), CAPPED, at(7));
        for (int m = 0; m < 128; m++) {
            assertEquals(one.gramsPerLitre(m, 0), two.gramsPerLitre(m, 0));
            assertEquals(one.readyEpochSecond(m), two.readyEpochSecond(m));
        }
    }

    @Test
    void askingForMoreInstantsDoesNotMoveTheTrajectory() {
        ConditioningRun few = MEDIAN.run(constant(18, 60), CAPPED, at(7));
        ConditioningRun many = MEDIAN.run(constant(18, 60), CAPPED, at(1, 1.01, 3.33, 5, 6.99, 7));
        assertEquals(few.fractionDone(0, 0), many.fractionDone(0, 5), 2e-5);
        assertEquals(days(few.t95EpochSecond(0)), days(many.t95EpochSecond(0)), 1e-3);
    }

    @Test
    void refusesATrackThatBeginsTooLateAndInstantsThatFall() {
        assertThrows(IllegalArgumentException.class, () -> MEDIAN.run(constant(18, 6), CAPPED - 1, new long[0]));
        assertThrows(IllegalArgumentException.class, () -> MEDIAN.run(constant(18, 6), CAPPED, at(3, 2)));
        assertThrows(IllegalArgumentException.class, () -> ConditioningEnsemble.of(Beers.ale(), 0));
        assertThrows(InvalidInput.class, () -> Beers.of(YeastStrain.ALE, YeastState.ORDINARY, 40));
        assertThrows(InvalidInput.class, () -> Beers.primedWith(1, Double.NaN, 0));
    }
}
