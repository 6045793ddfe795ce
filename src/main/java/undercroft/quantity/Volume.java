package undercroft.quantity;

import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/** A volume of liquid; litres inside. */
public record Volume(double litres) implements Comparable<Volume> {
    private static final double LITRES_PER_US_GALLON = 3.785411784;
    private static final double LITRES_PER_US_FLUID_OUNCE = LITRES_PER_US_GALLON / 128;
    private static final Map<String, DoubleUnaryOperator> UNITS = Map.of(
            "l", l -> l,
            "ml", m -> m / 1000,
            "cl", c -> c / 100,
            "gal", g -> g * LITRES_PER_US_GALLON,
            "floz", o -> o * LITRES_PER_US_FLUID_OUNCE,
            "fl oz", o -> o * LITRES_PER_US_FLUID_OUNCE);

    public Volume {
        Check.within("", litres, 0, 100_000, "L");
    }

    public static Volume ofLitres(double litres) {
        return new Volume(litres);
    }

    public static Volume ofMillilitres(double millilitres) {
        return new Volume(millilitres / 1000);
    }

    public static Volume ofUsGallons(double gallons) {
        return new Volume(gallons * LITRES_PER_US_GALLON);
    }

    public static Volume ofUsFluidOunces(double fluidOunces) {
        return new Volume(fluidOunces * LITRES_PER_US_FLUID_OUNCE);
    }

    /** Reads {@code 19L}, {@code 330mL}, {@code 5gal} (US) or {@code 12floz} (US). */
    public static Volume parse(String text) {
        return new Volume(QuantityText.parse(text, "volume", UNITS));
    }

    public double millilitres() {
        return litres * 1000;
    }

    public double usGallons() {
        return litres / LITRES_PER_US_GALLON;
    }

    public double usFluidOunces() {
        return litres / LITRES_PER_US_FLUID_OUNCE;
    }

    /** For a person, with unit: litres from one litre up, else millilitres; US gallons or fluid ounces. */
    public String text(UnitSystem units) {
        if (units == UnitSystem.US) {
            return usGallons() >= 1
                    ? QuantityText.fixed(usGallons(), 2) + " gal"
                    : QuantityText.fixed(usFluidOunces(), 1) + " fl oz";
        }
        return litres >= 1 ? QuantityText.fixed(litres, 1) + " L" : QuantityText.fixed(millilitres(), 0) + " mL";
    }

    @Override
    public int compareTo(Volume other) {
        return Double.compare(litres, other.litres);
    }
}
