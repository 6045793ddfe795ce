package undercroft.outlook.lot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static undercroft.outlook.SpellSamples.CAPPED;
import static undercroft.outlook.SpellSamples.air;
import static undercroft.outlook.SpellSamples.cellar;
import static undercroft.outlook.SpellSamples.day;

import java.time.Duration;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import undercroft.catalogue.Cover;
import undercroft.catalogue.GlassColour;
import undercroft.cellar.Cellar;
import undercroft.cellar.Draw;
import undercroft.cellar.Lot;
import undercroft.cellar.Stay;
import undercroft.outlook.Outlooks;
import undercroft.series.Band;
import undercroft.series.TimeSeries;

final class LotVerdictTest {
    private static final Map<String, TimeSeries> AIR = Map.of("room", air(70, time -> 20));

    private static BatchOutlook ale(Cellar cellar) {
        return Outlooks.of(cellar, AIR, day(60)).batch("ale");
    }

    private static List<Cause.Kind> kinds(Verdict verdict) {
        return verdict.causes().stream().map(Cause::kind).toList();
    }

    @Test
    void anOrdinaryLotHasNothingToSay() {
        Verdict verdict = ale(cellar(110, "room")).mainLot().verdict();
        assertEquals(List.of(), verdict.causes());
        assertEquals(Alert.CLEAR, verdict.alert());
        assertEquals(Optional.empty(), verdict.leading());
    }

    @Test
    void aCauseCarriesTheFiguresOfItsLot() {
        LotOutlook lot = ale(cellar(270, "room")).mainLot();
        Cause first = lot.verdict().leading().orElseThrow();
        assertEquals(Cause.Kind.STRONGEST_OVER_WORKING_PRESSURE, first.kind());
        assertEquals(Cause.Bite.NOW, first.kind().bite());
        assertEquals(Optional.of("box"), first.lotId());
        assertEquals(lot.pressure().strongestBottle().high(), first.figure(CauseFigure.STRONGEST_GAUGE_BAR));
        assertEquals(lot.pressure().workingPressureBar(), first.figure(CauseFigure.WORKING_PRESSURE_GAUGE_BAR));
        assertThrows(IllegalArgumentException.class, () -> first.figure(CauseFigure.LIGHT_DOSE));
    }

    @Test
    void theGravestCauseLeadsAndWhatWasSeenComesBeforeWhatWasCalculated() {
        Cellar over = cellar(270, "room");
        Lot box = over.batch("ale").lot("box");
        Draw burst = new Draw(day(58), 1, Draw.Fate.BURST, "");
        Verdict verdict = ale(over.withBatch(over.batch("ale").withLot(box.withDraw(burst))))
                .verdict();
        assertEquals(Cause.Kind.BURST, kinds(verdict).get(0));
        assertEquals(Cause.Kind.STRONGEST_OVER_WORKING_PRESSURE, kinds(verdict).get(1));
        List<Alert> alerts = verdict.causes().stream().map(Cause::alert).toList();
        assertEquals(alerts.stream().sorted(Comparator.reverseOrder()).toList(), alerts);
    }

    @Test
    void aBurstConcernsTheOtherLotsOfItsBatchAndIsToldOnce() {
        Cellar cellar = cellar(110, "room");
        Cellar parted = cellar.withBatch(cellar.batch("ale").withMove("box", 10, "fridge", day(30), Cover.CLOSED_BOX));
        Lot box = parted.batch("ale").lot("box");
        Draw burst = new Draw(day(58), 2, Draw.Fate.BURST, "");
        BatchOutlook batch = ale(parted.withBatch(parted.batch("ale").withLot(box.withDraw(burst))));
        assertEquals(Alert.ACT, batch.lot("box-2").verdict().alert());
        assertEquals(Cause.Kind.BURST, kinds(batch.verdict()).get(0));
        assertEquals(1, Collections.frequency(kinds(batch.verdict()), Cause.Kind.BURST));
        Cause told = batch.verdict().causes().get(0);
        assertEquals(Optional.of("box"), told.lotId());
        assertEquals(Optional.of(day(58)), told.since());
        assertEquals(2, told.figure(CauseFigure.BOTTLES));
    }

    @Test
    void aLotWithoutBottlesHasNothingToSay() {
        Cellar over = cellar(270, "room");
        Lot box = over.batch("ale").lot("box");
        Draw all = new Draw(day(58), box.count(), Draw.Fate.BURST, "");
        BatchOutlook batch = ale(over.withBatch(over.batch("ale").withLot(box.withDraw(all))));
        assertEquals(Stage.EMPTY, batch.stage());
        assertEquals(List.of(), batch.verdict().causes());
    }

    @Test
    void aWornLotInTheFridgeSetsTheHeatLimitOfItsBatch() {
        Cellar cellar = cellar(110, "room");
        Lot box = cellar.batch("ale").lot("box");
        Lot worn = new Lot(
                "worn",
                "longneck-330",
                GlassColour.AMBER,
                6,
                330,
                true,
                List.of(
                        new Stay("room", CAPPED, Cover.CLOSED_BOX),
                        new Stay("fridge", CAPPED.plus(Duration.ofDays(40)), Cover.CLOSED_BOX)),
                List.of());
        BatchOutlook batch = ale(cellar.withBatch(cellar.batch("ale").withLots(List.of(box, worn))));
        double wornLimit = batch.lot("worn").pressure().heatLimitCelsius();
        assertEquals("box", batch.mainLot().id());
        assertEquals("box", batch.limitingLot().id(), "in the cold its pressure is far from its limit");
        assertTrue(wornLimit < batch.lot("box").pressure().heatLimitCelsius() - 3, "worn " + wornLimit);
        assertEquals(wornLimit, batch.heatLimitLot().pressure().heatLimitCelsius());
        assertEquals("worn", batch.lotFor(FigureKind.HEAT_LIMIT).id());
        Lot drunk = worn.withDraw(new Draw(day(50), 6, Draw.Fate.OPENED, ""));
        BatchOutlook without = ale(cellar.withBatch(cellar.batch("ale").withLots(List.of(box, drunk))));
        assertEquals("box", without.heatLimitLot().id(), "what is drunk limits nothing");
    }

    @Test
    void theVerdictOfABatchIsThatOfItsWorstLot() {
        Cellar cellar = cellar(270, "room");
        Cellar parted = cellar.withBatch(cellar.batch("ale").withMove("box", 10, "fridge", day(30), Cover.CLOSED_BOX));
        BatchOutlook batch = ale(parted);
        Verdict cold = batch.lot("box-2").verdict();
        assertFalse(cold.has(Cause.Kind.STRONGEST_OVER_WORKING_PRESSURE));
        assertEquals(Alert.ACT, batch.alert());
        assertEquals(batch.lot("box").verdict().leading(), batch.verdict().leading());
        assertTrue(batch.verdict().causes().containsAll(cold.causes()));
    }

    /** The bounds of section 8 of the project's own study of hidden extract; worked out for this project, unpublished. */
    @Test
    void theGradeFollowsTheChanceThroughWatchToAct() {
        Alert before = Alert.CLEAR;
        for (double grams = 110; grams <= 290; grams += 4) {
            LotOutlook lot = ale(cellar(grams, "room")).mainLot();
            Alert alert = lot.verdict().alert(Cause.Topic.PRESSURE);
            PassingChance chance = lot.pressure().chance();
            assertTrue(
                    chance.now() <= chance.ahead() + 1e-9 && chance.ahead() <= chance.warmestYear() + 0.02,
                    "" + chance);
            boolean act = chance.ahead() >= 0.10 || chance.warmestYear() >= 0.25;
            boolean clear = chance.ahead() < 0.02 && chance.warmestYear() < 0.05;
            assertEquals(act, alert == Alert.ACT, grams + " g: " + chance);
            assertTrue(!clear || alert != Alert.ACT, grams + " g: " + chance);
            assertTrue(clear || alert != Alert.CLEAR, grams + " g: " + chance);
            assertTrue(alert.compareTo(before) >= 0, "more sugar never calms: " + grams + " g");
            assertTrue(alert != Alert.ACT || before != Alert.CLEAR, "no step is left out: " + grams + " g");
            before = alert;
        }
        assertEquals(Alert.ACT, before);
    }

    @Test
    void whatIsWithinItsLimitNowMayNotBeInTheWarmestWeekOfItsYear() {
        Cellar cellar = cellar(180, "room");
        Verdict unknown = ale(cellar).verdict();
        Cause summer = unknown.causes().stream()
                .filter(cause -> cause.kind() == Cause.Kind.OVER_IN_WARMEST_WEEK)
                .findFirst()
                .orElseThrow();
        assertEquals(28, summer.figure(CauseFigure.WARMEST_WEEK_CELSIUS), "what an unknown place is taken to reach");
        Cellar cool = cellar.withPlace(cellar.place("room").withSummerMaximum(OptionalDouble.of(20)));
        Verdict known = ale(cool).verdict();
        assertFalse(known.has(Cause.Kind.OVER_IN_WARMEST_WEEK), "" + known.causes());
    }

    @Test
    void limitPeaksAndSpellsAreAboutTheStrongestBottle() {
        PressureOutlook pressure = ale(cellar(110, "room")).mainLot().pressure();
        assertTrue(pressure.peakAhead().high() >= pressure.strongestBottle().high());
        assertTrue(pressure.peakPast().median() > pressure.atPresent().median());
        Band average = pressure.trajectory();
        Band strongest = pressure.strongestTrajectory();
        for (int i = 1; i < average.size(); i++) {
            assertTrue(strongest.highAt(i) >= average.highAt(i), "instant " + i);
        }
    }
}
