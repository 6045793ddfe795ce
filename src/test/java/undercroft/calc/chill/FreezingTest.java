package undercroft.calc.chill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FreezingTest {
    /** Cryoscopy, 1.858 K kg/mol (textbook constant): ethanol, extract of 400 g/mol, 0.03 mol/kg of salts, 5 g/kg of CO2. */
    @ParameterizedTest
    @CsvSource({"2.8, 9", "4.0, 12", "5.6, 16.5", "7.9, 23"})
    void theFormulaAgreesWithCryoscopy(double alcohol, double plato) {
        double realExtract = plato - 2.0665 * alcohol / (1 + 1.0665 * plato / 100);
        double water = (100 - alcohol - realExtract) / 100;
        double molality = (alcohol * 10 / 46.07 + realExtract * 10 / 400 + 0.03 + 5 / 44.0) / water;
        assertEquals(-1.858 * molality, Freezing.pointCelsius(alcohol, plato), 0.35);
    }

    @Test
    void extractLowersTheFreezingPoint() {
        assertEquals(-2.36, Freezing.pointCelsius(4, 12), 1e-9);
        assertTrue(Freezing.pointCelsius(4, 16) < Freezing.pointCelsius(4, 12));
    }

    /** Regression: 3.5, 4.5 and 5.6 % at −4, −5 and −7 °C for a beer that freezes at −2.3 °C. */
    @ParameterizedTest
    @CsvSource({"-4, 0.035", "-5, 0.045", "-7, 0.056"})
    void freezingBeerSwellsBeyondItsHeadspace(double celsius, double swelling) {
        assertEquals(swelling, Freezing.swelling(celsius, -2.3, Freezing.USUAL_WATER_SHARE), 6e-4);
    }

    /** Densities at 0 °C: ice 916.7, water 999.84 kg/m³ (IAPWS; from memory). */
    @Test
    void iceNeedsNinePercentMoreRoom() {
        assertEquals(999.84 / 916.7 - 1, Freezing.ICE_SWELLING, 3e-4);
    }

    @Test
    void aFourPercentHeadspaceIsFullBelowMinusFour() {
        double celsius = Freezing.burstingCelsius(-2.3, 0.92, 0.04).orElseThrow();
        assertEquals(-4.5, celsius, 0.15);
        assertEquals(0.04, Freezing.swelling(celsius, -2.3, 0.92), 1e-12);
        assertTrue(Freezing.burstingCelsius(-2.3, 0.92, 0.09).isEmpty());
        assertEquals(-2.3, Freezing.burstingCelsius(-2.3, 0.92, 0).orElseThrow());
    }

    @Test
    void thereIsNoIceAboveTheFreezingPoint() {
        assertEquals(0, Freezing.iceShare(-2.3, -2.3));
        assertEquals(0, Freezing.iceShare(5, -2.3));
        assertThrows(IllegalArgumentException.class, () -> Freezing.iceShare(-5, 0));
        assertThrows(IllegalArgumentException.class, () -> Freezing.iceShare(Double.NaN, -2));
        assertThrows(IllegalArgumentException.class, () -> Freezing.pointCelsius(30, 12));
    }
}
