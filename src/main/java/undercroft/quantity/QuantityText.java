package undercroft.quantity;

import java.util.Locale;
import java.util.Map;
import java.util.TreeSet;
import java.util.function.DoubleUnaryOperator;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Splits typed text such as {@code 5 gal} or {@code 20,5 °C} into a number and a unit. */
public final class QuantityText {
    private static final Pattern SHAPE =
            Pattern.compile("([+-]?(?:\\d+(?:[.,]\\d*)?|[.,]\\d+))\\s*([^\\d\\s.,+-][^\\d]*)?");

    private QuantityText() {}

    /**
     * Reads {@code text} with one of the units.
     *
     * @param kind names the sentence that says how to write one
     * @param units each a way to the unit held inside; keys are lower case
     */
    public static double parse(String text, String kind, Map<String, DoubleUnaryOperator> units) {
        Phrase like = Phrase.of("quantity.like." + kind);
        String shown = text == null ? "" : text.strip();
        if (shown.isEmpty()) {
            throw new InvalidInput("", "quantity.fault.nothing", like);
        }
        Matcher matcher = SHAPE.matcher(shown.replace('\u2212', '-'));
        if (!matcher.matches()) {
            throw new InvalidInput("", "quantity.fault.unread", shown, like);
        }
        String unit = matcher.group(2) == null
                ? ""
                : matcher.group(2).strip().replace("°", "").toLowerCase(Locale.ROOT);
        DoubleUnaryOperator into = units.get(unit);
        if (into == null) {
            String known = String.join(", ", new TreeSet<>(units.keySet()));
            throw unit.isEmpty()
                    ? new InvalidInput("", "quantity.fault.no-unit", shown, like)
                    : new InvalidInput("", "quantity.fault.unit", unit, known, like);
        }
        return into.applyAsDouble(Double.parseDouble(matcher.group(1).replace(',', '.')));
    }

    /** The value with the given number of decimals, a point as decimal mark, and never a minus zero. */
    static String fixed(double value, int decimals) {
        String text = String.format(Locale.ROOT, "%." + decimals + "f", value);
        return text.matches("-0(\\.0*)?") ? text.substring(1) : text;
    }
}
