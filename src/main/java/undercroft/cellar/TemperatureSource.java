package undercroft.cellar;

import java.time.MonthDay;
import undercroft.quantity.Check;

/** Where a place's temperature comes from. */
public sealed interface TemperatureSource {
    /** A file of logged temperatures, kept in the cellar folder under the place's id. */
    record Logged() implements TemperatureSource {}

    /** No data: a guess with its standard deviation, K. */
    record FixedGuess(double celsius, double spreadKelvin) implements TemperatureSource {
        public FixedGuess {
            Check.within("celsius", celsius, -20, 60, "°C");
            Check.within("spreadKelvin", spreadKelvin, 0, 20, "K");
        }
    }

    /** No data: a yearly swing about a mean, warmest on a day of the year, with a standard deviation, K. */
    record YearlySwing(double meanCelsius, double amplitudeKelvin, MonthDay warmestDay, double spreadKelvin)
            implements TemperatureSource {
        public YearlySwing {
            Check.within("meanCelsius", meanCelsius, -20, 60, "°C");
            Check.within("amplitudeKelvin", amplitudeKelvin, 0, 30, "K");
            Check.within("spreadKelvin", spreadKelvin, 0, 20, "K");
        }
    }
}
