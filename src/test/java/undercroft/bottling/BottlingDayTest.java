package undercroft.bottling;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static undercroft.bottling.Days.day;
import static undercroft.bottling.Days.plan;
import static undercroft.bottling.Days.resolved;
import static undercroft.bottling.Days.stock;

import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import undercroft.calc.priming.UnfinishedFermentation.Verdict;
import undercroft.catalogue.GlassColour;
import undercroft.cellar.Beer;
import undercroft.cellar.BottleStock;
import undercroft.cellar.DatedGravity;
import undercroft.cellar.FillingPlan;
import undercroft.quantity.InvalidInput;
import undercroft.wording.English;

class BottlingDayTest {
    private static final BottleStock LONGNECKS = stock("longneck-330", 60);

    private static FillingPlan with(FillingPlan plan, double first, double second) {
        return plan.withGravities(List.of(
                new DatedGravity(Days.TODAY.minusDays(3), first), new DatedGravity(Days.TODAY.minusDays(1), second)));
    }

    @Test
    void aFinishedBeerInSoundBottlesMayGoOn() {
        BottlingDay day = day(plan(2.4, "sucrose", LONGNECKS));
        assertEquals(Verdict.GO, day.unfinished().verdict());
        assertTrue(day.mayGoOn());
        assertTrue(day.atStake().isEmpty());
    }

    /**
     * Two points at 2.08 to 2.10 g/L of real extract each (0.8192 of the apparent extract; ASBC table) and 0.4629 to 0.5143 g
     * of CO2 a gram (Balling's factors; maltose) are 1.93 to 2.16 g/L, about one volume.
     */
    @Test
    void twoPointsFromFinishedIsAWaitWithAboutOneVolumeAtStake() {
        BottlingDay day = day(with(plan(2.4, "sucrose", LONGNECKS), 1.012, 1.012));
        assertEquals(Verdict.WAIT, day.unfinished().verdict());
        assertEquals(1.0, day.unfinished().extraVolumes().median(), 0.05);
        assertFalse(day.mayGoOn());
        assertTrue(English.of(day.atStake().orElseThrow()).contains("about 1 vol more"));
    }

    @Test
    void withoutReadingsNothingIsPromised() {
        BottlingDay day = day(plan(2.4, "sucrose", LONGNECKS).withGravities(List.of()));
        assertEquals(Verdict.UNKNOWN, day.unfinished().verdict());
        assertTrue(day.mayGoOn());
    }

    /**
     * A 500 mL bottle with 20 mL headspace at 2.5 volumes, capped at 20 °C over air, beer factor 0.95, between all air in
     * solution and all of it kept, at 20, 30 and 40 °C: Weiss 1974 and Henry's law for air, computed for this project with
     * another program, unpublished. The upper estimate is the strongest bottle's.
     */
    @ParameterizedTest
    @CsvSource({"1, 2.67, 3.04", "2, 3.67, 4.06", "3, 4.78, 5.20"})
    void pressuresFollowTheWorkedExample(int index, double dissolved, double kept) {
        BottlingDay day = day(plan(2.5, "sucrose", stock("returnable-500", 60)));
        BottlePressure pressure = day.weakest().orElseThrow();
        double median = pressure.warmths().get(index).gaugeBar().median();
        assertTrue(median > dissolved && median < kept, "median " + median);
        assertTrue(pressure.warmths().get(index).gaugeBar().high() > kept);
    }

    /** Glass for fizzy drinks: not above 4.7 bar (British Glass TEC 7); class of a clean crown bottle here. */
    @Test
    void theHeatLimitOfAStandardBottleLiesInAWarmRoom() {
        BottlePressure pressure = day(plan(2.5, "sucrose", LONGNECKS)).weakest().orElseThrow();
        assertEquals(4.7, pressure.limits().workingPressureBar());
        assertTrue(pressure.heatLimit().celsius() > 28 && pressure.heatLimit().celsius() < 36);
    }

    @Test
    void theHighestSafeTargetMeetsTheLimitOnAHotDay() {
        BottlingDay day = day(plan(2.2, "sucrose", LONGNECKS));
        double highest = day.highestTargetVolumes().orElseThrow();
        BottlePressure atHighest =
                day(plan(highest, "sucrose", LONGNECKS)).weakest().orElseThrow();
        assertEquals(0, atHighest.marginBar(), 2e-3);
        assertEquals(BottlePressure.CHECKED_CELSIUS, atHighest.heatLimit().celsius(), 0.05);
    }

    @Test
    void aTargetAboveTheWeakestBottleIsRefusedWithTheHighestWithinTheLimit() {
        BottleStock worn = new BottleStock("longneck-330", GlassColour.AMBER, true, 20);
        BottlingDay day = day(plan(3.3, "sucrose", stock("sparkling-750", 10), worn));
        assertFalse(day.mayGoOn());
        assertEquals(1, day.refusals().size());
        double highest = day.highestTargetVolumes().orElseThrow();
        assertTrue(English.of(day.refusals().get(0))
                .contains(String.format(
                        Locale.ROOT,
                        "target within the limit (estimate) is %d.%d vol",
                        (int) highest,
                        (int) (highest * 10) % 10)));
        assertEquals(3.5, day.weakest().orElseThrow().limits().workingPressureBar());
        BottlingDay lower = day(plan(Math.floor(highest * 10) / 10, "sucrose", stock("sparkling-750", 10), worn));
        assertTrue(lower.mayGoOn());
    }

    @ParameterizedTest
    @ValueSource(strings = {"still-wine", "ornament"})
    void bottlesThatAreNoPressureBottlesAreRefusedForAnyTarget(String bottle) {
        for (double target : new double[] {0.1, 1.5, 2.4}) {
            BottlingDay day = day(plan(target, "sucrose", stock(bottle, 30)));
            assertFalse(day.mayGoOn());
            assertEquals(0, day.order().filled());
            assertTrue(English.of(day.refusals().get(0)).contains("not a pressure bottle"));
        }
    }

    @Test
    void anUncertainSugarLowersTheHighestTarget() {
        double sucrose =
                day(plan(2.2, "sucrose", LONGNECKS)).highestTargetVolumes().orElseThrow();
        double honey = day(plan(2.2, "honey", LONGNECKS)).highestTargetVolumes().orElseThrow();
        assertTrue(honey < sucrose - 0.05);
    }

    @Test
    void aYeastThatEatsDextrinsRaisesThePressureAndLowersTheLimit() {
        FillingPlan filling = plan(2.2, "sucrose", LONGNECKS);
        Beer beer = Days.beer(20, OptionalDouble.of(1.010));
        BottlePressure plain = day(filling).weakest().orElseThrow();
        BottlePressure wild = BottlingDay.of(resolved(beer, Days.DIASTATIC, filling))
                .weakest()
                .orElseThrow();
        assertTrue(wild.warmths().get(1).gaugeBar().median()
                > plain.warmths().get(1).gaugeBar().median() + 1);
        assertTrue(wild.heatLimit().celsius() < plain.heatLimit().celsius() - 5);
    }

    @Test
    void unfinishedBeerForWhichNoTargetStaysWithinTheLimitIsRefusedAsSuch() {
        BottlingDay day = day(with(plan(1.0, "sucrose", LONGNECKS), 1.020, 1.020));
        assertTrue(English.of(day.refusals().get(0)).contains("no target stays within the limit"));
        assertEquals(0, day.highestTargetVolumes().orElseThrow());
    }

    @Test
    void zeroBottlesAreRefused() {
        assertThrows(InvalidInput.class, () -> day(plan(2.4, "sucrose")));
        InvalidInput none = assertThrows(InvalidInput.class, () -> day(plan(2.4, "sucrose", stock("pet-500", 0))));
        assertEquals("bottles", none.where());
    }

    @Test
    void aPlanThatLeavesNoBeerForBottlesIsRefused() {
        FillingPlan filling = plan(2.4, "sucrose", LONGNECKS).withShares(new FillingPlan.Shares(20, 2, 18));
        assertEquals(
                "shares", assertThrows(InvalidInput.class, () -> day(filling)).where());
    }

    @Test
    void sugarOrBottlesOfUnknownKindAreRefused() {
        assertEquals(
                "sugar",
                assertThrows(InvalidInput.class, () -> day(plan(2.4, "stardust", LONGNECKS)))
                        .where());
        assertEquals(
                "bottles[0].bottle",
                assertThrows(InvalidInput.class, () -> day(plan(2.4, "sucrose", stock("amphora", 3))))
                        .where());
    }

    @Test
    void aGravityOfTomorrowIsRefused() {
        FillingPlan filling =
                plan(2.4, "sucrose", LONGNECKS).withGravities(List.of(new DatedGravity(Days.TODAY.plusDays(1), 1.010)));
        assertEquals(
                "gravities[0].day",
                assertThrows(InvalidInput.class, () -> day(filling)).where());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.979, 1.201, Double.NaN})
    void aGravityThatNoBeerHasIsRefused(double gravity) {
        assertThrows(InvalidInput.class, () -> new DatedGravity(Days.TODAY, gravity));
    }

    @Test
    void clearGlassAndABitterBeerAskForABox() {
        BottlingDay clear = day(plan(2.4, "sucrose", new BottleStock("longneck-330", GlassColour.FLINT, false, 60)));
        assertTrue(clear.notes().stream().anyMatch(note -> note.key().equals("bottling.note.light")));
        assertTrue(day(plan(2.4, "sucrose", LONGNECKS)).notes().stream()
                .noneMatch(note -> note.key().equals("bottling.note.light")));
    }
}
