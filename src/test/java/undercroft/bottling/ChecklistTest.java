package undercroft.bottling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static undercroft.bottling.Days.plan;
import static undercroft.bottling.Days.stock;

import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import undercroft.catalogue.Cleaner;
import undercroft.catalogue.Sanitiser;
import undercroft.cellar.FillingPlan;
import undercroft.wording.English;

class ChecklistTest {
    private static final Instant NOON = Instant.parse("2026-11-14T12:00:00Z");
    private static final FillingPlan PLAN = plan(2.4, "sucrose", stock("longneck-330", 60));

    private static Checklist list(FillingPlan plan) {
        return Checklist.of(Days.day(plan));
    }

    private static Step step(Checklist list, String id) {
        return list.steps().stream()
                .filter(step -> step.id().equals(id))
                .findFirst()
                .orElseThrow();
    }

    @Test
    void stepsComeInWorkingOrder() {
        List<String> ids = list(PLAN).steps().stream().map(Step::id).toList();
        assertEquals(
                List.of(
                        "gravity",
                        "bottles",
                        "clean",
                        "sanitise",
                        "caps",
                        "weigh",
                        "boil",
                        "cool",
                        "mix",
                        "fill",
                        "cap",
                        "crimp",
                        "count",
                        "store",
                        "rinse"),
                ids);
    }

    @Test
    void ticksAndTimersSurviveInThePlan() {
        Checklist worked = list(PLAN)
                .withDone("gravity", true)
                .withTimer("boil", NOON)
                .withDone("bottles", true)
                .withDone("bottles", false);
        Checklist again = list(PLAN.withSteps(worked.states()));
        assertTrue(again.isDone("gravity"));
        assertFalse(again.isDone("bottles"));
        assertEquals("bottles", again.next().orElseThrow().id());
        assertEquals(1, again.done());
        assertEquals(Optional.of(Duration.ofMinutes(4)), again.remaining("boil", NOON.plusSeconds(360)));
    }

    @Test
    void aTimerThatRanOutStandsAtZeroAndOneNotStartedShowsNothing() {
        Checklist started = list(PLAN).withTimer("boil", NOON);
        assertEquals(Optional.of(Duration.ZERO), started.remaining("boil", NOON.plusSeconds(86_400)));
        assertEquals(Optional.empty(), started.remaining("cool", NOON));
        assertEquals(Optional.empty(), started.withoutTimer("boil").remaining("boil", NOON));
        assertEquals(Optional.empty(), started.withTimer("fill", NOON).remaining("fill", NOON));
    }

    @Test
    void tickingATimedStepKeepsItsTimer() {
        Checklist ticked = list(PLAN).withTimer("boil", NOON).withDone("boil", true);
        assertTrue(ticked.remaining("boil", NOON).isPresent());
    }

    @Test
    void aStepThatIsNotOnTheListCannotBeTicked() {
        assertThrows(IllegalArgumentException.class, () -> list(PLAN).withDone("sing", true));
    }

    @Test
    void sugarByTheSpoonNeedsNoSyrup() {
        FillingPlan spoon = PLAN.withWish(new FillingPlan.Wish(2.4, OptionalDouble.empty(), "sucrose", true));
        List<String> ids = list(spoon).steps().stream().map(Step::id).toList();
        assertTrue(ids.contains("dose"));
        assertFalse(ids.contains("boil"));
    }

    /** No splashing, fill from the bottom, close at once or on foam (common practice, no source). */
    @Test
    void theHabitsThatKeepAirOutAreNamedWhereTheyMatter() {
        Checklist list = list(PLAN);
        assertTrue(English.of(step(list, "mix").oxygen().orElseThrow()).contains("no splashing"));
        assertTrue(English.of(step(list, "fill").oxygen().orElseThrow()).contains("bottom"));
        assertTrue(English.of(step(list, "cap").oxygen().orElseThrow()).contains("foam"));
    }

    @ParameterizedTest
    @EnumSource(Sanitiser.class)
    void everySanitiserWarnsOfMixingEyesHandsAndAirAndLetsTheLabelWin(Sanitiser sanitiser) {
        Checklist list = list(PLAN.withWash(FillingPlan.Wash.of(sanitiser, Cleaner.PERCARBONATE)));
        String caution = English.of(step(list, "sanitise").caution().orElseThrow());
        for (String word : List.of("never acid and chlorine", "Gloves", "eye protection", "window", "label")) {
            assertTrue(caution.contains(word), word);
        }
        assertEquals(
                sanitiser.contactMinutes() > 0
                        ? Optional.of(Duration.ofMinutes(sanitiser.contactMinutes()))
                        : Optional.empty(),
                step(list, "sanitise").timer());
    }

    @Test
    void forAnAcidSanitiserOnlyTheLabelHasARate() {
        Solution solution = Days.day(PLAN).wash().sanitising();
        assertEquals(0, solution.productAmount());
        assertFalse(solution.rinse());
        assertTrue(English.of(solution.words()).contains("as its label says, in 6.0 L of water, then drain"));
        FillingPlan labelled = PLAN.withWash(new FillingPlan.Wash(
                Sanitiser.ACID_ANIONIC, OptionalDouble.of(1.5), Cleaner.PERCARBONATE, OptionalDouble.empty()));
        assertTrue(English.of(Days.day(labelled).wash().sanitising().words()).startsWith("9 mL (0.30 fl oz) of acid"));
    }

    /** Iodophor of 1.75 % at 12.5 to 25 ppm (US 21 CFR 178.1010, from memory): 12.5 mg/L / 17.5 mg/mL = 0.71 mL/L and 1.43. */
    @Test
    void iodophorStaysWithinItsWindow() {
        double rate = Sanitiser.IODOPHOR.usualMillilitresPerLitre().orElseThrow();
        assertTrue(rate > 12.5 / 17.5 && rate < 25 / 17.5);
    }

    /** Peracetic acid: 5 % of 1.1 g/mL is 55 mg/mL; 1.8 mL/L is 99 ppm, inside 80 to 200 ppm (from memory). */
    @Test
    void peraceticAcidStaysWithinItsWindow() {
        double partsPerMillion =
                55 * Sanitiser.PERACETIC_ACID.usualMillilitresPerLitre().orElseThrow();
        assertTrue(partsPerMillion > 80 && partsPerMillion < 200);
    }

    @Test
    void theUsersLabelRateWinsOverTheUsualOne() {
        FillingPlan labelled = PLAN.withWash(new FillingPlan.Wash(
                Sanitiser.IODOPHOR, OptionalDouble.of(1.3), Cleaner.PERCARBONATE, OptionalDouble.of(4)));
        WashPlan wash = Days.day(labelled).wash();
        assertEquals(1.3 * wash.sanitising().litres(), wash.sanitising().productAmount(), 1e-9);
        assertEquals(4 * wash.cleaning().litres(), wash.cleaning().productAmount(), 1e-9);
        assertTrue(wash.sanitising().fromLabel());
    }

    /**
     * 57 bottles of 344 mL to the brim: a crate of 12 soaks in 4.1 L, a tenth of all is 2.0 L; each with a 4 L bucket, up to
     * the next half litre (arithmetic).
     */
    @Test
    void solutionsGrowWithNumberAndSizeOfBottles() {
        WashPlan wash = Days.day(PLAN).wash();
        assertEquals(8.5, wash.cleaning().litres(), 1e-9);
        assertEquals(6.0, wash.sanitising().litres(), 1e-9);
    }
}
