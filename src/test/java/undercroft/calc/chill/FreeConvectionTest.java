package undercroft.calc.chill;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FreeConvectionTest {
    /**
     * Incropera and DeWitt, Fundamentals of Heat and Mass Transfer, table A.4 (air), from memory. Its density at
     * 300 K, 1.161 kg/m³, is 1.3 % below that of air at 101,325 Pa, hence the wider bounds of what is divided by it.
     */
    @ParameterizedTest
    @CsvSource({"250, 11.44e-6, 22.3e-3, 15.9e-6, 0.720", "300, 15.89e-6, 26.3e-3, 22.5e-6, 0.707"})
    void airHasTheHandbooksProperties(
            double kelvin, double viscosity, double conductivity, double diffusivity, double prandtl) {
        Air air = Air.at(kelvin - 273.15);
        assertEquals(viscosity, air.viscosity(), 0.015 * viscosity);
        assertEquals(conductivity, air.conductivity(), 0.01 * conductivity);
        assertEquals(diffusivity, air.diffusivity(), 0.02 * diffusivity);
        assertEquals(prandtl, air.prandtl(), 0.01 * prandtl);
    }

    /**
     * Incropera and DeWitt, the free-convection problem of a beverage can 150 mm by 60 mm at 27 °C in a refrigerator of
     * 4 °C (statement from memory, worked out by hand): upright Ra = 8.7e6, 4.83 W/(m²·K); lying Ra = 5.6e5, 5.21.
     */
    @Test
    void aCanCoolsALittleFasterLyingThanStanding() {
        Air film = Air.at((27 + 4) / 2.0);
        assertEquals(8.7e6, film.rayleigh(0.15, 23), 0.02 * 8.7e6);
        assertEquals(5.6e5, film.rayleigh(0.06, 23), 0.02 * 5.6e5);
        assertEquals(4.83, FreeConvection.upright(0.15, 27, 4), 0.03);
        assertEquals(5.21, FreeConvection.lying(0.06, 27, 4), 0.03);
    }

    @Test
    void stillAirWithoutADifferenceOnlyConducts() {
        double conduction = 0.68 * Air.at(20).conductivity() / 0.2;
        assertEquals(conduction, FreeConvection.upright(0.2, 20, 20), 1e-12);
    }
}
