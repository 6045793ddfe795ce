package undercroft.outlook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import undercroft.catalogue.BeerStyle;
import undercroft.catalogue.Cover;
import undercroft.catalogue.FillingMethod;
import undercroft.catalogue.Flocculation;
import undercroft.catalogue.GlassColour;
import undercroft.catalogue.LightPlace;
import undercroft.catalogue.YeastState;
import undercroft.catalogue.YeastStrain;
import undercroft.cellar.Batch;
import undercroft.cellar.Beer;
import undercroft.cellar.Cellar;
import undercroft.cellar.Draw;
import undercroft.cellar.FittedGauge;
import undercroft.cellar.LightSetting;
import undercroft.cellar.Lot;
import undercroft.cellar.Place;
import undercroft.cellar.Priming;
import undercroft.cellar.PrintedLabel;
import undercroft.cellar.Reading;
import undercroft.cellar.Stay;
import undercroft.cellar.SugarDose;
import undercroft.cellar.TaskNote;
import undercroft.cellar.TemperatureSource;
import undercroft.cellar.Yeast;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.Cause;
import undercroft.outlook.lot.LotOutlook;
import undercroft.outlook.lot.PressureOutlook;
import undercroft.outlook.lot.Stage;
import undercroft.outlook.task.Task;
import undercroft.series.TimeSeries;

final class OutlooksTest {
    private static final ZoneId ZONE = ZoneId.of("Europe/Lisbon");
    private static final Instant CAPPED = Instant.parse("2026-02-01T12:00:00Z");
    private static final Duration DAY = Duration.ofDays(1);

    @Test
    void anOrdinaryAleIsReadyAfterAboutTwoWeeksAtRoomTemperature() {
        // Common practice, no source: two weeks at room temperature.
        LotOutlook lot = ale(cellar(21, 120, List.of()), 30).mainLot();
        Duration untilReady = Duration.between(CAPPED, lot.ready().median().orElseThrow());
        assertTrue(untilReady.toDays() >= 10 && untilReady.toDays() <= 19, untilReady.toString());
    }

    @Test
    void anAleInTheFridgeStallsAndIsToldToMoveSomewhereWarmer() {
        // Common practice, no source: ale yeast all but stops below 8 °C.
        BatchOutlook batch = ale(cellar(5, 120, List.of()), 30);
        assertEquals(LotOutlook.Progress.STALLED, batch.mainLot().progress());
        assertEquals(Stage.CARBONATING, batch.stage());
        assertEquals(
                Task.Kind.MOVE_WARMER,
                tasks(cellar(5, 120, List.of()), 30).get(0).kind());
        assertTrue(batch.verdict().has(Cause.Kind.STALLED));
    }

    @Test
    void moreSugarAndMoreWarmthMeanMorePressure() {
        double usual = finished(20, 120);
        assertTrue(finished(20, 160) > usual + 0.3);
        assertTrue(finished(30, 120) > usual + 0.6);
    }

    @Test
    void twiceTheSugarIsDangerousAndComesWithTheFirstTask() {
        BatchOutlook batch = ale(cellar(24, 270, List.of()), 40);
        assertEquals(Alert.ACT, batch.alert());
        assertEquals(
                Task.Kind.COOL_BEFORE_TOUCHING,
                tasks(cellar(24, 270, List.of()), 40).get(0).kind());
        assertEquals(
                Cause.Kind.STRONGEST_OVER_WORKING_PRESSURE,
                batch.verdict().leading().orElseThrow().kind());
    }

    @Test
    void theHeatLimitIsWhereTheFinishedPressureMeetsTheLimit() {
        PressureOutlook cool = ale(cellar(20, 120, List.of()), 60).mainLot().pressure();
        double limit = cool.heatLimitCelsius();
        assertTrue(limit > 25 && limit < 60, "heat limit " + limit);
        Cellar cellar = cellar(20, 120, List.of()).withPlace(place("attic", limit, 2));
        Instant moved = CAPPED.plus(DAY.multipliedBy(60));
        Batch there = cellar.batch("ale").withMove("box", 57, "attic", moved, Cover.CLOSED_BOX);
        assertEquals(0.05, cool.probabilityOverAt(limit + 1e-6), 0.003);
        // What is hidden in some batches takes most of a year to come.
        PressureOutlook atLimit = ale(cellar.withBatch(there), 400).mainLot().pressure();
        assertEquals(atLimit.workingPressureBar(), atLimit.strongestBottle().high(), 0.1);
    }

    @Test
    void gaugeReadingsNarrowTheForecast() {
        BatchOutlook before = ale(cellar(18, 120, List.of()), 12);
        List<Reading> readings = List.of(
                new Reading.Gauge(CAPPED.plus(DAY.multipliedBy(4)), "box", "one", 0.9),
                new Reading.Gauge(CAPPED.plus(DAY.multipliedBy(8)), "box", "one", 1.6));
        BatchOutlook after = ale(cellar(18, 120, readings), 12);
        assertTrue(after.mainLot().carbonation().atPresent().width()
                < before.mainLot().carbonation().atPresent().width());
        assertFalse(before.equals(after));
    }

    @Test
    void aReadingBeyondAllSugarRaisesTheAlarm() {
        List<Reading> readings = List.of(
                new Reading.Gauge(CAPPED.plus(DAY.multipliedBy(20)), "box", "one", 6.5),
                new Reading.Gauge(CAPPED.plus(DAY.multipliedBy(25)), "box", "one", 7.2));
        BatchOutlook batch = ale(cellar(18, 120, readings), 30);
        assertEquals(Alert.ACT, batch.alert());
        assertTrue(tasks(cellar(18, 120, readings), 30).stream()
                .anyMatch(task -> task.kind() == Task.Kind.COOL_BEFORE_TOUCHING && task.alert() == Alert.ACT));
    }

    @Test
    void readingsAndDrawsOfLaterDaysAreNotLookedAt() {
        List<Reading> later = List.of(new Reading.Gauge(CAPPED.plus(DAY.multipliedBy(20)), "box", "one", 2.2));
        BatchOutlook plain = ale(cellar(18, 120, List.of()), 10);
        BatchOutlook withLater = ale(cellar(18, 120, later), 10);
        assertEquals(
                plain.mainLot().carbonation().atPresent(),
                withLater.mainLot().carbonation().atPresent());
        assertEquals(plain.bottlesLeft(), withLater.bottlesLeft());
    }

    @Test
    void beforeItIsCappedABatchIsPlanned() {
        BatchOutlook batch = ale(cellar(20, 120, List.of()), -3);
        assertEquals(Stage.FILLING, batch.stage());
        assertFalse(batch.isCapped());
    }

    @Test
    void aLotThatIsEmptyRaisesNoAlert() {
        Cellar cellar = cellar(24, 270, List.of());
        Lot all = cellar.batch("ale").lots().get(0);
        Draw everything = new Draw(CAPPED.plus(DAY.multipliedBy(30)), all.count(), Draw.Fate.OPENED, "");
        Cellar emptied = cellar.withBatch(cellar.batch("ale").withLot(all.withDraw(everything)));
        BatchOutlook batch = ale(emptied, 40);
        assertEquals(Stage.EMPTY, batch.stage());
        assertEquals(Alert.CLEAR, batch.alert());
        assertEquals(
                List.of(Task.Kind.CLOSE_BATCH),
                tasks(emptied, 40).stream().map(Task::kind).toList());
    }

    /** Fitted at capping, read daily: the next reading is asked for a day later, and once it stands still the taste. */
    @Test
    void aGaugeExperimentIsReadDailyToItsPlateauAndEndsWithATaste() {
        Cellar cellar = cellar(20, 90, List.of());
        Batch ale = cellar.batch("ale");
        Lot lot = ale.lots().get(0).withGauge(new FittedGauge("dial", CAPPED));
        assertEquals(List.of(Task.Kind.READ_GAUGE_DAILY), experiment(cellar.withBatch(ale.withLot(lot)), 1));
        List<Reading> rising = new ArrayList<>();
        for (int day = 1; day <= 10; day++) {
            rising.add(new Reading.Gauge(CAPPED.plus(DAY.multipliedBy(day)), lot.id(), "dial", 0.2 * day));
        }
        Cellar read = cellar.withBatch(ale.withLot(lot).withReadings(rising));
        assertEquals(List.of(Task.Kind.READ_GAUGE_DAILY), experiment(read, 10));
        Task next = tasks(read, 10).stream()
                .filter(task -> task.kind() == Task.Kind.READ_GAUGE_DAILY)
                .findFirst()
                .orElseThrow();
        assertEquals(CAPPED.plus(DAY.multipliedBy(11)), next.when());
        List<Reading> still = new ArrayList<>(rising);
        for (int day = 11; day <= 20; day++) {
            still.add(new Reading.Gauge(CAPPED.plus(DAY.multipliedBy(day)), lot.id(), "dial", 2.02));
        }
        Cellar plateau = cellar.withBatch(ale.withLot(lot).withReadings(still));
        assertEquals(List.of(Task.Kind.OPEN_GAUGE_BOTTLE), experiment(plateau, 20));
        Lot opened = lot.withGauge(lot.gauge().orElseThrow().opened(CAPPED.plus(DAY.multipliedBy(21))));
        assertEquals(List.of(), experiment(cellar.withBatch(ale.withLot(opened).withReadings(still)), 22));
    }

    private static List<Task.Kind> experiment(Cellar cellar, int days) {
        return tasks(cellar, days).stream()
                .map(Task::kind)
                .filter(kind -> kind == Task.Kind.READ_GAUGE_DAILY || kind == Task.Kind.OPEN_GAUGE_BOTTLE)
                .toList();
    }

    @Test
    void labelsThatSayThreeDegreesTooMuchAreAskedForAnewAndUndoneByNewOnes() {
        Cellar cellar = cellar(15, 90, List.of());
        double limit = ale(cellar, 40).heatLimitLot().pressure().heatLimitCelsius();
        Instant at = CAPPED.plus(DAY);
        assertFalse(kinds(new PrintedLabel(at, limit + 2.9).on("ale").apply(cellar), 40)
                .contains(Task.Kind.PRINT_LABEL));
        Cellar misled = new PrintedLabel(at, limit + 3.1).on("ale").apply(cellar);
        Task task = tasks(misled, 40).stream()
                .filter(each -> each.kind() == Task.Kind.PRINT_LABEL)
                .findFirst()
                .orElseThrow();
        assertEquals(Optional.of(at), task.since());
        Cellar done = misled.withTaskNotes(List.of(new TaskNote(task.key(), TaskNote.What.DONE, Optional.empty())));
        assertFalse(kinds(done, 40).contains(Task.Kind.PRINT_LABEL));
        Cellar again = new PrintedLabel(at.plus(DAY.multipliedBy(9)), limit + 4)
                .on("ale")
                .apply(done);
        assertTrue(kinds(again, 40).contains(Task.Kind.PRINT_LABEL), "the next labels are another matter");
    }

    private static List<Task.Kind> kinds(Cellar cellar, int days) {
        return tasks(cellar, days).stream().map(Task::kind).toList();
    }

    @Test
    void aBurstBottleRaisesTheAlertAtOnce() {
        Cellar cellar = cellar(15, 90, List.of());
        Lot lot = cellar.batch("ale").lots().get(0);
        Draw burst = new Draw(CAPPED.plus(DAY.multipliedBy(20)), 1, Draw.Fate.BURST, "");
        BatchOutlook batch = ale(cellar.withBatch(cellar.batch("ale").withLot(lot.withDraw(burst))), 21);
        assertEquals(Alert.ACT, batch.alert());
    }

    @Test
    void aMoveStartsFromTheTemperatureTheBottlesHad() {
        Cellar cellar = cellar(20, 120, List.of());
        Instant moved = CAPPED.plus(DAY.multipliedBy(20));
        Batch batch = cellar.batch("ale").withMove("box", 10, "fridge", moved, Cover.NONE);
        CellarOutlook outlook = Outlooks.of(cellar.withBatch(batch), Map.of(), moved.plusSeconds(1800));
        LotOutlook chilled = outlook.batch("ale").lots().get(1);
        assertEquals("fridge", chilled.place().id());
        // Half an hour after the move, with a lag of two hours, the bottles are still far from the fridge's 5 °C.
        assertTrue(
                chilled.temperature().nowCelsius() > 10,
                "" + chilled.temperature().nowCelsius());
        LotOutlook later = Outlooks.of(cellar.withBatch(batch), Map.of(), moved.plus(DAY))
                .batch("ale")
                .lots()
                .get(1);
        assertEquals(5, later.temperature().nowCelsius(), 0.3);
    }

    @Test
    void theSameCellarGivesTheSameOutlook() {
        Cellar cellar = cellar(20, 120, List.of());
        Instant at = CAPPED.plus(DAY.multipliedBy(9));
        LotOutlook first = Outlooks.of(cellar, Map.of(), at).batch("ale").mainLot();
        LotOutlook second = Outlooks.of(cellar, Map.of(), at).batch("ale").mainLot();
        assertEquals(first.carbonation().atPresent(), second.carbonation().atPresent());
        assertEquals(first.pressure().peakAhead(), second.pressure().peakAhead());
        assertEquals(first.ready(), second.ready());
    }

    @Test
    void aPlaceWithoutALogIsAProblemThatIsNamed() {
        Cellar cellar = cellar(20, 120, List.of());
        Place logged = cellar.place("room").withTemperature(new TemperatureSource.Logged());
        CellarOutlook outlook = Outlooks.of(cellar.withPlace(logged), Map.of(), CAPPED.plus(DAY));
        assertEquals(Problem.Kind.NO_TEMPERATURES, outlook.problems().get(0).kind());
        assertEquals("room", outlook.problems().get(0).id());
        assertTrue(outlook.batch("ale").isCapped());
    }

    @Test
    void whatIsLoggedAfterTheInstantChangesNothing() {
        Cellar cellar = cellar(20, 120, List.of());
        Place logged = cellar.place("room").withTemperature(new TemperatureSource.Logged());
        Instant at = CAPPED.plus(DAY.multipliedBy(5));
        TimeSeries.Builder until = new TimeSeries.Builder();
        TimeSeries.Builder beyond = new TimeSeries.Builder();
        for (long t = CAPPED.getEpochSecond(); t < at.getEpochSecond() + 10 * 86_400; t += 1800) {
            if (t <= at.getEpochSecond()) {
                until.add(t, 19);
            }
            beyond.add(t, t <= at.getEpochSecond() ? 19 : 36);
        }
        Cellar withLog = cellar.withPlace(logged);
        LotOutlook known = Outlooks.of(withLog, Map.of("room", until.build()), at)
                .batch("ale")
                .mainLot();
        LotOutlook spoiled = Outlooks.of(withLog, Map.of("room", beyond.build()), at)
                .batch("ale")
                .mainLot();
        assertEquals(known.pressure().peakAhead(), spoiled.pressure().peakAhead());
    }

    private static double finished(double celsius, double grams) {
        return ale(cellar(celsius, grams, List.of()), 60)
                .mainLot()
                .pressure()
                .atPresent()
                .median();
    }

    private static List<Task> tasks(Cellar cellar, int days) {
        return shelf(cellar, days).tasks();
    }

    private static CellarOutlook shelf(Cellar cellar, int days) {
        return Outlooks.of(cellar, Map.of(), CAPPED.plus(DAY.multipliedBy(days)));
    }

    private static BatchOutlook ale(Cellar cellar, int days) {
        return shelf(cellar, days).batch("ale");
    }

    private static Cellar cellar(double celsius, double grams, List<Reading> readings) {
        List<Place> places = new ArrayList<>();
        places.add(place("room", celsius, 4));
        places.add(place("fridge", 5, 2));
        Lot lot = new Lot(
                "box",
                "longneck-330",
                GlassColour.AMBER,
                57,
                330,
                false,
                List.of(new Stay("room", CAPPED, Cover.CLOSED_BOX)),
                List.of());
        Batch batch = new Batch(
                "ale",
                "Plain ale",
                new Beer(BeerStyle.PALE_ALE, 5, 25, 0, 12, 20, OptionalDouble.empty(), OptionalDouble.empty()),
                new Yeast(YeastStrain.ALE, YeastState.ORDINARY, Flocculation.ORDINARY, false),
                new Priming(19, List.of(new SugarDose("dextrose", grams)), OptionalDouble.empty(), false),
                FillingMethod.CAREFUL,
                Optional.of(CAPPED),
                List.of(lot),
                readings,
                "");
        return Cellar.empty("Test", ZONE).withPlaces(places).withBatch(batch);
    }

    private static Place place(String id, double celsius, double lagHours) {
        return new Place(
                id, id, new TemperatureSource.FixedGuess(celsius, 0), lagHours, LightSetting.usual(LightPlace.DARK));
    }
}
