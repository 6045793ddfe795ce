package undercroft.picture;

import java.util.Locale;
import undercroft.plot.ValueAxis;
import undercroft.quantity.Pressure;
import undercroft.quantity.Temperature;
import undercroft.quantity.UnitSystem;
import undercroft.series.Band;
import undercroft.series.TimeSeries;

/** Trajectories in bar and °C brought into the units a picture shows. */
record PictureUnits(UnitSystem units) {
    private static final double LEAST_BAR = 2;
    private static final double LEAST_KELVIN = 8;

    boolean isUs() {
        return units == UnitSystem.US;
    }

    String pressureUnit() {
        return isUs() ? "psi" : "bar";
    }

    int pressureDecimals() {
        return isUs() ? 0 : 2;
    }

    String temperatureUnit() {
        return isUs() ? "°F" : "°C";
    }

    double pressure(double bar) {
        return isUs() ? Pressure.ofBar(bar).psi() : bar;
    }

    double temperature(double celsius) {
        return isUs() ? Temperature.ofCelsius(celsius).fahrenheit() : celsius;
    }

    Band pressure(Band bar) {
        return isUs() ? bar.mapRising(this::pressure) : bar;
    }

    Band temperature(Band celsius) {
        return isUs() ? celsius.mapRising(this::temperature) : celsius;
    }

    TimeSeries temperature(TimeSeries celsius) {
        return isUs() ? celsius.map(this::temperature) : celsius;
    }

    /** An axis of gauge pressure from zero. */
    ValueAxis pressureAxis() {
        return ValueAxis.auto(pressureUnit(), pressureDecimals()).from(0).withSmallestSpan(pressure(LEAST_BAR));
    }

    /** An axis of temperature on which a quiet week looks quiet. */
    ValueAxis temperatureAxis() {
        return ValueAxis.auto(temperatureUnit(), 1).withSmallestSpan(isUs() ? 1.8 * LEAST_KELVIN : LEAST_KELVIN);
    }

    static String number(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
