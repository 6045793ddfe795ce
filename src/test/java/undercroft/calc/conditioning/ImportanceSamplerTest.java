package undercroft.calc.conditioning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static undercroft.calc.conditioning.Beers.CAPPED;
import static undercroft.calc.conditioning.Beers.DAY;
import static undercroft.calc.conditioning.Beers.at;
import static undercroft.calc.conditioning.Beers.constant;
import static undercroft.calc.conditioning.Beers.days;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import undercroft.calc.extract.HiddenExtract;
import undercroft.catalogue.BottleFeel;
import undercroft.catalogue.PerceivedCarbonation;
import undercroft.quantity.Interval;
import undercroft.quantity.InvalidInput;
import undercroft.series.Track;

class ImportanceSamplerTest {
    private static final Track CELLAR = constant(18, 400);
    private static final ConditioningEnsemble UNREAD =
            ConditioningEnsemble.of(Beers.ale().withHidden(HiddenExtract.of(HiddenExtract.Known.UNREAD)), 512);
    private static final ConditioningEnsemble PRIOR = ConditioningEnsemble.of(Beers.ale(), 1024);

    /** What a gauge would show on a beer whose constants lie at these deviates. */
    private static List<Observation> gauged(double rate, double lag, double... onDays) {
        double[][] z = new double[1][EnsembleParameters.DIMENSIONS];
        z[0][EnsembleParameters.RATE] = rate;
        z[0][EnsembleParameters.LAG] = lag;
        ConditioningEnsemble truth =
                new ConditioningEnsemble(Beers.ale(), 1, z, Offsets.NONE, 1, new double[] {1}, null);
        ConditioningRun run = truth.run(CELLAR, CAPPED, at(onDays));
        List<Observation> readings = new ArrayList<>();
        for (int i = 0; i < onDays.length; i++) {
            double bar = Gauge.WITH_AIR.gaugeBar(
                    18, run.gramsPerLitre(0, i), truth.beerFactor(0), truth.airAmount(0), truth.airTrapped(0));
            readings.add(new Observation.GaugePressure(at(onDays[i])[0], bar, 0, 18));
        }
        return readings;
    }

    private static Interval t95(ConditioningEnsemble ensemble) {
        return ensemble.run(CELLAR, CAPPED, new long[0]).t95EpochSeconds();
    }

    @Test
    void withoutReadingsThePriorStays() {
        ConditioningEnsemble same = PRIOR.updated(List.of(), CELLAR, CAPPED, Gauge.WITH_AIR);
        assertEquals(t95(PRIOR), t95(same));
        assertEquals(ReadingsVerdict.Agreement.NO_READINGS, same.verdict().agreement());
        assertEquals(1.0 / 1024, same.weight(77));
    }

    @Test
    void aReadingThatTellsNothingLeavesThePriorNearlyAsItWas() {
        List<Observation> atOnce = List.of(new Observation.Squeeze(CAPPED + 60, BottleFeel.YIELDING));
        Interval before = t95(PRIOR);
        Interval after = t95(PRIOR.updated(atOnce, CELLAR, CAPPED, Gauge.WITH_AIR));
        assertEquals(days(before.low()), days(after.low()), 0.6);
        assertEquals(days(before.median()), days(after.median()), 1);
        assertEquals(days(before.high()), days(after.high()), 4);
    }

    @Test
    void gaugeReadingsNarrowTheForecastAroundWhatHappens() {
        ConditioningEnsemble slow = PRIOR.updated(gauged(-1, 0.5, 4, 8, 12, 16, 20), CELLAR, CAPPED, Gauge.WITH_AIR);
        ConditioningEnsemble fast = PRIOR.updated(gauged(1, -0.5, 2, 4, 6, 8, 10), CELLAR, CAPPED, Gauge.WITH_AIR);
        assertTrue(t95(slow).width() < 0.7 * t95(PRIOR).width());
        assertTrue(t95(fast).width() < 0.5 * t95(PRIOR).width());
        assertTrue(t95(fast).high() < t95(slow).low());
        assertEquals(ReadingsVerdict.Agreement.AGREES, slow.verdict().agreement());
        assertTrue(slow.verdict().oddOnes().isEmpty());
    }

    @Test
    void weightsAddUpToOneAndTheEnsembleDoesNotGrow() {
        ConditioningEnsemble updated = PRIOR.updated(gauged(0, 0, 4, 8, 12), CELLAR, CAPPED, Gauge.WITH_AIR);
        double sum = 0;
        for (int m = 0; m < updated.size(); m++) {
            sum += updated.weight(m);
        }
        assertEquals(1, sum, 1e-12);
        assertTrue(updated.size() <= 1024);
        assertTrue(
                updated.verdict().effectiveSize() >= 200,
                "worth " + updated.verdict().effectiveSize());
    }

    @Test
    void manyReadingsAreRefinedUntilTheEnsembleIsWorthEnough() {
        double[] onDays = new double[20];
        for (int i = 0; i < 20; i++) {
            onDays[i] = 1 + i;
        }
        ConditioningEnsemble updated = PRIOR.updated(gauged(1.5, -1, onDays), CELLAR, CAPPED, Gauge.WITH_AIR);
        assertTrue(
                updated.verdict().effectiveSize() > 200,
                "worth " + updated.verdict().effectiveSize());
    }

    @Test
    void theOrderOfReadingsDoesNotMatter() {
        List<Observation> readings = gauged(0.3, 0, 3, 6, 9, 12);
        readings.add(new Observation.Squeeze(CAPPED + 5 * DAY, BottleFeel.FIRM));
        List<Observation> backwards = new ArrayList<>(readings);
        Collections.reverse(backwards);
        assertEquals(
                t95(PRIOR.updated(readings, CELLAR, CAPPED, Gauge.WITH_AIR)),
                t95(PRIOR.updated(backwards, CELLAR, CAPPED, Gauge.WITH_AIR)));
    }

    @Test
    void updatingAgainDoesNotCountReadingsTwice() {
        List<Observation> readings = gauged(0.3, 0, 3, 6, 9);
        ConditioningEnsemble once = PRIOR.updated(readings, CELLAR, CAPPED, Gauge.WITH_AIR);
        ConditioningEnsemble twice = once.updated(readings, CELLAR, CAPPED, Gauge.WITH_AIR);
        assertEquals(t95(once), t95(twice));
    }

    @Test
    void twoGaugeBottlesTellMoreThanOneReadTwice() {
        List<Observation> twice = gauged(0, 0, 10, 10.01);
        List<Observation> two = new ArrayList<>(gauged(0, 0, 10));
        double bar = ((Observation.GaugePressure) two.get(0)).gaugeBar();
        two.add(new Observation.GaugePressure(at(10.01)[0], bar, 1, 18));
        assertTrue(spreadOfCarbonation(two) < spreadOfCarbonation(twice));
    }

    private static double spreadOfCarbonation(List<Observation> readings) {
        return PRIOR.updated(readings, CELLAR, CAPPED, Gauge.WITH_AIR)
                .run(CELLAR, CAPPED, at(10))
                .carbonationVolumesAt(0)
                .width();
    }

    @Test
    void readingsOfAColdLotAndOfAWarmOneTellOfTheSameBeer() {
        Track fridge = constant(6, 400);
        ConditioningRun truth = ConditioningEnsemble.medianOf(Beers.ale()).run(fridge, CAPPED, at(20));
        double bar = Gauge.WITH_AIR.gaugeBar(6, truth.gramsPerLitre(0, 0), 0.95, 0.895, 0.5);
        List<Observation> cold = List.of(new Observation.GaugePressure(at(20)[0], bar, 1, 6));
        LotReadings inFridge = new LotReadings(cold, fridge, CAPPED, Gauge.WITH_AIR);
        LotReadings inCellar = new LotReadings(gauged(0, 0, 6, 9, 12), CELLAR, CAPPED, Gauge.WITH_AIR);
        ConditioningEnsemble both = PRIOR.updated(List.of(inCellar, inFridge));
        assertEquals(ReadingsVerdict.Agreement.AGREES, both.verdict().agreement());
        assertEquals(t95(both), t95(PRIOR.updated(List.of(inFridge, inCellar))));
        // The same figure read in the cellar would mean a beer that stands still.
        List<Observation> misplaced = List.of(new Observation.GaugePressure(at(20)[0], bar, 1, 18));
        ConditioningEnsemble wrong =
                PRIOR.updated(List.of(inCellar, new LotReadings(misplaced, CELLAR, CAPPED, Gauge.WITH_AIR)));
        assertTrue(wrong.verdict().agreement() == ReadingsVerdict.Agreement.DISAGREES
                || !wrong.verdict().oddOnes().isEmpty());
    }

    @Test
    void refusesAPressureModelThatGivesNoNumber() {
        List<Observation> readings = gauged(0, 0, 6);
        assertThrows(
                IllegalArgumentException.class,
                () -> PRIOR.updated(readings, CELLAR, CAPPED, (celsius, grams, factor, amount, trapped) -> Double.NaN));
    }

    @Test
    void livelyBeerAndAHardBottleSayThatItIsFurtherThanFlatBeerAndASlackOne() {
        List<Observation> far = List.of(
                new Observation.Squeeze(CAPPED + 6 * DAY, BottleFeel.HARD),
                new Observation.Opened(CAPPED + 7 * DAY, PerceivedCarbonation.FULL));
        List<Observation> near = List.of(
                new Observation.Squeeze(CAPPED + 6 * DAY, BottleFeel.YIELDING),
                new Observation.Opened(CAPPED + 7 * DAY, PerceivedCarbonation.FAINT));
        Interval fast = t95(PRIOR.updated(far, CELLAR, CAPPED, Gauge.WITH_AIR));
        Interval slow = t95(PRIOR.updated(near, CELLAR, CAPPED, Gauge.WITH_AIR));
        assertTrue(fast.median() < t95(PRIOR).median() && t95(PRIOR).median() < slow.median());
        assertTrue(days(fast.high()) < days(slow.high()));
    }

    @Test
    void gravityIsTakenWithTheSugarOrWithoutIt() {
        // 6.3 g/L of sugar weigh 2.4 points; fermented, the beer ends 0.6 points below where it began.
        List<Observation> without = List.of(new Observation.ApparentGravity(CAPPED + 30 * DAY, 1.0094, 1.010, false));
        List<Observation> with = List.of(new Observation.ApparentGravity(CAPPED + 30 * DAY, 1.0094, 1.0124, true));
        Interval one = t95(PRIOR.updated(without, CELLAR, CAPPED, Gauge.WITH_AIR));
        Interval other = t95(PRIOR.updated(with, CELLAR, CAPPED, Gauge.WITH_AIR));
        assertEquals(days(one.median()), days(other.median()), 0.7);
    }

    @Test
    void aGaugeAboveAllTheSugarCanGiveRaisesTheAlarm() {
        List<Observation> high = List.of(new Observation.GaugePressure(CAPPED + 60 * DAY, 4.4, 0, 18));
        ConditioningEnsemble alarmed = UNREAD.updated(high, CELLAR, CAPPED, Gauge.WITH_AIR);
        assertEquals(
                ReadingsVerdict.Agreement.NEEDS_EXTRA_EXTRACT, alarmed.verdict().agreement());
        ConditioningEnsemble diastatic = ConditioningEnsemble.of(Beers.primedWith(Beers.DOSE, 0, 6), 512)
                .updated(high, CELLAR, CAPPED, Gauge.WITH_AIR);
        assertEquals(
                ReadingsVerdict.Agreement.AGREES, diastatic.verdict().agreement(), "with dextrins it is explained");
    }

    @Test
    void aGravityFarBelowTheEndRaisesTheAlarm() {
        List<Observation> low = List.of(new Observation.ApparentGravity(CAPPED + 60 * DAY, 1.004, 1.0124, true));
        assertEquals(
                ReadingsVerdict.Agreement.NEEDS_EXTRA_EXTRACT,
                UNREAD.updated(low, CELLAR, CAPPED, Gauge.WITH_AIR).verdict().agreement());
    }

    @Test
    void readingsThatFallDisagreeWithTheModel() {
        List<Observation> falling = new ArrayList<>();
        for (int i = 0; i < 4; i++) {
            falling.add(new Observation.GaugePressure(CAPPED + (6 + 4L * i) * DAY, 2.4 - 0.7 * i, 0, 18));
        }
        ConditioningEnsemble odd = PRIOR.updated(falling, CELLAR, CAPPED, Gauge.WITH_AIR);
        assertEquals(ReadingsVerdict.Agreement.DISAGREES, odd.verdict().agreement());
    }

    @Test
    void oneSlipAmongGoodReadingsIsNamedAndHardlyMovesTheForecast() {
        List<Observation> good = gauged(0, 0, 4, 6, 8, 10, 12, 14);
        List<Observation> slipped = new ArrayList<>(good);
        Observation slip = new Observation.GaugePressure(CAPPED + 9 * DAY, 0.1, 0, 18);
        slipped.add(slip);
        ConditioningEnsemble clean = PRIOR.updated(good, CELLAR, CAPPED, Gauge.WITH_AIR);
        ConditioningEnsemble robust = PRIOR.updated(slipped, CELLAR, CAPPED, Gauge.WITH_AIR);
        assertEquals(List.of(slip), robust.verdict().oddOnes());
        assertEquals(days(t95(clean).median()), days(t95(robust).median()), 1);
        assertFalse(robust.verdict().agreement() == ReadingsVerdict.Agreement.NEEDS_EXTRA_EXTRACT);
    }

    @Test
    void refusesReadingsFromBeforeCappingOrPastTheTrack() {
        List<Observation> early = List.of(new Observation.Opened(CAPPED - DAY, PerceivedCarbonation.SOFT));
        assertThrows(InvalidInput.class, () -> PRIOR.updated(early, CELLAR, CAPPED, Gauge.WITH_AIR));
        List<Observation> late = List.of(new Observation.Opened(CAPPED + 500 * DAY, PerceivedCarbonation.SOFT));
        assertThrows(IllegalArgumentException.class, () -> PRIOR.updated(late, CELLAR, CAPPED, Gauge.WITH_AIR));
        assertThrows(InvalidInput.class, () -> new Observation.GaugePressure(CAPPED, Double.NaN, 0, 18));
        assertThrows(InvalidInput.class, () -> new Observation.GaugePressure(CAPPED, 1, 8, 18));
        assertThrows(InvalidInput.class, () -> new Observation.Squeeze(CAPPED, null));
    }
}
