package undercroft.quantity;

import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/** A mass; grams inside. */
public record Mass(double grams) implements Comparable<Mass> {
    private static final double GRAMS_PER_OUNCE = 28.349523125;
    private static final Map<String, DoubleUnaryOperator> UNITS = Map.of(
            "g", g -> g,
            "kg", k -> k * 1000,
            "oz", o -> o * GRAMS_PER_OUNCE,
            "lb", p -> p * GRAMS_PER_OUNCE * 16);

    public Mass {
        Check.within("", grams, 0, 1e7, "g");
    }

    public static Mass ofGrams(double grams) {
        return new Mass(grams);
    }

    public static Mass ofOunces(double ounces) {
        return new Mass(ounces * GRAMS_PER_OUNCE);
    }

    /** Reads {@code 120g}, {@code 4oz}, {@code 1.5kg} or {@code 1lb}. */
    public static Mass parse(String text) {
        return new Mass(QuantityText.parse(text, "mass", UNITS));
    }

    public double ounces() {
        return grams / GRAMS_PER_OUNCE;
    }

    /** For a person, with unit: {@code 118 g} or {@code 4.2 oz}. */
    public String text(UnitSystem units) {
        if (units == UnitSystem.US) {
            return QuantityText.fixed(ounces(), 1) + " oz";
        }
        return QuantityText.fixed(grams, grams < 10 ? 1 : 0) + " g";
    }

    @Override
    public int compareTo(Mass other) {
        return Double.compare(grams, other.grams);
    }
}
