package undercroft.quantity;

import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/** A temperature; degrees Celsius inside. Not a temperature difference. */
public record Temperature(double celsius) implements Comparable<Temperature> {
    private static final double ZERO_CELSIUS_IN_KELVIN = 273.15;
    private static final Map<String, DoubleUnaryOperator> UNITS = Map.of(
            "c", c -> c,
            "f", f -> (f - 32) / 1.8,
            "k", k -> k - ZERO_CELSIUS_IN_KELVIN);

    public Temperature {
        Check.within("", celsius, -ZERO_CELSIUS_IN_KELVIN, 1000, "°C");
    }

    public static Temperature ofCelsius(double celsius) {
        return new Temperature(celsius);
    }

    public static Temperature ofFahrenheit(double fahrenheit) {
        return new Temperature((fahrenheit - 32) / 1.8);
    }

    public static Temperature ofKelvin(double kelvin) {
        return new Temperature(kelvin - ZERO_CELSIUS_IN_KELVIN);
    }

    /** Reads {@code 20C}, {@code 20,5 °C}, {@code 68F} or {@code 293K}. */
    public static Temperature parse(String text) {
        return new Temperature(QuantityText.parse(text, "temperature", UNITS));
    }

    public double fahrenheit() {
        return celsius * 1.8 + 32;
    }

    public double kelvin() {
        return celsius + ZERO_CELSIUS_IN_KELVIN;
    }

    /** For a person, with unit: {@code 17.2 °C} or {@code 63 °F}. */
    public String text(UnitSystem units) {
        return units == UnitSystem.US
                ? QuantityText.fixed(fahrenheit(), 0) + " °F"
                : QuantityText.fixed(celsius, 1) + " °C";
    }

    @Override
    public int compareTo(Temperature other) {
        return Double.compare(celsius, other.celsius);
    }
}
