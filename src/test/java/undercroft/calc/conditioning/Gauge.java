package undercroft.calc.conditioning;

/**
 * A plain gauge for tests: Henry's law with the constant of a published fit for beer-like solutions (2.56 g/L bar at 6 °C,
 * 1.64 at 20 °C), a headspace of 4 % and air that partly dissolves.
 */
final class Gauge {
    static final PressureModel WITH_AIR = (celsius, grams, factor, amount, trapped) ->
            carbonDioxide(celsius, grams, factor) + amount * (0.65 + 0.35 * trapped) - 1;

    /** The same gauge in the mind of someone who forgets that air was capped in. */
    static final PressureModel WITHOUT_AIR =
            (celsius, grams, factor, amount, trapped) -> carbonDioxide(celsius, grams, factor) - 1;

    private Gauge() {}

    private static double carbonDioxide(double celsius, double grams, double factor) {
        double perBar = 10 * Math.exp(-10.73797 + 2617.25 / (celsius + 273.15)) * factor;
        return grams / (perBar + 0.04 * 1.81);
    }
}
