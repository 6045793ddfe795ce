package undercroft.calc.priming;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import undercroft.calc.priming.UnfinishedFermentation.Verdict;
import undercroft.quantity.Gravity;
import undercroft.quantity.InvalidInput;
import undercroft.wording.English;

/** The rule of two equal readings two days apart: common practice, no source. */
class UnfinishedFermentationTest {
    private static final LocalDate TODAY = LocalDate.of(2026, 11, 20);

    /** By hand: 2 points × 1.0 g/L ÷ 1.9768 = 1.01 vol; the ends 0.98 and 1.09. */
    @Test
    void twoPointsFromFinishedWaitsWithAboutOneVolumeAtStake() {
        UnfinishedFermentation found = assess(1.010, reading(3, 1.012), reading(0, 1.012));
        assertEquals(Verdict.WAIT, found.verdict());
        assertEquals(2, found.points(), 1e-9);
        assertEquals(1.01, found.extraVolumes().median(), 0.005);
        assertEquals(0.98, found.extraVolumes().low(), 0.005);
        assertEquals(1.09, found.extraVolumes().high(), 0.005);
        assertEquals(
                "The last reading stands 2 points above the expected final gravity; fermented in the bottle they add about 1 vol.",
                English.of(found.reason()));
    }

    @Test
    void twoEqualReadingsTwoDaysApartAtTheExpectedEndIsGo() {
        UnfinishedFermentation found = assess(1.010, reading(2, 1.010), reading(0, 1.010));
        assertEquals(Verdict.GO, found.verdict());
        assertEquals(0, found.extraVolumes().high());
    }

    @Test
    void withinOnePointOfTheExpectedEndIsGoButTheGasIsTold() {
        UnfinishedFermentation found = assess(1.010, reading(4, 1.011), reading(0, 1.011));
        assertEquals(Verdict.GO, found.verdict());
        assertEquals(0.5, found.extraVolumes().median(), 0.01);
    }

    @Test
    void belowTheExpectedEndIsNoNegativeGas() {
        UnfinishedFermentation found = assess(1.010, reading(4, 1.007), reading(0, 1.007));
        assertEquals(Verdict.GO, found.verdict());
        assertEquals(0, found.points());
    }

    @Test
    void equalReadingsOnlyADayApartAreNotEnough() {
        assertEquals(
                Verdict.UNKNOWN,
                assess(1.010, reading(1, 1.010), reading(0, 1.010)).verdict());
    }

    @Test
    void aThirdReadingTwoDaysBackCounts() {
        assertEquals(
                Verdict.GO,
                assess(1.010, reading(0, 1.010), reading(3, 1.010), reading(1, 1.010))
                        .verdict());
    }

    @Test
    void gravityThatStillFellWaits() {
        UnfinishedFermentation found = assess(1.010, reading(2, 1.012), reading(0, 1.010));
        assertEquals(Verdict.WAIT, found.verdict());
        assertTrue(English.of(found.reason()).contains("2 points"));
    }

    @Test
    void anOldHighReadingDoesNotSpoilTwoNewEqualOnes() {
        assertEquals(
                Verdict.GO,
                assess(1.010, reading(20, 1.050), reading(3, 1.010), reading(0, 1.010))
                        .verdict());
    }

    @Test
    void readingsThatRiseAreNotBelieved() {
        assertEquals(
                Verdict.UNKNOWN,
                assess(1.012, reading(3, 1.008), reading(0, 1.011)).verdict());
    }

    @Test
    void oneReadingOrNoneIsUnknown() {
        assertEquals(Verdict.UNKNOWN, assess(1.010).verdict());
        assertEquals(Verdict.UNKNOWN, assess(1.010, reading(0, 1.010)).verdict());
    }

    @Test
    void oneReadingFarAboveTheEndIsEnoughToWait() {
        assertEquals(Verdict.WAIT, assess(1.010, reading(0, 1.016)).verdict());
    }

    @Test
    void withoutAnExpectedEndAStuckBeerLooksFinished() {
        UnfinishedFermentation found =
                UnfinishedFermentation.assess(List.of(reading(3, 1.018), reading(0, 1.018)), Optional.empty(), TODAY);
        assertEquals(Verdict.UNKNOWN, found.verdict());
        assertEquals("fermentation.no-end", found.reason().key());
    }

    @Test
    void aReadingFromTheFutureIsRefused() {
        InvalidInput fault = assertThrows(InvalidInput.class, () -> assess(1.010, reading(-1, 1.010)));
        assertEquals("readings", fault.where());
    }

    /** Ten points of dextrins opened by a diastatic yeast: 10 g/L, five volumes (one point is half a volume). */
    @Test
    void tenPointsOfDextrinsAreFiveVolumes() {
        assertEquals(10, UnfinishedFermentation.gramsPerLitre(10).median(), 1e-12);
        assertEquals(10.8, UnfinishedFermentation.gramsPerLitre(10).high(), 1e-12);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, 61, Double.NaN})
    void anImpossiblePoolOfDextrinsIsRefused(double points) {
        assertThrows(InvalidInput.class, () -> UnfinishedFermentation.gramsPerLitre(points));
    }

    /** An unfermented strong wort is told to wait rather than refused. */
    @Test
    void aVeryHighGravityStillGivesAnAnswer() {
        UnfinishedFermentation found = assess(1.010, reading(0, 1.120));
        assertEquals(Verdict.WAIT, found.verdict());
        assertEquals(110, found.extraGramsPerLitre().median(), 1e-6);
    }

    private static UnfinishedFermentation assess(double expectedFinal, GravityReading... readings) {
        return UnfinishedFermentation.assess(
                new ArrayList<>(List.of(readings)), Optional.of(Gravity.ofSpecific(expectedFinal)), TODAY);
    }

    private static GravityReading reading(int daysAgo, double specific) {
        return new GravityReading(TODAY.minusDays(daysAgo), Gravity.ofSpecific(specific));
    }
}
