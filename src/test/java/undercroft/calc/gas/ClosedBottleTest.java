package undercroft.calc.gas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import undercroft.quantity.InvalidInput;

class ClosedBottleTest {
    private static final double VOLUME = 1.9768;
    private static final double ABV = 5.02;
    private static final ClosedBottle NORMAL = ClosedBottle.of(520, 500, ABV, 20, 1.01325, 1.6583);
    private static final ClosedBottle OVERFILLED = ClosedBottle.of(340, 337.96, ABV, 4, 1.01325, 2.27);

    /** Sci. Rep. 2017 (s41598-017-10702-6), table 1: champagne, 4.7, 5.8 and 7.5 bar of CO2 at 6, 12 and 20 °C; ratios. */
    @Test
    void champagneWarmsAsPublished() {
        // 775 mL brimful, 750 mL, no air, 12.5 % ABV, 11.5 g/L in all.
        ClosedBottle bottle = ClosedBottle.of(775, 750, 12.5, 12, 1.01325);
        double at6 = bottle.at(6, 11.5, 0.9, 0, 0).carbonDioxideBar();
        double at12 = bottle.at(12, 11.5, 0.9, 0, 0).carbonDioxideBar();
        double at20 = bottle.at(20, 11.5, 0.9, 0, 0).carbonDioxideBar();
        assertEquals(1, at20 / at6 / (7.5 / 4.7), 0.01);
        assertEquals(1, at20 / at12 / (7.5 / 5.8), 0.01);
    }

    /**
     * The same equations worked out here with another program, unpublished (water and ethanol by OIML R 22, the two gases of
     * air lumped together there): guards the arithmetic, not nature; normal bottle, 4.5453 g/L in all, beer factor 0.90, air trapped; within 0.5 % of gauge.
     */
    @ParameterizedTest
    @CsvSource({
        "4, 1.7181, 1.6606, 19.7548, 4.4138",
        "10, 2.1201, 2.0896, 19.7058, 4.3855",
        "15, 2.4892, 2.4918, 19.4843, 4.3604",
        "20, 2.8867, 2.9326, 19.1140, 4.3349",
        "25, 3.3097, 3.4102, 18.6060, 4.3099",
        "30, 3.7547, 3.9230, 17.9691, 4.2863",
        "35, 4.2182, 4.4699, 17.2109, 4.2649",
        "40, 4.6963, 5.0506, 16.3385, 4.2464"
    })
    void aNormalBottleMatchesTheWorkedExample(
            double celsius, double dioxide, double gauge, double headspace, double dissolved) {
        matches(NORMAL.at(celsius, 4.5453, 0.90, 1, 1), dioxide, gauge, headspace, dissolved);
    }

    /** Regression, same origin: six points of gravity unfermented, 10.5453 g/L, beer factor 0.95, air dissolving. */
    @ParameterizedTest
    @CsvSource({
        "4, 3.8364, 3.4471, 17.6320, 10.2354",
        "20, 6.5051, 6.2375, 17.0803, 10.0688",
        "35, 9.5837, 9.4952, 15.2664, 9.9187",
        "40, 10.6967, 10.6900, 14.4226, 9.8795"
    })
    void anUnfinishedBeerMatchesTheWorkedExample(
            double celsius, double dioxide, double gauge, double headspace, double dissolved) {
        matches(NORMAL.at(celsius, 10.5453, 0.95, 1, 0), dioxide, gauge, headspace, dissolved);
    }

    /** Regression, same origin: a purged headspace. */
    @Test
    void aPurgedBottleMatchesTheWorkedExample() {
        assertEquals(1.7487, NORMAL.at(20, 4.5453, 0.95, 0, 0).gaugeBar(), 5e-4);
        assertEquals(3.0462, NORMAL.at(35, 4.5453, 0.95, 0, 0).gaugeBar(), 5e-4);
    }

    /** Regression, same origin: 340 mL bottle filled at 4 °C with 0.6 % headspace, 2.5 volumes. */
    @ParameterizedTest
    @CsvSource({
        "4, 1.8147, 1.0171, 1.2663, 4.9175",
        "15, 2.6587, 1.9135, 1.0697, 4.9105",
        "25, 3.5758, 2.9081, 0.4617, 4.9070",
        "30, 4.0812, 3.4708, 0.0236, 4.9082"
    })
    void anOverfilledBottleMatchesTheWorkedExample(
            double celsius, double dioxide, double gauge, double headspace, double dissolved) {
        matches(OVERFILLED.at(celsius, 2.5 * VOLUME, 0.95, 1, 0), dioxide, gauge, headspace, dissolved);
    }

    /** Regression, same origin: liquid-full at 35 and 40 °C; tender to the swelling by CO2, hence 2 %. */
    @Test
    void anOverfilledBottleIsLiquidFullWhenWarm() {
        BottleState at35 = OVERFILLED.at(35, 2.5 * VOLUME, 0.95, 1, 0);
        BottleState at40 = OVERFILLED.at(40, 2.5 * VOLUME, 0.95, 1, 0);
        assertTrue(at35.liquidFull() && at40.liquidFull());
        assertEquals(0, at35.headspaceMillilitres(), 1e-9);
        assertEquals(22.3614, at35.gaugeBar(), 0.4);
        assertEquals(45.0421, at40.gaugeBar(), 0.6);
        assertEquals(30.5, OVERFILLED.liquidFullCelsius(2.5 * VOLUME, 0.95, 1).orElseThrow(), 0.5);
    }

    /** The slope of a liquid-full bottle is expansion less that of glass, over the two compressibilities. */
    @Test
    void aLiquidFullBottleRisesByThreeBarPerKelvin() {
        double expansion =
                1e6 * (BeerDensity.kilogramsPerCubicMetre(36, 4) / BeerDensity.kilogramsPerCubicMetre(37, 4) - 1);
        double slope = OVERFILLED.at(37, 2.5 * VOLUME, 0.95, 1, 0).gaugeBar()
                - OVERFILLED.at(36, 2.5 * VOLUME, 0.95, 1, 0).gaugeBar();
        assertEquals((expansion - 27) / (44.3 + 35), slope, 0.15);
    }

    /** Regression, same origin: 0.3 % headspace at 4 °C is liquid-full by 17 °C, 1 % just survives 40 °C, 2 % is uncritical. */
    @Test
    void onlyLittleHeadspaceIsDangerousHydraulically() {
        assertEquals(
                17,
                withHeadspace(0.003).liquidFullCelsius(2.5 * VOLUME, 0.95, 1).orElseThrow(),
                1.5);
        assertFalse(withHeadspace(0.01).at(40, 2.5 * VOLUME, 0.95, 1, 0).liquidFull());
        assertTrue(withHeadspace(0.02).liquidFullCelsius(2.5 * VOLUME, 0.95, 1).orElse(60) > 50);
    }

    /** Regression, same origin, rows of a table: 500 mL with 20 mL headspace capped at 20 °C; air dissolving, and kept in a beer that holds less. */
    @ParameterizedTest
    @CsvSource({
        "2.0, 20, 2.06, 2.54", "2.5, 5, 1.42, 1.89", "2.5, 20, 2.67, 3.20", "2.5, 35, 4.21, 4.86",
        "2.5, 40, 4.78, 5.48", "3.0, 30, 4.48, 5.13", "4.0, 25, 5.30, 6.01", "5.0, 40, 9.97, 11.04"
    })
    void theTableOfPressuresIsReproduced(double volumes, double celsius, double best, double safety) {
        ClosedBottle bottle = ClosedBottle.of(520, 500, ABV, 20, 1.01325);
        double grams = volumes * VOLUME;
        assertEquals(best, bottle.at(celsius, grams, 0.95, 1, 0).gaugeBar(), 0.025);
        assertEquals(safety, bottle.at(celsius, grams, 0.90, 1, 1).gaugeBar(), 0.025);
    }

    /** Boyle and Gay-Lussac, by hand: dry air capped at 1 atm and warmed, no CO2, nothing dissolving. */
    @Test
    void trappedAirFollowsTheGasLaw() {
        ClosedBottle bottle = ClosedBottle.of(1000, 500, 0, 20, 1.01325, 0);
        BottleState state = bottle.at(40, 0, 1, 1, 1);
        double emptyAt20 = 500;
        double dryAt20 = 1.01325 - 0.985 * 0.023392;
        double expected = dryAt20 * emptyAt20 / state.headspaceMillilitres() * 313.15 / 293.15;
        assertEquals(expected, state.airBar(), 1e-4);
        assertEquals(0, state.carbonDioxideBar());
        assertEquals(0, bottle.at(20, 0, 1, 1, 1).gaugeBar(), 1e-5);
    }

    @Test
    void thePartialPressuresAddUpUnlessLiquidFull() {
        BottleState state = NORMAL.at(25, 5, 0.95, 0.9, 0.4);
        assertEquals(
                state.gaugeBar() + 1.01325, state.carbonDioxideBar() + state.airBar() + state.waterVapourBar(), 1e-10);
    }

    @Test
    void airWithoutItsOxygenPressesLessAndTrappedAirMore() {
        double air = NORMAL.at(20, 5, 0.95, 1, 0).gaugeBar();
        assertTrue(NORMAL.at(20, 5, 0.95, 0.79, 0).gaugeBar() < air);
        assertTrue(NORMAL.at(20, 5, 0.95, 1, 0.5).gaugeBar() > air);
        assertTrue(NORMAL.at(20, 5, 0.95, 1, 1).gaugeBar()
                > NORMAL.at(20, 5, 0.95, 1, 0.5).gaugeBar());
    }

    @Test
    void refusesBottlesThatCannotBe() {
        assertThrows(InvalidInput.class, () -> ClosedBottle.of(500, 500, 5, 20, 1.013));
        assertThrows(InvalidInput.class, () -> ClosedBottle.of(500, 520, 5, 20, 1.013));
        assertThrows(InvalidInput.class, () -> ClosedBottle.of(500, 499.99, 5, 4, 1.013), "cold glass is smaller");
        assertThrows(InvalidInput.class, () -> ClosedBottle.of(520, 500, 50, 20, 1.013));
        assertThrows(InvalidInput.class, () -> ClosedBottle.of(520, 500, 5, 90, 1.013));
        assertThrows(InvalidInput.class, () -> ClosedBottle.of(520, 500, 5, 20, 101.3));
        assertThrows(InvalidInput.class, () -> ClosedBottle.of(520, Double.NaN, 5, 20, 1.013));
        assertThrows(InvalidInput.class, () -> ClosedBottle.of(520, 500, 5, 20, 1.013, -1));
    }

    @ParameterizedTest
    @CsvSource({
        "-6, 5, 0.95, 1, 0",
        "61, 5, 0.95, 1, 0",
        "20, 24, 0.95, 1, 0",
        "20, -1, 0.95, 1, 0",
        "20, 5, 0.3, 1, 0",
        "20, 5, 0.95, 1.1, 0",
        "20, 5, 0.95, 1, -0.1",
        "NaN, 5, 0.95, 1, 0",
        "20, NaN, 0.95, 1, 0"
    })
    void refusesStatesOutsideTheModel(double celsius, double grams, double factor, double air, double trapped) {
        assertThrows(IllegalArgumentException.class, () -> NORMAL.at(celsius, grams, factor, air, trapped));
        assertThrows(IllegalArgumentException.class, () -> NORMAL.gaugeBar(celsius, grams, factor, air, trapped, 2));
    }

    private static ClosedBottle withHeadspace(double share) {
        return ClosedBottle.of(340, 340 * (1 - share), ABV, 4, 1.01325, 2.27);
    }

    private static void matches(BottleState state, double dioxide, double gauge, double headspace, double dissolved) {
        assertEquals(dioxide, state.carbonDioxideBar(), 0.005 * dioxide);
        assertEquals(gauge, state.gaugeBar(), 0.005 * gauge);
        assertEquals(headspace, state.headspaceMillilitres(), 0.005 * headspace + 0.01);
        assertEquals(dissolved, state.dissolvedGramsPerLitre(), 0.001 * dissolved);
    }
}
