package undercroft.outlook;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static undercroft.outlook.PourShelf.local;

import java.time.DayOfWeek;
import java.time.Duration;
import java.time.Instant;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import undercroft.catalogue.Cover;
import undercroft.catalogue.Settling;
import undercroft.catalogue.Surroundings;
import undercroft.cellar.Batch;
import undercroft.cellar.Cellar;
import undercroft.cellar.Draw;
import undercroft.cellar.Pour;
import undercroft.cellar.TaskNote;
import undercroft.series.TimeSeries;

final class PourPlansTest {
    private static final Instant MONDAY = local("2026-04-13T12:00");
    private static final Instant SATURDAY = local("2026-04-18T18:00");

    private static PourPlan plan(Cellar cellar, Pour pour, Instant at) {
        return PourShelf.outlook(cellar.withPours(List.of(pour)), at).pours().get(0);
    }

    private static PourPlan plan(Settling settling, Instant pourAt, Instant at) {
        return plan(PourShelf.cellar(PourShelf.ale("ale", settling, 40)), PourShelf.pour("sat", "ale", 4, pourAt), at);
    }

    private static ZonedDateTime wall(Instant instant) {
        return instant.atZone(PourShelf.ZONE);
    }

    @Test
    void aFlocculentBatchForSaturdayGoesInOnFridayEvening() {
        // Common practice, no source: "the night before".
        ZonedDateTime in =
                wall(plan(Settling.FLOCCULENT, SATURDAY, MONDAY).chillFrom().orElseThrow());
        assertEquals(DayOfWeek.FRIDAY, in.getDayOfWeek());
        assertTrue(in.getHour() >= 17 && in.getHour() < 24, in.toString());
    }

    @Test
    void aPowderyOneGoesInDaysEarlier() {
        // Common practice, no source: three to five days upright.
        Instant in = plan(Settling.POWDERY, SATURDAY, MONDAY).chillFrom().orElseThrow();
        long days = Duration.between(in, SATURDAY).toDays();
        assertTrue(days >= 3 && days <= 5, days + " days");
    }

    @Test
    void aPourAcrossTheNightOfSummerTimeKeepsItsWallClock() {
        // Europe/Vienna leaps from 02:00 to 03:00 on 29 March 2026 (IANA time zone database).
        PourPlan plan = plan(Settling.FLOCCULENT, local("2026-03-29T18:00"), local("2026-03-24T12:00"));
        assertEquals(
                "2026-03-29T18:00", wall(plan.pour().at()).toLocalDateTime().toString());
        assertEquals(DayOfWeek.SATURDAY, wall(plan.chillFrom().orElseThrow()).getDayOfWeek());
        PourPlan usual = plan(Settling.FLOCCULENT, local("2026-04-12T18:00"), local("2026-04-07T12:00"));
        assertEquals(
                Duration.between(usual.takeOut(), usual.pour().at()),
                Duration.between(plan.takeOut(), plan.pour().at()));
        assertEquals(wall(usual.takeOut()).toLocalTime(), wall(plan.takeOut()).toLocalTime());
    }

    @Test
    void theCourseEndsAtTheGlassAndStartsInTheRoom() {
        PourPlan plan = plan(Settling.FLOCCULENT, SATURDAY, MONDAY);
        TimeSeries course = plan.chilling().orElseThrow().course();
        assertEquals(20, course.valueAt(0), 0.1);
        assertEquals(SATURDAY.getEpochSecond(), course.lastTime());
        // Poured 1.5 K below the wanted 11 °C: common practice, the glass warms it.
        assertEquals(9.5, course.lastValue(), 0.2);
        double coldest = Double.MAX_VALUE;
        for (int i = 0; i < course.size(); i++) {
            coldest = Math.min(coldest, course.valueAt(i));
        }
        assertTrue(coldest >= 4 && coldest < 5, "" + coldest);
    }

    @Test
    void whatCannotBeDoneInTimeSaysSoAndOffersIceWaterNotTheFreezer() {
        PourPlan plan = plan(Settling.FLOCCULENT, SATURDAY, SATURDAY.minusSeconds(3 * 3600));
        assertTrue(plan.chillFrom().isEmpty());
        String sentence = plan.concerns().get(0).sentence();
        assertTrue(plan.has(Concern.Kind.TOO_LATE));
        assertTrue(sentence.contains("min in ice water"), sentence);
        assertTrue(sentence.contains("alarm") && sentence.contains("bursts"), sentence);
    }

    @Test
    void theFreezerNeverComesWithoutItsAlarm() {
        Cellar cellar = PourShelf.cellar(PourShelf.ale("ale", Settling.FLOCCULENT, 40));
        PourPlan plan = plan(cellar, PourShelf.pour("ale", SATURDAY, Surroundings.FREEZER), MONDAY);
        Concern freezer = plan.concerns().stream()
                .filter(each -> each.kind() == Concern.Kind.FREEZER)
                .findFirst()
                .orElseThrow();
        assertTrue(freezer.sentence().contains("bursts"));
        PourPlan ice = plan(cellar, PourShelf.pour("ale", SATURDAY, Surroundings.ICE_WATER), MONDAY);
        assertFalse(ice.has(Concern.Kind.FREEZER));
        assertTrue(Duration.between(ice.chillFrom().orElseThrow(), SATURDAY).toMinutes() < 30);
    }

    @Test
    void poursThatWantTheSameBottlesAreBothFlagged() {
        Cellar cellar = PourShelf.cellar(PourShelf.ale("ale", Settling.FLOCCULENT, 10))
                .withPours(List.of(
                        PourShelf.pour("one", "ale", 6, SATURDAY),
                        PourShelf.pour("two", "ale", 6, SATURDAY.plusSeconds(86_400))));
        List<PourPlan> plans = PourShelf.outlook(cellar, MONDAY).pours();
        assertTrue(plans.stream().allMatch(plan -> plan.has(Concern.Kind.SAME_BOTTLES)));
        Cellar enough = cellar.withPours(List.of(
                PourShelf.pour("one", "ale", 6, SATURDAY),
                PourShelf.pour("two", "ale", 4, SATURDAY.plusSeconds(86_400))));
        assertTrue(PourShelf.outlook(enough, MONDAY).pours().stream()
                .noneMatch(plan -> plan.has(Concern.Kind.SAME_BOTTLES)));
    }

    @Test
    void aFridgeWarmerThanTheGlassIsSaid() {
        Cellar cellar = PourShelf.cellar(PourShelf.ale("ale", Settling.FLOCCULENT, 40));
        Pour pour = new Pour("only", "ale", 4, SATURDAY, "fridge", OptionalDouble.of(2), "");
        assertTrue(plan(cellar, pour, MONDAY).has(Concern.Kind.TOO_WARM_A_PLACE));
    }

    @Test
    void anAleInTheIceHouseWillNeverBeReady() {
        // Salvadó et al. 2011: Saccharomyces cerevisiae does not grow below about 4 °C.
        Cellar cellar =
                PourShelf.cellar(PourShelf.ale("ale", Settling.FLOCCULENT, 40, "cold", local("2026-04-01T12:00")));
        PourPlan plan = plan(cellar, PourShelf.pour("sat", "ale", 4, SATURDAY), MONDAY);
        assertTrue(plan.has(Concern.Kind.NEVER_READY));
        assertFalse(plan.readyByThen());
        assertTrue(plan.probabilityReady() < 0.05);
    }

    @Test
    void aYoungBatchTellsItsChance() {
        Cellar cellar =
                PourShelf.cellar(PourShelf.ale("ale", Settling.FLOCCULENT, 40, "room", local("2026-04-04T12:00")));
        PourPlan plan = plan(cellar, PourShelf.pour("sat", "ale", 4, SATURDAY), MONDAY);
        assertTrue(plan.has(Concern.Kind.MAY_NOT_BE_READY));
        assertTrue(plan.probabilityReady() > 0.02 && plan.probabilityReady() < 0.9, "" + plan.probabilityReady());
    }

    @Test
    void theChanceRisesWithTimeAndEndsNearOne() {
        Cellar cellar =
                PourShelf.cellar(PourShelf.ale("ale", Settling.FLOCCULENT, 40, "room", local("2026-04-04T12:00")));
        ReadyOutlook ready =
                PourShelf.outlook(cellar, MONDAY).batch("ale").mainLot().ready();
        double before = 0;
        for (int day = 0; day < 120; day++) {
            double chance = ready.probabilityBy(MONDAY.plus(Duration.ofDays(day)));
            assertTrue(chance >= before, "day " + day);
            before = chance;
        }
        assertEquals(0.5, ready.probabilityBy(ready.median().orElseThrow()), 0.03);
        assertTrue(before > 0.97, "" + before);
    }

    @Test
    void bottlesInTheFridgeAlreadyStayThere() {
        Cellar cellar = PourShelf.cellar(PourShelf.ale("ale", Settling.FLOCCULENT, 40)
                .withMove("box", 12, "fridge", local("2026-04-10T20:00"), Cover.NONE));
        PourPlan plan = plan(cellar, PourShelf.pour("sat", "ale", 4, SATURDAY), MONDAY);
        assertEquals(local("2026-04-10T20:00"), plan.chillFrom().orElseThrow());
        assertTrue(plan.why().startsWith("already in the cold"));
    }

    @Test
    void whatWasPutAwayIsNotAskedForAgain() {
        Cellar cellar = PourShelf.cellar(PourShelf.ale("ale", Settling.FLOCCULENT, 40))
                .withPours(List.of(PourShelf.pour("sat", "ale", 4, SATURDAY)));
        Instant thursday = local("2026-04-16T12:00");
        Task chill = PourShelf.outlook(cellar, thursday).tasks().stream()
                .filter(task -> task.kind() == Task.Kind.CHILL)
                .findFirst()
                .orElseThrow();
        assertEquals("chill/ale/sat", chill.key());
        Instant later = thursday.plusSeconds(6 * 3600);
        Cellar noted =
                cellar.withTaskNote(new TaskNote(chill.key(), TaskNote.What.POSTPONED, Optional.of(later)), thursday);
        List<String> keys = new ArrayList<>();
        for (Instant at : List.of(thursday, later)) {
            PourShelf.outlook(noted, at).tasks().forEach(task -> keys.add(task.key()));
        }
        assertEquals(1, keys.stream().filter(chill.key()::equals).count());
    }

    @Test
    void aBurstBottleAsksAboutTheOthersUntilItIsDone() {
        Batch batch = PourShelf.ale("ale", Settling.FLOCCULENT, 40);
        Draw burst = new Draw(local("2026-04-12T08:00"), 1, Draw.Fate.BURST, "");
        Cellar cellar = PourShelf.cellar(batch.withLot(batch.lot("box").withDraw(burst)));
        Task task = PourShelf.outlook(cellar, MONDAY).tasks().get(0);
        assertEquals(Task.Kind.LOOK_AT_THE_OTHERS, task.kind());
        assertEquals(Alert.ACT, task.alert());
        assertTrue(task.why().contains("1 bottle burst on 12 April"), task.why());
        assertEquals(
                task.key(),
                PourShelf.outlook(cellar, MONDAY.plusSeconds(86_400))
                        .tasks()
                        .get(0)
                        .key());
    }
}
