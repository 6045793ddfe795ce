package undercroft.calc.gas;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import undercroft.quantity.InvalidInput;

class WaterAndAirTest {
    /** CRC Handbook, standard density of water, ITS-90 (from memory). Kell's scale and fit differ by up to 0.006 kg/m³. */
    @ParameterizedTest
    @CsvSource({"0, 999.8426", "4, 999.9750", "10, 999.7026", "20, 998.2071", "30, 995.6502", "40, 992.2158"})
    void waterIsAsDenseAsTheHandbookSays(double celsius, double kilograms) {
        assertEquals(kilograms, WaterDensity.kilogramsPerCubicMetre(celsius), 0.006);
    }

    @Test
    void waterIsDensestNearFourDegrees() {
        double most = WaterDensity.kilogramsPerCubicMetre(3.98);
        assertTrue(most > WaterDensity.kilogramsPerCubicMetre(3.5));
        assertTrue(most > WaterDensity.kilogramsPerCubicMetre(4.5));
    }

    /** Kell 1975, table: 50.88, 45.89 and 44.24 (× 1e-6 per bar) at 0, 20 and 40 °C (from memory, as IAPWS-95). */
    @ParameterizedTest
    @CsvSource({"0, 50.88e-6", "20, 45.89e-6", "40, 44.24e-6"})
    void waterYieldsAsTheTableSays(double celsius, double perBar) {
        assertEquals(perBar, WaterDensity.compressibilityPerBar(celsius), 0.02e-6);
    }

    /** Steam tables: 0.6112 kPa at 0, 2.3392 at 20, 7.3849 at 40, 19.946 at 60 °C (Wagner and Pruß 2002; from memory). */
    @ParameterizedTest
    @CsvSource({"0, 0.6112", "20, 2.3392", "40, 7.3849", "60, 19.946"})
    void waterVapourFollowsTheSteamTables(double celsius, double kilopascals) {
        assertEquals(1, WaterVapour.saturationBar(celsius) * 100 / kilopascals, 5e-4);
    }

    /** Buck 1981/1996 formula, an independent fit, also over supercooled water: within 0.1 %. */
    @ParameterizedTest
    @CsvSource({"-5", "-2", "5", "15", "25", "35", "45"})
    void anotherVapourFormulaAgrees(double t) {
        double buck = 6.1121e-3 * Math.exp((18.678 - t / 234.5) * t / (257.14 + t));
        assertEquals(1, WaterVapour.saturationBar(t) / buck, 1.5e-3);
    }

    /** International alcohol tables, 20 °C: 10 % by weight 981.87 kg/m³; 5 % by volume is 3.98 % by weight (from memory). */
    @Test
    void alcoholThinsWater() {
        assertEquals(981.87, BeerDensity.kilogramsPerCubicMetre(20, 10), 0.05);
        assertEquals(3.98, BeerDensity.alcoholByWeightPercent(5), 0.01);
        assertEquals(0, BeerDensity.alcoholByWeightPercent(0));
    }

    /** Expansion of 4 % by weight from OIML R 22: 95, 215, 318, 399 (× 1e-6 per K) at 10, 20, 30, 39 °C. */
    @ParameterizedTest
    @CsvSource({"10, 95e-6", "20, 215e-6", "30, 318e-6", "39, 399e-6"})
    void beerExpandsMoreThanWater(double celsius, double perKelvin) {
        double slope = BeerDensity.kilogramsPerCubicMetre(celsius - 0.5, 4)
                - BeerDensity.kilogramsPerCubicMetre(celsius + 0.5, 4);
        assertEquals(perKelvin, slope / BeerDensity.kilogramsPerCubicMetre(celsius, 4), 2e-6);
    }

    /** Beyond the 40 °C of OIML R 22 the continued formula must stay smooth: the expansion keeps rising, and gently. */
    @Test
    void beerKeepsExpandingSmoothlyWhenHot() {
        double before = Double.POSITIVE_INFINITY;
        for (int celsius = 6; celsius <= 60; celsius++) {
            double now = BeerDensity.kilogramsPerCubicMetre(celsius, 8);
            assertTrue(now < before, "at " + celsius);
            before = now;
        }
        double at60 = BeerDensity.kilogramsPerCubicMetre(59, 4) / BeerDensity.kilogramsPerCubicMetre(60, 4) - 1;
        assertEquals(540e-6, at60, 40e-6);
    }

    /** ISO 2533 standard atmosphere: 954.6 hPa at 500 m, 898.8 at 1000, 845.6 at 1500, 795.0 at 2000 (from memory). */
    @ParameterizedTest
    @CsvSource({"0, 1.01325", "500, 0.9546", "1000, 0.8988", "1500, 0.8456", "2000, 0.7950"})
    void airThinsWithHeight(double metres, double bar) {
        assertEquals(bar, Atmosphere.barAt(metres), 1e-4);
        assertThrows(InvalidInput.class, () -> Atmosphere.barAt(9000));
    }

    /** Sander 2015: N2 6.4e-4 and O2 1.3e-3 mol/(L bar) at 25 °C; handbook O2 at 0 °C 2.2e-3 (14.6 mg/L in air, from memory). */
    @Test
    void airDissolvesAsTheCompilationSays() {
        assertEquals(6.4e-4, DissolvedAir.nitrogenMolesPerLitreBar(25), 1e-9);
        assertEquals(1.3e-3, DissolvedAir.oxygenMolesPerLitreBar(25), 1e-9);
        assertEquals(14.6, DissolvedAir.oxygenMolesPerLitreBar(0) * 0.2095 * 1.007 * 31998, 1.2);
    }

    @Test
    void refusesTemperaturesItWasNotMadeFor() {
        assertThrows(IllegalArgumentException.class, () -> WaterVapour.saturationBar(61));
        assertThrows(IllegalArgumentException.class, () -> WaterDensity.kilogramsPerCubicMetre(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> WaterDensity.compressibilityPerBar(-5.1));
        assertThrows(IllegalArgumentException.class, () -> BeerDensity.kilogramsPerCubicMetre(20, 26));
        assertThrows(IllegalArgumentException.class, () -> DissolvedAir.oxygenMolesPerLitreBar(99));
    }
}
