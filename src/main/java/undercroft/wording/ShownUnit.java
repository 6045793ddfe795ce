package undercroft.wording;

import java.util.function.DoubleUnaryOperator;
import undercroft.quantity.Mass;
import undercroft.quantity.Pressure;
import undercroft.quantity.Temperature;
import undercroft.quantity.UnitSystem;
import undercroft.quantity.Volume;

/** A unit: the key of its pattern, the decimals it is shown with, and the way to it from the unit kept inside. */
record ShownUnit(String key, int decimals, DoubleUnaryOperator from) {
    static final ShownUnit CELSIUS = new ShownUnit("quantity.celsius", 1, DoubleUnaryOperator.identity());
    static final ShownUnit WHOLE_CELSIUS = new ShownUnit("quantity.celsius", 0, DoubleUnaryOperator.identity());
    static final ShownUnit FAHRENHEIT = new ShownUnit(
            "quantity.fahrenheit", 0, celsius -> Temperature.ofCelsius(celsius).fahrenheit());
    static final ShownUnit KELVIN = new ShownUnit("quantity.celsius", 1, DoubleUnaryOperator.identity());
    static final ShownUnit FAHRENHEIT_STEP = new ShownUnit("quantity.fahrenheit", 0, kelvin -> kelvin * 1.8);
    static final ShownUnit BAR = new ShownUnit("quantity.bar", 1, DoubleUnaryOperator.identity());
    static final ShownUnit PSI =
            new ShownUnit("quantity.psi", 0, bar -> Pressure.ofBar(bar).psi());
    static final ShownUnit VOLUMES = new ShownUnit("quantity.volumes", 1, DoubleUnaryOperator.identity());
    static final ShownUnit FINE_VOLUMES = new ShownUnit("quantity.volumes", 2, DoubleUnaryOperator.identity());
    static final ShownUnit LITRES = new ShownUnit("quantity.litres", 1, DoubleUnaryOperator.identity());
    static final ShownUnit MILLILITRES = new ShownUnit("quantity.millilitres", 0, litres -> litres * 1000);
    static final ShownUnit GALLONS = new ShownUnit(
            "quantity.gallons", 2, litres -> Volume.ofLitres(litres).usGallons());
    static final ShownUnit FLUID_OUNCES = new ShownUnit(
            "quantity.fluid-ounces", 1, litres -> Volume.ofLitres(litres).usFluidOunces());
    static final ShownUnit GRAMS = new ShownUnit("quantity.grams", 0, DoubleUnaryOperator.identity());
    static final ShownUnit TENTHS_OF_GRAMS = new ShownUnit("quantity.grams", 1, DoubleUnaryOperator.identity());
    static final ShownUnit OUNCES =
            new ShownUnit("quantity.ounces", 1, grams -> Mass.ofGrams(grams).ounces());
    static final ShownUnit GRAMS_A_LITRE = new ShownUnit("quantity.grams-a-litre", 2, DoubleUnaryOperator.identity());
    static final ShownUnit OUNCES_A_GALLON = new ShownUnit(
            "quantity.ounces-a-gallon",
            2,
            gramsPerLitre ->
                    Mass.ofGrams(gramsPerLitre).ounces() * Volume.ofUsGallons(1).litres());

    static ShownUnit pressure(UnitSystem units) {
        return units == UnitSystem.US ? PSI : BAR;
    }

    static ShownUnit temperature(UnitSystem units) {
        return units == UnitSystem.US ? FAHRENHEIT : CELSIUS;
    }

    /** Where a tenth would only be noise. */
    static ShownUnit wholeTemperature(UnitSystem units) {
        return units == UnitSystem.US ? FAHRENHEIT : WHOLE_CELSIUS;
    }
}
