package undercroft.quantity;

import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/** A pressure; bar inside. Whether it is absolute or above the outside air (gauge) is told by the owner's name. */
public record Pressure(double bar) implements Comparable<Pressure> {
    private static final double BAR_PER_PSI = 0.0689475729316836;
    private static final double BAR_PER_ATMOSPHERE = 1.01325;
    private static final Map<String, DoubleUnaryOperator> UNITS = Map.of(
            "bar", b -> b,
            "psi", p -> p * BAR_PER_PSI,
            "kpa", k -> k / 100,
            "mpa", m -> m * 10,
            "atm", a -> a * BAR_PER_ATMOSPHERE);

    public Pressure {
        Check.within("", bar, -1.1, 10_000, "bar");
    }

    public static Pressure ofBar(double bar) {
        return new Pressure(bar);
    }

    public static Pressure ofPsi(double psi) {
        return new Pressure(psi * BAR_PER_PSI);
    }

    public static Pressure ofKilopascals(double kilopascals) {
        return new Pressure(kilopascals / 100);
    }

    /** Reads {@code 2.4bar}, {@code 35psi} or {@code 240kPa}. */
    public static Pressure parse(String text) {
        return new Pressure(QuantityText.parse(text, "pressure", UNITS));
    }

    public double psi() {
        return bar / BAR_PER_PSI;
    }

    public double pascals() {
        return bar * 1e5;
    }

    /** For a person, with unit: {@code 2.4 bar} or {@code 35 psi}. */
    public String text(UnitSystem units) {
        return units == UnitSystem.US ? QuantityText.fixed(psi(), 0) + " psi" : QuantityText.fixed(bar, 1) + " bar";
    }

    @Override
    public int compareTo(Pressure other) {
        return Double.compare(bar, other.bar);
    }
}
