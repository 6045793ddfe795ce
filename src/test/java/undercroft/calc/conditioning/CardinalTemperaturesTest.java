package undercroft.calc.conditioning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import undercroft.catalogue.YeastStrain;
import undercroft.quantity.InvalidInput;

class CardinalTemperaturesTest {
    /** Defining properties of the model: Rosso, Lobry and Flandrois 1993, J. Theor. Biol. 162:447, conditions on p. 449. */
    @Test
    void isNothingAtBothEndsAndOneAtTheOptimumWhereItIsFlat() {
        CardinalTemperatures yeast = new CardinalTemperatures(5.04, 30, 45.48);
        assertEquals(0, yeast.share(5.04));
        assertEquals(0, yeast.share(45.48));
        assertEquals(0, yeast.share(-10));
        assertEquals(0, yeast.share(60));
        assertEquals(1, yeast.share(30), 1e-15);
        assertEquals(0, (yeast.share(30.001) - yeast.share(29.999)) / 0.002, 1e-5);
        assertEquals(0, (yeast.share(5.05) - yeast.share(5.04)) / 0.01, 1e-4);
    }

    /**
     * Cardinal temperatures of S. cerevisiae PE35M as published by Salvadó et al. 2011, Appl. Environ. Microbiol. 77:2292
     * (read second-hand); the shares are computed from Rosso's equation by an independent script.
     */
    @ParameterizedTest
    @CsvSource({
        "8, 0.0517194734258286", "12, 0.23341032803323297", "16, 0.4691911316577962", "20, 0.6999925649221195",
        "24, 0.8829295704295705", "28, 0.9861138232817549", "35, 0.9051272173736035", "40, 0.6011368056267837"
    })
    void followsAPublishedStrain(double celsius, double share) {
        assertEquals(share, new CardinalTemperatures(5.04, 30, 45.48).share(celsius), 1e-13);
    }

    /** Computed from Rosso's equation by an independent script. */
    @ParameterizedTest
    @CsvSource({
        "3.9, 0", "4.5, 0.000682666051305719", "8, 0.042139917695473254", "12, 0.16031490427625694",
        "15.5, 0.3137375938029533", "21, 0.6107218329440551", "35, 0.8597244587582752", "39.9, 0.02930245776777432"
    })
    void followsAleYeast(double celsius, double share) {
        assertEquals(share, of(YeastStrain.ALE).share(celsius), 1e-13);
    }

    /**
     * Glucose uptake maxima of a lager yeast, 1/h, at 4, 8, 12, 16 °C: Gee and Ramirez 1994, J. Inst. Brew. 100:321 (read
     * second-hand). The strain's minimum was fitted to them, so this holds the fit, not the model.
     */
    @Test
    void lagerYeastSlowsInTheColdAsMeasured() {
        double[] celsius = {4, 8, 12, 16};
        double[] perHour = {0.0048, 0.013, 0.015, 0.0302};
        double sumOfLogs = 0;
        double[] logs = new double[4];
        for (int i = 0; i < 4; i++) {
            logs[i] = Math.log(of(YeastStrain.LAGER).share(celsius[i]) / perHour[i]);
            sumOfLogs += logs[i];
        }
        double squares = 0;
        for (double log : logs) {
            squares += Math.pow(log - sumOfLogs / 4, 2);
        }
        assertTrue(Math.sqrt(squares / 4) < 0.20, "root mean square of the log ratios: " + Math.sqrt(squares / 4));
        double fridge = of(YeastStrain.LAGER).share(4) / of(YeastStrain.LAGER).share(16);
        assertEquals(0.0048 / 0.0302, fridge, 0.05);
    }

    @Test
    void refusesTemperaturesOutOfOrderAndAnOptimumBelowTheMiddle() {
        assertThrows(InvalidInput.class, () -> new CardinalTemperatures(10, 5, 40));
        assertThrows(InvalidInput.class, () -> new CardinalTemperatures(0, 15, 40));
        assertThrows(InvalidInput.class, () -> new CardinalTemperatures(Double.NaN, 15, 40));
    }

    private static CardinalTemperatures of(YeastStrain strain) {
        return new CardinalTemperatures(strain.minimumCelsius(), strain.optimumCelsius(), strain.maximumCelsius());
    }
}
