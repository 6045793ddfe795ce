package undercroft.app.form;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import undercroft.quantity.UnitSystem;
import undercroft.wording.Messages;

/** Conversions: NIST Special Publication 811 (2008), appendix B.8: gallon 3.785 412 L, psi 6.894 757 kPa, ounce 28.349 52 g. */
class NumberFieldTest {
    private static NumberField field(Measure measure, UnitSystem units) {
        return new NumberField(Messages.english(), "id", "Name", measure, units, -1e6, 1e6);
    }

    @ParameterizedTest
    @CsvSource({
        "BEER, METRIC, 19, 19",
        "BEER, US, 5, 18.92706",
        "BEER, METRIC, 5 gal, 18.92706",
        "BEER, US, 19 L, 19",
        "TEMPERATURE, US, 68, 20",
        "TEMPERATURE, US, '20,5 °C', 20.5",
        "TEMPERATURE, METRIC, −1.5, -1.5",
        "TEMPERATURE_STEP, US, 3.6, 2",
        "TEMPERATURE_STEP, METRIC, 3.6 F, 2",
        "PRESSURE, US, 35, 2.413165",
        "PRESSURE, METRIC, 240 kPa, 2.4",
        "WEIGHT, US, 4, 113.39808",
        "BOTTLE, METRIC, 0.33 L, 330",
        "BOTTLE, US, 12, 354.88236",
        "ALTITUDE, US, 1000, 304.8",
        "HOURS, METRIC, 30 min, 0.5"
    })
    void aNumberWithoutUnitHasTheOneInTheLabel(Measure measure, UnitSystem units, String typed, double kept) {
        NumberField field = field(measure, units);
        field.textProperty().set(typed);

        assertEquals(kept, field.figure(), Math.abs(kept) * 1e-6 + 1e-9);
    }

    @Test
    void aFigureLeftAsItIsShownIsKeptExactly() {
        NumberField field = field(Measure.PRESSURE, UnitSystem.US).starting(2.345678);

        assertEquals("34.02", field.textProperty().get());
        assertEquals(2.345678, field.figure());
        field.textProperty().set("34.03");
        assertEquals(2.34629, field.figure(), 1e-4);
    }

    @Test
    void theLabelCarriesTheUnit() {
        assertEquals("Name (°F)", field(Measure.TEMPERATURE, UnitSystem.US).label());
        assertEquals("Name", field(Measure.GRAVITY, UnitSystem.US).label());
    }
}
