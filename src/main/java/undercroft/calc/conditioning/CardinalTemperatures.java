package undercroft.calc.conditioning;

import undercroft.quantity.Check;
import undercroft.quantity.InvalidInput;

/**
 * The cardinal temperature model with inflection: how fast a microbe works at a temperature, as a share of its best.
 * Three constants, all in °C, each of which can be read off a thermometer. Source: Rosso, Lobry and Flandrois 1993,
 * J. Theor. Biol. 162:447-463.
 *
 * @param minimumCelsius no activity at or below
 * @param optimumCelsius fastest; above the middle of the other two, where the model is defined
 * @param maximumCelsius no activity at or above
 */
public record CardinalTemperatures(double minimumCelsius, double optimumCelsius, double maximumCelsius) {
    public CardinalTemperatures {
        Check.within("minimumCelsius", minimumCelsius, -20, 60, "°C");
        Check.within("optimumCelsius", optimumCelsius, -20, 60, "°C");
        Check.within("maximumCelsius", maximumCelsius, -20, 60, "°C");
        if (!(minimumCelsius < optimumCelsius && optimumCelsius < maximumCelsius)) {
            throw new InvalidInput("", "cellar.fault.optimum");
        }
        if (optimumCelsius <= (minimumCelsius + maximumCelsius) / 2) {
            throw new InvalidInput("", "cellar.fault.optimum-low");
        }
    }

    /** Activity at a temperature in °C as a share of that at the optimum, 0 to 1; 0 outside the two ends. */
    public double share(double celsius) {
        return share(minimumCelsius, optimumCelsius, maximumCelsius, celsius);
    }

    /** The same on bare numbers, for inner loops; the caller answers for their order. */
    static double share(double minimum, double optimum, double maximum, double celsius) {
        if (!(celsius > minimum && celsius < maximum)) {
            return 0;
        }
        double rise = optimum - minimum;
        double above = celsius - minimum;
        double denominator =
                rise * (rise * (celsius - optimum) - (optimum - maximum) * (optimum + minimum - 2 * celsius));
        return (celsius - maximum) * above * above / denominator;
    }
}
