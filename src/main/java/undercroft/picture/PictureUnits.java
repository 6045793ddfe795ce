package undercroft.picture;

import java.util.Locale;
import java.util.function.DoubleUnaryOperator;
import undercroft.quantity.Pressure;
import undercroft.quantity.Temperature;
import undercroft.quantity.UnitSystem;
import undercroft.series.Band;
import undercroft.series.TimeSeries;

/** Trajectories in bar and °C brought into the units a picture shows. */
record PictureUnits(UnitSystem units) {
    boolean isUs() {
        return units == UnitSystem.US;
    }

    String pressureUnit() {
        return isUs() ? "psi" : "bar";
    }

    int pressureDecimals() {
        return isUs() ? 0 : 2;
    }

    int limitDecimals() {
        return isUs() ? 0 : 1;
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
        return isUs() ? mapped(bar, this::pressure) : bar;
    }

    Band temperature(Band celsius) {
        return isUs() ? mapped(celsius, this::temperature) : celsius;
    }

    TimeSeries temperature(TimeSeries celsius) {
        if (!isUs()) {
            return celsius;
        }
        TimeSeries.Builder mapped = new TimeSeries.Builder();
        for (int i = 0; i < celsius.size(); i++) {
            mapped.add(celsius.timeAt(i), temperature(celsius.valueAt(i)));
        }
        return mapped.build();
    }

    private static Band mapped(Band band, DoubleUnaryOperator rising) {
        int size = band.size();
        long[] times = new long[size];
        double[][] levels = new double[5][size];
        for (int i = 0; i < size; i++) {
            times[i] = band.timeAt(i);
            levels[0][i] = mapped(band.lowAt(i), rising);
            levels[1][i] = mapped(band.lowerQuartileAt(i), rising);
            levels[2][i] = mapped(band.medianAt(i), rising);
            levels[3][i] = mapped(band.upperQuartileAt(i), rising);
            levels[4][i] = mapped(band.highAt(i), rising);
        }
        return Band.of(times, levels);
    }

    /** What is not known stays not known. */
    private static double mapped(double value, DoubleUnaryOperator rising) {
        return Double.isNaN(value) ? value : rising.applyAsDouble(value);
    }

    static String number(double value, int decimals) {
        return String.format(Locale.ROOT, "%." + decimals + "f", value);
    }
}
