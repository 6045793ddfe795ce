package undercroft.demo;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.file.Path;
import java.time.Duration;
import java.time.Instant;
import java.util.EnumSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import undercroft.outlook.CellarOutlook;
import undercroft.outlook.Outlooks;
import undercroft.outlook.lot.Alert;
import undercroft.outlook.lot.BatchOutlook;
import undercroft.outlook.lot.Cause;
import undercroft.outlook.lot.LotOutlook;
import undercroft.outlook.lot.Stage;
import undercroft.outlook.spell.SpellImpact;
import undercroft.outlook.spell.SpellReview;
import undercroft.outlook.task.Task;
import undercroft.series.TimeSeries;
import undercroft.store.CellarStore;

/** The demo shows everything that can happen on a shelf. */
final class DemoDataTest {
    private static final Path FOLDER = Path.of("demo-data", "weir-house");
    private static CellarOutlook outlook;

    @BeforeAll
    static void reckon() {
        outlook =
                Outlooks.of(DemoCellar.cellar(), DemoWeather.temperatures(), Instant.ofEpochSecond(DemoWeather.UNTIL));
    }

    @Test
    void theFolderHoldsWhatTheCodeSays() {
        assertEquals(DemoCellar.cellar(), CellarStore.read(FOLDER), "run DemoCellarWriter");
        assertEquals(
                DemoWeather.temperatures(),
                CellarStore.temperatures(FOLDER, DemoCellar.cellar()).celsius(),
                "run DemoCellarWriter");
        assertEquals(List.of(), CellarStore.faults(FOLDER));
    }

    @Test
    void everyStageAndEveryAlertOccurs() {
        Set<Stage> stages = outlook.batches().stream().map(BatchOutlook::stage).collect(Collectors.toSet());
        Set<Alert> alerts = outlook.batches().stream().map(BatchOutlook::alert).collect(Collectors.toSet());
        assertEquals(EnumSet.allOf(Stage.class), stages);
        assertEquals(EnumSet.allOf(Alert.class), alerts);
        assertEquals(List.of(), outlook.problems());
    }

    @Test
    void eachBatchTellsItsOwnStory() {
        assertEquals(Alert.ACT, pressureAlert("millrace-saison"));
        assertTrue(batch("green-lane-blond").brightestLot().light().dose().median() > 1);
        assertEquals(
                LotOutlook.Progress.STALLED, batch("thornfield-mild").mainLot().progress());
        assertEquals(Alert.WATCH, pressureAlert("larch-honey-ale"));
        assertEquals(Stage.CARBONATING, batch("lock-gate-bitter").stage());
        assertEquals(Stage.READY, batch("chalk-pit-amber").stage());
        assertEquals(Stage.CARBONATING, batch("gable-strong").stage());
        assertEquals(Stage.READY, batch("quarry-porter").stage());
        assertEquals(2, batch("bramble-wheat").lots().size());
        assertEquals(Stage.PAST_BEST_BEFORE, batch("first-cut-pale").stage());
        assertTrue(batch("rookery-brown").bottlesLeft() <= 3);
        assertEquals(Stage.EMPTY, batch("may-morning").stage());
        assertEquals(Stage.FILLING, batch("lantern-stout").stage());
    }

    @Test
    void theHeatWaveInTheLoftIsFoundAndPricedInPressureAndDays() {
        SpellReview heat = outlook.spells().stream()
                .filter(SpellReview::warm)
                .filter(spell -> spell.place().id().equals("loft") && spell.peakCelsius() > 33)
                .findFirst()
                .orElseThrow();
        assertTrue(heat.from().isAfter(Instant.parse("2026-08-07T00:00:00Z")));
        assertTrue(heat.from().isBefore(Instant.parse("2026-08-09T12:00:00Z")));
        SpellImpact saison = heat.impacts().get(0);
        assertEquals("millrace-saison", saison.batchId());
        assertTrue(saison.hoursOverWorkingPressure() > 24 && saison.shelfDaysCost() > 5);
    }

    @Test
    void aFlocculentBeerForSaturdayEveningGoesIntoTheFridgeOnFriday() {
        // Common practice, no source: the night before is enough for yeast that falls fast.
        Instant chill = outlook.servings().stream()
                .filter(plan -> plan.serving().batchId().equals("quarry-porter"))
                .findFirst()
                .flatMap(plan -> plan.chillFrom())
                .orElseThrow();
        assertTrue(
                Duration.between(chill, Instant.parse("2026-11-28T17:00:00Z")).toHours() < 30);
        assertTrue(chill.isBefore(Instant.parse("2026-11-27T22:00:00Z")));
    }

    @Test
    void theLoggersLeftOneGapAndCrossedASummerTimeChange() {
        Map<String, TimeSeries> all = DemoWeather.temperatures();
        assertEquals(1, all.get("loft").gaps(3600).size());
        long change = Instant.parse("2026-10-25T01:00:00Z").getEpochSecond();
        for (TimeSeries series : all.values()) {
            assertTrue(series.firstTime() < change && series.lastTime() > change);
            assertTrue(series.lastTime() - series.firstTime() > 8L * 30 * 86_400);
        }
    }

    @Test
    void toDoListsTheDangerFirst() {
        List<Task> tasks = outlook.tasks();
        assertEquals(Task.Kind.COOL_BEFORE_TOUCHING, tasks.get(0).kind());
        assertTrue(tasks.stream().anyMatch(task -> task.kind() == Task.Kind.MOVE_WARMER));
        assertTrue(tasks.stream().anyMatch(task -> task.kind() == Task.Kind.COVER_FROM_LIGHT));
        assertTrue(tasks.stream().anyMatch(task -> task.kind() == Task.Kind.DRINK_SOON));
    }

    private static BatchOutlook batch(String id) {
        return outlook.batch(id);
    }

    private static Alert pressureAlert(String id) {
        return batch(id).verdict().alert(Cause.Topic.PRESSURE);
    }
}
