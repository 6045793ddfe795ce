package undercroft.quantity;

import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/** Density of wort or beer against water at 20 °C (specific gravity). */
public record Gravity(double specific) implements Comparable<Gravity> {
    private static final Map<String, DoubleUnaryOperator> UNITS = Map.of(
            "",
            Gravity::points,
            "sg",
            Gravity::points,
            "p",
            Gravity::specificFromPlato,
            "plato",
            Gravity::specificFromPlato);

    public Gravity {
        Check.within("", specific, 0.980, 1.200, "");
    }

    public static Gravity ofSpecific(double specific) {
        return new Gravity(specific);
    }

    public static Gravity ofPlato(double plato) {
        return new Gravity(specificFromPlato(plato));
    }

    /** A figure in the hundreds is one in thousandths: 1012 is 1.012. */
    private static double points(double typed) {
        return typed >= 900 && typed <= 1300 ? typed / 1000 : typed;
    }

    /** Reads {@code 1.012}, {@code 1012} or {@code 3P}. */
    public static Gravity parse(String text) {
        return new Gravity(QuantityText.parse(text, "gravity", UNITS));
    }

    /**
     * Degrees Plato, g of extract in 100 g, from the cubic fitted to the ASBC extract table: −616.868 + 1111.14 s −
     * 630.272 s² + 135.997 s³ (coefficients from memory; the tests compare it with published table values).
     */
    public double plato() {
        return platoFromSpecific(specific);
    }

    /** Thousandths above 1, as the trade counts them: 1.012 has 12 points. */
    public double points() {
        return (specific - 1) * 1000;
    }

    public String text() {
        return QuantityText.fixed(specific, 3);
    }

    @Override
    public int compareTo(Gravity other) {
        return Double.compare(specific, other.specific);
    }

    private static double platoFromSpecific(double s) {
        return -616.868 + s * (1111.14 + s * (-630.272 + s * 135.997));
    }

    private static double specificFromPlato(double plato) {
        Check.within("", plato, -6, 45, "°P");
        double s = 1 + plato / 258;
        for (int i = 0; i < 20; i++) {
            double slope = 1111.14 + s * (-2 * 630.272 + s * 3 * 135.997);
            s -= (platoFromSpecific(s) - plato) / slope;
        }
        return s;
    }
}
