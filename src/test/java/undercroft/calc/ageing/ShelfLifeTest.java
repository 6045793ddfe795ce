package undercroft.calc.ageing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import undercroft.catalogue.BeerStyle;
import undercroft.catalogue.FillingMethod;
import undercroft.quantity.Interval;
import undercroft.series.Track;

class ShelfLifeTest {
    private static final long DAY = 86400;
    private static final FillingMethod FOAM = FillingMethod.FOAM_CAPPED;

    private static Track constant(double celsius, int days) {
        return Track.constant(0, 3600, days * 24 + 1, celsius);
    }

    /** exp[(Ea/R)(1/293.15 − 1/T)] worked out here with another program. */
    @ParameterizedTest
    @CsvSource({
        "3.3, 0.23, 0.1273696564741872, 0.065",
        "12, 0.50, 0.38403355390859734, 0.28",
        "25, 1.51, 1.77, 2.13",
        "30, 2.25, 3.080988887489405, 4.43",
        "35, 3.3, 5.261881561359547, 9.0"
    })
    void agesAtTheRateTheActivationEnergiesGive(double celsius, double at60, double at83, double at110) {
        Interval rate = ShelfLife.rateAt(celsius);
        assertEquals(at83, rate.median(), 0.004 * at83);
        assertEquals(Math.min(at60, at110), rate.low(), 0.02 * rate.low());
        assertEquals(Math.max(at60, at110), rate.high(), 0.02 * rate.high());
    }

    /**
     * The trade's rule of thumb: 3 days at 90 °F, 30 at 72 °F and 300 at 38 °F are alike (general press). Its legs imply
     * 83 and 173 kJ/mol, so the median here must follow the cold leg and not the hot one.
     */
    @Test
    void theRuleOfThreeThirtyAndThreeHundredIsNotOneLaw() {
        double hot = (90 - 32) / 1.8;
        double room = (72 - 32) / 1.8;
        double cold = (38 - 32) / 1.8;
        assertEquals(83, impliedKilojoules(room, cold), 0.5);
        assertEquals(173, impliedKilojoules(hot, room), 0.5);
        double coldLeg =
                ShelfLife.rateAt(room).median() / ShelfLife.rateAt(cold).median();
        assertEquals(10, coldLeg, 0.3);
        assertTrue(ShelfLife.rateAt(hot).median() / ShelfLife.rateAt(room).median() < 4);
    }

    private static double impliedKilojoules(double warm, double cool) {
        return Arrhenius.GAS_CONSTANT * Math.log(10) / (1 / (cool + 273.15) - 1 / (warm + 273.15));
    }

    /**
     * Li et al. 2012, MBAA conference abstract: staling 14.2, 30.0 and 59.1 times faster at 40, 50 and 60 °C. The steps
     * between them must lie within the range of activation energies taken here.
     */
    @Test
    void measuredStalingRatiosLieWithinTheBand() {
        assertWithin(30.0 / 14.2, ratio(50, 40, 60), ratio(50, 40, 110));
        assertWithin(59.1 / 14.2, ratio(60, 40, 60), ratio(60, 40, 110));
    }

    /**
     * Ferreira et al. 2022, LWT 154:112688, formation at 37 against 4 °C: furans about 140 times as fast, aldehydes 90, esters
     * 20, which by Arrhenius' law is 107, 97 and 65 kJ/mol. Li et al. 2012 (MBAA abstract), tasted staling at 60 °C 59.1 times
     * as fast as in a room, taken for 20 °C: 83 kJ/mol.
     */
    @ParameterizedTest
    @CsvSource({"37, 4, 140, 107", "37, 4, 90, 97", "37, 4, 20, 65", "60, 20, 59.1, 83"})
    void publishedRatiosLieWithinTheActivationEnergies(double warm, double cool, double factor, double kilojoules) {
        double implied = Arrhenius.GAS_CONSTANT * Math.log(factor) / (1 / (cool + 273.15) - 1 / (warm + 273.15));
        assertEquals(kilojoules, implied, 1.0);
        assertWithin(factor, ratio((int) warm, (int) cool, 60), ratio((int) warm, (int) cool, 110));
    }

    /** Q10, 15 to 25 °C: 2.3 to 4.7 by the range of energies, 3.2 in the middle; worked by hand here. */
    @Test
    void tenKelvinMakeItTwoToFiveTimesAsFast() {
        Interval warm = ShelfLife.rateAt(25);
        Interval cool = ShelfLife.rateAt(15);
        assertEquals(3.2, warm.median() / cool.median(), 0.05);
        assertEquals(2.3, warm.low() / cool.high(), 0.05);
        assertEquals(4.7, warm.high() / cool.low(), 0.1);
    }

    private static double ratio(double warm, double cool, double kilojoules) {
        return Arrhenius.factor(kilojoules / Arrhenius.GAS_CONSTANT, cool, warm);
    }

    private static void assertWithin(double value, double low, double high) {
        assertTrue(value > low && value < high, low + " < " + value + " < " + high);
    }

    @Test
    void aDayAtTwentyDegreesIsADay() {
        Interval used = ShelfLife.daysUsed(constant(20, 50), 10 * DAY, 17 * DAY, FOAM);
        assertEquals(7, used.low(), 1e-9);
        assertEquals(7, used.high(), 1e-9);
        assertEquals(
                8.4,
                ShelfLife.daysUsed(constant(20, 50), 10 * DAY, 17 * DAY, FillingMethod.CAREFUL)
                        .median(),
                1e-9);
    }

    @Test
    void onlyWhatTheTrackCoversCounts() {
        Track track = constant(20, 10);
        assertEquals(10, ShelfLife.daysUsed(track, -5 * DAY, 50 * DAY, FOAM).median(), 1e-9);
        assertEquals(0, ShelfLife.daysUsed(track, 20 * DAY, 50 * DAY, FOAM).median());
        assertEquals(0, ShelfLife.daysUsed(track, 5 * DAY, 4 * DAY, FOAM).median());
    }

    @Property(tries = 100, seed = "20260104")
    void daysAddUpOverStretches(
            @ForAll @IntRange(min = 0, max = 900_000) int cut, @ForAll @DoubleRange(min = 0, max = 15) double swing) {
        double[] celsius = new double[300];
        for (int i = 0; i < celsius.length; i++) {
            celsius[i] = 15 + swing * Math.sin(i / 5.0);
        }
        Track track = Track.of(0, 3600, celsius, new double[300]);
        double whole = ShelfLife.daysUsed(track, 0, 1_000_000, FOAM).median();
        double parts = ShelfLife.daysUsed(track, 0, cut, FOAM).median()
                + ShelfLife.daysUsed(track, cut, 1_000_000, FOAM).median();
        assertEquals(whole, parts, 1e-9 * whole);
    }

    @Test
    void aWarmWeekCostsDaysAndAColdOneGainsSome() {
        Interval warm = ShelfLife.spellCost(constant(30, 30), 7 * DAY, 14 * DAY, 18, FOAM);
        // 7 (3.081 − 0.791) days, computed by hand from the median's rates at 30 and 18 °C.
        assertEquals(7 * (3.080988887489405 - 0.7911), warm.median(), 0.01);
        assertTrue(warm.low() > 0 && warm.low() < warm.median() && warm.median() < warm.high());
        assertTrue(ShelfLife.spellCost(constant(5, 30), 7 * DAY, 14 * DAY, 18, FOAM)
                        .high()
                < 0);
        assertEquals(
                0,
                ShelfLife.spellCost(constant(18, 30), 7 * DAY, 14 * DAY, 18, FOAM)
                        .high(),
                1e-9);
    }

    @Test
    void atTwentyDegreesTheBudgetEndsOnItsDay() {
        BestBefore date = ShelfLife.bestBefore(constant(20, 400), 0, Interval.of(60, 75, 90), FOAM);
        assertEquals(60, date.epochSeconds().low() / DAY, 1e-6);
        assertEquals(75, date.epochSeconds().median() / DAY, 1e-6);
        assertEquals(90, date.epochSeconds().high() / DAY, 1e-6);
        assertFalse(date.beyondTrack());
    }

    @Test
    void pastTheTrackItsLastYearGoesOn() {
        BestBefore date = ShelfLife.bestBefore(constant(20, 30), 0, Interval.of(60, 75, 90), FOAM);
        assertEquals(75, date.epochSeconds().median() / DAY, 1e-6);
        assertTrue(date.beyondTrack());
        double[] celsius = new double[731];
        for (int i = 0; i < celsius.length; i++) {
            celsius[i] = i < 365 ? 30 : 12;
        }
        Track track = Track.of(0, 86400, celsius, new double[731]);
        double used = ShelfLife.daysUsed(track, 0, 730 * DAY, FOAM).median();
        double more = ShelfLife.rateAt(12).median() * 100;
        Interval budget = Interval.exactly(used + more);
        assertEquals(
                830, ShelfLife.bestBefore(track, 0, budget, FOAM).epochSeconds().median() / DAY, 0.3);
    }

    @Test
    void warmerBeerIsPastItsBestSoonerAndEnergyWidensTheDate() {
        Interval budget = ShelfLife.keepingBudget(BeerStyle.PALE_ALE);
        BestBefore cool = ShelfLife.bestBefore(constant(12, 900), 0, budget, FOAM);
        BestBefore warm = ShelfLife.bestBefore(constant(25, 900), 0, budget, FOAM);
        assertTrue(warm.epochSeconds().high() < cool.epochSeconds().low());
        assertTrue(cool.epochSeconds().high() / DAY > 180 / 0.384);
        assertEquals(150 / 0.38403355390859734, cool.epochSeconds().median() / DAY, 0.01);
    }

    @Test
    void anEndlessBudgetNeverEnds() {
        double forever = Double.POSITIVE_INFINITY;
        BestBefore date = ShelfLife.bestBefore(constant(20, 30), 0, Interval.of(100, forever, forever), FOAM);
        assertEquals(100, date.epochSeconds().low() / DAY, 1e-6);
        assertEquals(forever, date.epochSeconds().median());
        assertTrue(date.beyondTrack());
        assertThrows(
                IllegalArgumentException.class,
                () -> ShelfLife.bestBefore(constant(20, 30), 0, Interval.exactly(0), FOAM));
    }
}
