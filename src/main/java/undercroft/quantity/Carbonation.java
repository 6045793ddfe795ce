package undercroft.quantity;

import java.util.Map;
import java.util.function.DoubleUnaryOperator;

/**
 * Carbon dioxide in beer; grams per litre inside. One <em>volume</em> is a litre of the gas at 0 °C and 1 atm in a litre
 * of beer: 1.9768 g/L for the real gas (44.0095 g/mol over 22.263 L/mol; Span and Wagner 1996, computed).
 */
public record Carbonation(double gramsPerLitre) implements Comparable<Carbonation> {
    /** Mass of one volume of the real gas, g/L. */
    public static final double GRAMS_PER_LITRE_OF_ONE_VOLUME = 1.9768;

    private static final Map<String, DoubleUnaryOperator> UNITS = Map.of(
            "vol", v -> v * GRAMS_PER_LITRE_OF_ONE_VOLUME,
            "vols", v -> v * GRAMS_PER_LITRE_OF_ONE_VOLUME,
            "volumes", v -> v * GRAMS_PER_LITRE_OF_ONE_VOLUME,
            "g/l", g -> g);

    public Carbonation {
        Check.within("", gramsPerLitre, 0, 100, "g/L");
    }

    public static Carbonation ofVolumes(double volumes) {
        return new Carbonation(volumes * GRAMS_PER_LITRE_OF_ONE_VOLUME);
    }

    public static Carbonation ofGramsPerLitre(double gramsPerLitre) {
        return new Carbonation(gramsPerLitre);
    }

    /** Reads {@code 2.4vol} or {@code 4.7g/L}. */
    public static Carbonation parse(String text) {
        return new Carbonation(QuantityText.parse(text, "carbonation", UNITS));
    }

    public double volumes() {
        return gramsPerLitre / GRAMS_PER_LITRE_OF_ONE_VOLUME;
    }

    /** For a person: {@code 2.4 vol}; the trade uses volumes with both unit systems. */
    public String text() {
        return QuantityText.fixed(volumes(), 1) + " vol";
    }

    @Override
    public int compareTo(Carbonation other) {
        return Double.compare(gramsPerLitre, other.gramsPerLitre);
    }
}
