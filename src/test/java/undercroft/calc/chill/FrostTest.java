package undercroft.calc.chill;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import undercroft.catalogue.BottleClass;
import undercroft.catalogue.BottleType;
import undercroft.catalogue.Bottles;
import undercroft.catalogue.Closure;
import undercroft.catalogue.GlassColour;
import undercroft.catalogue.Listed;

class FrostTest {
    /**
     * Water and ethanol alone, % by weight and °C: Melinder 2010, Properties of Secondary Working Fluids for Indirect Systems
     * (IIR), as the open fluid library CoolProp 7 gives it (ethyl alcohol and water, freezing curve).
     */
    private static final double[][] ETHANOL_FREEZES = {
        {2, -0.83}, {3, -1.22}, {4, -1.62}, {5, -2.03}, {6, -2.46}, {8, -3.37}, {10, -4.38}, {15, -7.39}
    };

    /** Extract, salts and gas add some tenths of a kelvin to what the alcohol does; a beer of 5 % ABV holds 4 % by weight. */
    @Test
    void beerFreezesALittleBelowWaterWithAsMuchAlcohol() {
        for (double[] row : ETHANOL_FREEZES) {
            if (row[0] <= 8) {
                double plato = 100 * (2.0665 * row[0] + 3.9) / (100 + 1.0665 * row[0]);
                double lower = row[1] - Freezing.pointCelsius(row[0], plato);
                assertTrue(lower > 0.3 && lower < 1.3, row[0] + " %: lower by " + lower);
            }
        }
    }

    /**
     * What has not frozen is as strong as the solution that freezes there: from 4 to 10 % at −4.38 °C, from 8 to 15 % at
     * −7.39 °C, from 2 to 4 % at −1.62 °C, so all alcohol sits in 40, 53 and 50 % of the mass; the rest is ice.
     */
    @ParameterizedTest
    @CsvSource({"4, -1.62, 10, -4.38", "8, -3.37, 15, -7.39", "2, -0.83, 4, -1.62"})
    void theShareOfIceAgreesWithTheFreezingCurve(double weak, double weakPoint, double strong, double celsius) {
        double ice = (1 - weak / strong) / (1 - weak / 100);
        assertEquals(ice, Freezing.iceShare(celsius, weakPoint), 0.05);
    }

    /** 5 % ABV and 40 g/L: about −2.3 °C; with 4 % headspace the ice fits until about −4.5 °C. Worked by hand here. */
    @Test
    void anOrdinaryBeerFreezesAtMinusTwoPointThreeAndMayBurstBelowMinusFourPointFive() {
        Frost frost = Frost.of(bottle(500, 520), 5, 40);
        assertEquals(-2.3, frost.freezingCelsius(), 0.1);
        assertEquals(-4.5, frost.burstingCelsius().orElseThrow(), 0.2);
        assertEquals(Frost.State.NONE, frost.at(-2));
        assertEquals(Frost.State.FREEZING, frost.at(-3));
        assertEquals(Frost.State.MAY_HAVE_BURST, frost.at(-18));
    }

    @Test
    void strongBeerFreezesLaterAndAFullBottleBurstsSooner() {
        assertTrue(Frost.of(bottle(500, 520), 10, 60).freezingCelsius() < -4);
        double usual = Frost.of(bottle(500, 520), 5, 40).burstingCelsius().orElseThrow();
        double full = Frost.of(bottle(510, 520), 5, 40).burstingCelsius().orElseThrow();
        assertTrue(full > usual && full < -2.3);
        assertTrue(Frost.of(bottle(450, 520), 5, 40).burstingCelsius().isEmpty());
    }

    @Test
    void everyListedBottleMayBurstInAFreezer() {
        for (BottleType type : Bottles.STANDARD) {
            assertEquals(Frost.State.MAY_HAVE_BURST, Frost.of(type, 5, 40).at(-18), type.id());
        }
    }

    @Test
    void theGraverStateWins() {
        assertEquals(Frost.State.MAY_HAVE_BURST, Frost.State.FREEZING.or(Frost.State.MAY_HAVE_BURST));
        assertEquals(Frost.State.FREEZING, Frost.State.FREEZING.or(Frost.State.NONE));
    }

    @Test
    void refusesBeerThatIsNone() {
        BottleType type = Listed.find(Bottles.STANDARD, "longneck-330", "bottle");
        assertThrows(IllegalArgumentException.class, () -> Frost.of(type, -1, 40));
        assertThrows(IllegalArgumentException.class, () -> Frost.of(type, 5, Double.NaN));
    }

    private static BottleType bottle(double fill, double brimful) {
        return new BottleType(
                "b",
                "b",
                GlassColour.AMBER,
                BottleClass.STANDARD,
                Closure.CROWN,
                fill,
                brimful,
                2.5,
                300,
                70,
                OptionalDouble.empty());
    }
}
