package undercroft.quantity;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.Function;
import javax.measure.Quantity;
import javax.measure.Unit;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tech.units.indriya.quantity.Quantities;
import tech.units.indriya.unit.Units;
import undercroft.wording.English;

final class QuantityTest {
    // Exact by definition: NIST Special Publication 811 (2008), appendix B.8.
    private static final Unit<javax.measure.quantity.Volume> GALLON = Units.LITRE.multiply(3.785411784);
    private static final Unit<javax.measure.quantity.Mass> OUNCE = Units.GRAM.multiply(28.349523125);
    private static final Unit<javax.measure.quantity.Temperature> FAHRENHEIT =
            Units.KELVIN.multiply(5).divide(9).shift(459.67);
    private static final Unit<javax.measure.quantity.Pressure> PSI = Units.PASCAL.multiply(6894.757293168);

    @Property(seed = "20260104")
    void gallonsAgreeWithAReferenceLibrary(@ForAll @DoubleRange(min = 0.01, max = 1000) double gallons) {
        assertEquals(
                reference(gallons, GALLON, Units.LITRE),
                Volume.ofUsGallons(gallons).litres(),
                1e-9 * gallons);
    }

    @Property(seed = "20260104")
    void ouncesAgreeWithAReferenceLibrary(@ForAll @DoubleRange(min = 0.01, max = 1000) double ounces) {
        assertEquals(reference(ounces, OUNCE, Units.GRAM), Mass.ofOunces(ounces).grams(), 1e-9 * ounces * 28);
    }

    @Property(seed = "20260104")
    void fahrenheitAgreesWithAReferenceLibrary(@ForAll @DoubleRange(min = -40, max = 212) double fahrenheit) {
        assertEquals(
                reference(fahrenheit, FAHRENHEIT, Units.CELSIUS),
                Temperature.ofFahrenheit(fahrenheit).celsius(),
                1e-9);
    }

    @Property(seed = "20260104")
    void psiAgreesWithAReferenceLibrary(@ForAll @DoubleRange(min = 0, max = 300) double psi) {
        assertEquals(reference(psi, PSI, Units.PASCAL), Pressure.ofPsi(psi).pascals(), 1e-3);
    }

    @Property(seed = "20260104")
    void everyUnitComesBack(@ForAll @DoubleRange(min = 0.1, max = 500) double value) {
        assertEquals(value, Volume.ofUsGallons(value).usGallons(), 1e-9 * value);
        assertEquals(value, Volume.ofUsFluidOunces(value).usFluidOunces(), 1e-9 * value);
        assertEquals(value, Mass.ofOunces(value).ounces(), 1e-9 * value);
        assertEquals(value, Temperature.ofFahrenheit(value).fahrenheit(), 1e-9 * value);
        assertEquals(value / 10, Carbonation.ofVolumes(value / 10).volumes(), 1e-9 * value);
        assertEquals(value, Pressure.ofPsi(value).psi(), 1e-9 * value);
    }

    @Test
    void oneVolumeIsTheMassOfALitreOfTheRealGas() {
        // 44.0095 g/mol (IUPAC) over 22.263 L/mol at 0 °C and 1 atm (Span and Wagner 1996, computed).
        assertEquals(44.0095 / 22.263, Carbonation.ofVolumes(1).gramsPerLitre(), 2e-4);
    }

    @ParameterizedTest
    // Plato and specific gravity 20/20 °C from published brewing tables (ASBC extract table), from memory, to ±0.02 °P.
    @CsvSource({
        "1.000, 0.00",
        "1.010, 2.56",
        "1.020, 5.08",
        "1.040, 9.99",
        "1.048, 11.91",
        "1.060, 14.74",
        "1.080, 19.33"
    })
    void platoAgreesWithTheExtractTable(double specific, double plato) {
        assertEquals(plato, Gravity.ofSpecific(specific).plato(), 0.03);
        assertEquals(
                specific, Gravity.ofPlato(Gravity.ofSpecific(specific).plato()).specific(), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({"1.012, 1.012", "'1,012', 1.012", "1012, 1.012", "998, 0.998", "1.012 SG, 1.012"})
    void aGravityIsReadInThousandthsToo(String text, double specific) {
        assertEquals(specific, Gravity.parse(text).specific(), 1e-12);
    }

    @Test
    void aGravityIsReadInDegreesPlato() {
        // ASBC extract table, from memory, as above: 9.99 °P is 1.040.
        assertEquals(1.040, Gravity.parse("9.99 °P").specific(), 2e-4);
        assertThrows(InvalidInput.class, () -> Gravity.parse("12"));
    }

    @ParameterizedTest
    @CsvSource({
        "19L, 19",
        "19 L, 19",
        "'19,5 l', 19.5",
        "330mL, 0.33",
        "33cl, 0.33",
        "5gal, 18.92705892",
        ".5L, 0.5",
        "12floz, 0.35488235475",
        "12 fl oz, 0.35488235475"
    })
    void volumesAreReadWithTheirUnit(String text, double litres) {
        assertEquals(litres, Volume.parse(text).litres(), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"20C, 20", "20 °C, 20", "68F, 20", "'20,5°c', 20.5", "293.15K, 20", "-2C, -2", "\u22122 °C, -2"})
    void temperaturesAreReadWithTheirUnit(String text, double celsius) {
        assertEquals(celsius, Temperature.parse(text).celsius(), 1e-9);
    }

    @ParameterizedTest
    @CsvSource({
        "''",
        "19",
        "L",
        "lots",
        "1.5.2L",
        "'1,000.5L'",
        "NaN L",
        "Infinity L",
        "1e3L",
        "19 gallons",
        "--3L",
        "-3L",
        "19L19"
    })
    void whatIsNoVolumeIsRefusedWithASentence(String text) {
        InvalidInput fault = assertThrows(InvalidInput.class, () -> Volume.parse(text));
        String sentence = English.of(fault);
        assertTrue(sentence.length() > 20, sentence);
        assertTrue(sentence.contains("L"), sentence);
    }

    @Test
    void absoluteZeroIsTheColdestThereIs() {
        assertThrows(InvalidInput.class, () -> Temperature.ofCelsius(-300));
        assertThrows(InvalidInput.class, () -> Temperature.ofCelsius(Double.NaN));
        assertEquals(-273.15, Temperature.ofKelvin(0).celsius());
    }

    @ParameterizedTest
    @CsvSource({"0.979", "1.201", "NaN"})
    void impossibleGravitiesAreRefused(double specific) {
        assertThrows(InvalidInput.class, () -> Gravity.ofSpecific(specific));
    }

    @Test
    void quantitiesAreWrittenForAPersonInEitherSystem() {
        assertEquals("17.2 °C", Temperature.ofCelsius(17.24).text(UnitSystem.METRIC));
        assertEquals("63 °F", Temperature.ofCelsius(17.24).text(UnitSystem.US));
        assertEquals("0.0 °C", Temperature.ofCelsius(-0.04).text(UnitSystem.METRIC));
        assertEquals("2.4 bar", Pressure.ofBar(2.4).text(UnitSystem.METRIC));
        assertEquals("35 psi", Pressure.ofBar(2.4).text(UnitSystem.US));
        assertEquals("118 g", Mass.ofGrams(118.2).text(UnitSystem.METRIC));
        assertEquals("4.2 oz", Mass.ofGrams(118.2).text(UnitSystem.US));
        assertEquals("330 mL", Volume.ofLitres(0.33).text(UnitSystem.METRIC));
        assertEquals("5.00 gal", Volume.ofUsGallons(5).text(UnitSystem.US));
    }

    @Test
    void anIntervalOutOfOrderIsNoInterval() {
        assertThrows(IllegalArgumentException.class, () -> Interval.of(2, 1, 3));
        assertThrows(IllegalArgumentException.class, () -> Interval.of(1, Double.NaN, 3));
        assertEquals(Interval.of(2, 4, 6), Interval.of(1, 2, 3).times(2));
    }

    @ParameterizedTest
    @CsvSource({"loft", "stair-cupboard", "loft-2"})
    void slugsAreIds(String id) {
        assertEquals(id, Check.id("id", id));
    }

    @ParameterizedTest
    @CsvSource({"''", "Loft", "a b", "-a", "a--b", "ä"})
    void whatIsNoSlugIsNoId(String id) {
        assertThrows(InvalidInput.class, () -> Check.id("id", id));
    }

    @Test
    void aFaultSeenFromFurtherOutKeepsItsPath() {
        InvalidInput fault =
                new InvalidInput("count", "is -3").within("lots[0]").within("batches[2]");
        assertEquals("batches[2].lots[0].count", fault.where());
        Function<String, InvalidInput> top = outer -> new InvalidInput("", "is empty").within(outer);
        assertEquals("name: is empty", top.apply("name").getMessage());
    }

    private static <Q extends Quantity<Q>> double reference(double value, Unit<Q> from, Unit<Q> into) {
        return Quantities.getQuantity(value, from).to(into).getValue().doubleValue();
    }
}
