package undercroft.outlook.lot;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static undercroft.outlook.SpellSamples.air;
import static undercroft.outlook.SpellSamples.cellar;
import static undercroft.outlook.SpellSamples.day;

import java.time.Instant;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import java.util.function.LongToDoubleFunction;
import org.junit.jupiter.api.Test;
import undercroft.calc.conditioning.Stuck;
import undercroft.catalogue.BeerStyle;
import undercroft.catalogue.Cover;
import undercroft.cellar.Batch;
import undercroft.cellar.Beer;
import undercroft.cellar.BurstCause;
import undercroft.cellar.Cellar;
import undercroft.cellar.Draw;
import undercroft.cellar.Lot;
import undercroft.cellar.Place;
import undercroft.cellar.Priming;
import undercroft.cellar.Reading;
import undercroft.cellar.TemperatureSource;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.Outlooks;
import undercroft.outlook.task.Task;
import undercroft.series.TimeSeries;

/** Frost, a batch that is stuck, a pressure that was, bursts: what the verdict makes of them, and what is done first. */
final class DangerTest {
    private static final Map<String, TimeSeries> AIR = Map.of("room", air(120, time -> 20));

    private static CellarOutlook outlook(Cellar cellar, int day) {
        return Outlooks.of(cellar, AIR, day(day));
    }

    private static LotOutlook box(Cellar cellar, int day) {
        return outlook(cellar, day).batch("ale").lot("box");
    }

    private static Cause leading(LotOutlook lot) {
        return lot.verdict().leading().orElseThrow();
    }

    /** All bottles moved to a place that always has this temperature. */
    private static Cellar movedTo(double celsius, int day) {
        Cellar cellar = cellar(110, "room");
        Place freezer = cellar.place("fridge").withTemperature(new TemperatureSource.FixedGuess(celsius, 0.3));
        Batch ale = cellar.batch("ale");
        return cellar.withPlace(freezer)
                .withBatch(ale.withMove("box", ale.lot("box").count(), "fridge", day(day), Cover.CLOSED_BOX));
    }

    @Test
    void aFreezerNeverReadsAllWell() {
        LotOutlook lot = box(movedTo(-18, 40), 60);
        assertEquals(Cause.Kind.FROZEN, leading(lot).kind());
        assertEquals(Alert.ACT, leading(lot).alert());
        assertEquals(Handling.THAW_IN_THE_COLD, lot.handling());
        assertEquals(Alert.ACT, outlook(movedTo(-18, 40), 60).batch("ale").alert());
        assertEquals(
                Task.Kind.THAW_IN_THE_COLD,
                outlook(movedTo(-18, 40), 60).tasks().get(0).kind());
    }

    /** An ale of 5 % freezes from about -2.3 °C on, and swells past a headspace of 4 % at about -4.5 °C (C7). */
    @Test
    void frostIsWatchedBelowTheFreezingPointAndActedOnWhereTheIceNoLongerFits() {
        assertFalse(box(movedTo(-1.5, 40), 60).verdict().has(Cause.Kind.FROZEN));
        LotOutlook icy = box(movedTo(-3.2, 40), 60);
        assertEquals(Alert.WATCH, icy.verdict().alert(Cause.Topic.FROST));
        assertEquals(-3.2, leading(icy).figure(CauseFigure.COLDEST_CELSIUS), 0.3);
        assertEquals(-2.3, icy.frost().limits().freezingCelsius(), 0.3);
        assertEquals(
                Task.Kind.MOVE_FROM_FROST,
                outlook(movedTo(-3.2, 40), 60).tasks().get(0).kind());
        assertEquals(Alert.ACT, box(movedTo(-6, 40), 60).verdict().alert(Cause.Topic.FROST));
    }

    @Test
    void whatMayHaveBurstStaysSoWhenItHasThawed() {
        Cellar frozen = movedTo(-18, 40);
        Batch ale = frozen.batch("ale");
        Cellar thawed = frozen.withBatch(ale.withLot(ale.lot("box").movedTo("room", day(50), Cover.CLOSED_BOX)));
        LotOutlook lately = box(thawed, 55);
        assertEquals(Cause.Kind.WAS_FROZEN, leading(lately).kind());
        assertEquals(Alert.ACT, leading(lately).alert());
        assertEquals(Alert.WATCH, box(thawed, 70).verdict().alert(Cause.Topic.FROST));
    }

    @Test
    void beerTooStrongForItsYeastHasNoReadyDate() {
        Cellar cellar = cellar(110, "room");
        Batch ale = cellar.batch("ale");
        Beer beer = new Beer(
                BeerStyle.PALE_ALE,
                ale.yeast().strain().alcoholLimitPercent(),
                25,
                0,
                12,
                20,
                OptionalDouble.empty(),
                OptionalDouble.empty());
        Cellar strong = cellar.withBatch(ale.withBeer(beer, ale.yeast()));
        LotOutlook lot = box(strong, 60);
        assertEquals(Set.of(Stuck.BEYOND_ALCOHOL_LIMIT), lot.stuck().reasons());
        assertEquals(Cause.Kind.BEYOND_ALCOHOL_LIMIT, leading(lot).kind());
        assertEquals(Alert.WATCH, leading(lot).alert());
        assertEquals(Optional.empty(), lot.ready().median());
        assertEquals(0, lot.ready().probabilityBy(day(400)));
        assertEquals(
                List.of(Task.Kind.CHECK_CARBONATION),
                outlook(strong, 60).tasks().stream().map(Task::kind).toList());
    }

    @Test
    void beerWithoutSugarHasNoReadyDateEither() {
        Cellar cellar = cellar(110, "room");
        Batch ale = cellar.batch("ale");
        Cellar still = cellar.withBatch(new Batch(
                "ale",
                "Still ale",
                ale.beer(),
                ale.yeast(),
                new Priming(19, List.of(), OptionalDouble.empty(), false),
                ale.fillingMethod(),
                ale.cappedAt(),
                ale.lots(),
                List.of(),
                ""));
        LotOutlook lot = box(still, 60);
        assertEquals(Set.of(Stuck.NO_SUGAR), lot.stuck().reasons());
        assertEquals(Optional.empty(), lot.ready().early());
        assertEquals(Stage.CARBONATING, lot.stage());
    }

    @Test
    void aGaugeThatStandsStillBelowWhereItShouldEndIsToldSinceWhen() {
        List<Reading> readings = new ArrayList<>();
        for (int day = 12; day <= 40; day += 7) {
            readings.add(new Reading.Gauge(day(day), "box", "one", 0.6));
        }
        Cellar cellar = cellar(110, "room");
        LotOutlook lot = box(cellar.withBatch(cellar.batch("ale").withReadings(readings)), 45);
        assertTrue(lot.stuck().reasons().contains(Stuck.STANDS_STILL), "" + lot.stuck());
        assertEquals(Optional.of(day(12)), lot.stuck().stillSince());
        assertEquals(Optional.empty(), lot.ready().late());
    }

    /** A week at 33 °C long enough ago that nothing is over any more. */
    private static Map<String, TimeSeries> hotWeek() {
        return Map.of("room", air(120, during(50, 57, 34)));
    }

    private static LongToDoubleFunction during(int from, int until, double celsius) {
        return time -> time >= day(from).getEpochSecond() && time < day(until).getEpochSecond() ? celsius : 16;
    }

    @Test
    void aPeakThatWasLeadsForAFortnightAndThenStandsBelow() {
        Cellar cellar = cellar(200, "room");
        LotOutlook lately = Outlooks.of(cellar, hotWeek(), day(64)).batch("ale").lot("box");
        assertEquals(Cause.Kind.PEAK_PAST_OVER_WORKING_PRESSURE, leading(lately).kind());
        assertEquals(Alert.ACT, leading(lately).alert());
        assertEquals(Handling.COOL_WHERE_IT_STANDS, lately.handling());
        Instant peak = leading(lately).since().orElseThrow();
        assertTrue(!peak.isBefore(day(50)) && peak.isBefore(day(58)), "" + peak);
        LotOutlook later = Outlooks.of(cellar, hotWeek(), day(75)).batch("ale").lot("box");
        assertFalse(later.verdict().has(Cause.Kind.PEAK_PAST_OVER_WORKING_PRESSURE));
        assertTrue(later.verdict().has(Cause.Kind.OLD_PEAK_OVER_WORKING_PRESSURE));
    }

    @Test
    void onceItHasBeenColdForADayItIsOpenedAndNotWarmedAgain() {
        Cellar cellar = cellar(290, "room");
        Batch ale = cellar.batch("ale");
        Cellar cooled =
                cellar.withBatch(ale.withMove("box", ale.lot("box").count(), "fridge", day(40), Cover.CLOSED_BOX));
        assertEquals(Handling.COOL_WHERE_IT_STANDS, box(cellar, 40).handling());
        assertEquals(
                Task.Kind.COOL_BEFORE_TOUCHING,
                outlook(cellar, 40).tasks().get(0).kind());
        LotOutlook cold = box(cooled, 43);
        assertTrue(
                cold.pressure().past().rest().isLongEnough(),
                "" + cold.pressure().past());
        assertEquals(Handling.OPEN_COLD, cold.handling());
        assertEquals(Task.Kind.OPEN_COLD, outlook(cooled, 43).tasks().get(0).kind());
    }

    @Test
    void whatIsOverOnlyLaterIsMovedWhileItMayBeCarried() {
        LotOutlook lot = box(cellar(200, "room"), 60);
        assertEquals(Cause.Kind.OVER_IN_WARMEST_WEEK, leading(lot).kind());
        assertEquals(Handling.MOVE_NOW, lot.handling());
        assertFalse(lot.handling().isHeldBack());
        assertEquals(
                "fridge",
                outlook(cellar(200, "room"), 60).coolestFor(lot).orElseThrow().placeId());
        assertTrue(outlook(cellar(200, "room"), 60).destination("fridge", lot).withinLimit());
    }

    private static Cellar burst(Optional<BurstCause> cause, Reading... readings) {
        Cellar cellar = cellar(110, "room");
        Batch ale = cellar.batch("ale");
        Lot box = ale.lot("box").withDraw(new Draw(day(30), 1, Draw.Fate.BURST, "", cause));
        return cellar.withBatch(ale.withLot(box).withReadings(List.of(readings)));
    }

    @Test
    void aBurstIsNeverForgottenAndLeadsUntilTheUserSaysWhy() {
        LotOutlook later = box(burst(Optional.empty()), 110);
        assertEquals(Cause.Kind.BURST, leading(later).kind());
        assertEquals(Alert.ACT, leading(later).alert());
        for (BurstCause cause : BurstCause.values()) {
            LotOutlook settled = box(burst(Optional.of(cause)), 110);
            assertFalse(settled.verdict().has(Cause.Kind.BURST), cause.id());
            assertTrue(settled.verdict().has(Cause.Kind.BURST_SETTLED), cause.id());
            assertNotEquals(Alert.CLEAR, settled.verdict().alert(Cause.Topic.PRESSURE), cause.id());
        }
    }

    @Test
    void onlyALaterReadingThatAgreesTakesASettledBurstAway() {
        Optional<BurstCause> chipped = Optional.of(BurstCause.CHIPPED);
        Reading before = new Reading.Gauge(day(20), "box", "one", 2.2);
        Reading after = new Reading.Gauge(day(60), "box", "one", 2.3);
        assertTrue(box(burst(chipped, before), 80).verdict().has(Cause.Kind.BURST_SETTLED));
        assertFalse(box(burst(chipped, before, after), 80).verdict().has(Cause.Kind.BURST_SETTLED));
        assertTrue(box(burst(Optional.empty(), before, after), 80).verdict().has(Cause.Kind.BURST));
    }

    @Test
    void theVerdictIsAFunctionOfCellarAndInstantAlone() {
        Cellar cellar = cellar(200, "room");
        Verdict first = Outlooks.of(cellar, hotWeek(), day(64)).batch("ale").verdict();
        Outlooks.of(cellar, hotWeek(), day(100));
        assertEquals(first, Outlooks.of(cellar, hotWeek(), day(64)).batch("ale").verdict());
    }
}
