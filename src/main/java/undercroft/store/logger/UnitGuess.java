package undercroft.store.logger;

import java.util.regex.Pattern;

/** Guesses the unit: from what the file says, or else from the size of the figures. */
record UnitGuess(LoggerUnit unit, Confidence confidence) {
    private static final Pattern CELSIUS =
            Pattern.compile("(?i)[°º]\\s*c\\b|\\bdeg\\.?\\s*c\\b|celsius|centigrade|[(\\[]c[)\\]]|[_\\s,/]c$");
    private static final Pattern FAHRENHEIT =
            Pattern.compile("(?i)[°º]\\s*f\\b|\\bdeg\\.?\\s*f\\b|fahrenheit|[(\\[]f[)\\]]|[_\\s,/]f$");
    private static final Pattern KELVIN = Pattern.compile("(?i)kelvin|[(\\[]k[)\\]]|[_\\s,/]k$");

    /** No cellar is that hot in °C: half of a year's values above it are another unit, or must be looked at. */
    private static final double HOT = 45;

    private static final double WARM = 30;
    private static final double ABSOLUTE = 200;

    /**
     * @param said the column's name with an example cell; may be empty
     * @param median of the column as written
     */
    static UnitGuess of(String said, double median) {
        boolean celsius = CELSIUS.matcher(said).find();
        boolean fahrenheit = FAHRENHEIT.matcher(said).find();
        boolean kelvin = KELVIN.matcher(said).find();
        if (celsius && !fahrenheit && !kelvin) {
            return median > HOT ? bySize(median) : new UnitGuess(LoggerUnit.CELSIUS, Confidence.STATED);
        }
        if (fahrenheit && !celsius && !kelvin) {
            return new UnitGuess(LoggerUnit.FAHRENHEIT, median > ABSOLUTE ? Confidence.ASK : Confidence.STATED);
        }
        if (kelvin && !celsius && !fahrenheit) {
            return new UnitGuess(LoggerUnit.KELVIN, median > ABSOLUTE ? Confidence.STATED : Confidence.ASK);
        }
        return bySize(median);
    }

    private static UnitGuess bySize(double median) {
        if (median > ABSOLUTE) {
            return new UnitGuess(LoggerUnit.KELVIN, Confidence.ASK);
        }
        if (median > HOT) {
            return new UnitGuess(LoggerUnit.FAHRENHEIT, Confidence.ASK);
        }
        return new UnitGuess(LoggerUnit.CELSIUS, median > WARM ? Confidence.ASK : Confidence.LIKELY);
    }
}
