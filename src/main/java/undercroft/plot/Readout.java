package undercroft.plot;

import java.util.Locale;
import java.util.OptionalDouble;
import undercroft.plot.scale.ValueTicks;
import undercroft.series.Band;
import undercroft.series.TimeSeries;

/**
 * What a plot says under the cursor: its topmost band, line or strip that knows a value there.
 *
 * @param text such as {@code 2.35 (2.10–2.50) vol}; an en dash alone where nothing is known
 * @param value median or value, for a dot on the picture
 */
public record Readout(String title, String text, OptionalDouble value) {
    private static final String UNKNOWN = "–";

    static Readout of(Plot plot, long epochSecond, Locale locale) {
        for (int i = plot.layers().size() - 1; i >= 0; i--) {
            double[] found = valuesAt(plot.layers().get(i), epochSecond);
            if (found.length > 0 && !Double.isNaN(found[0])) {
                return new Readout(plot.title(), text(plot.axis(), found, locale), OptionalDouble.of(found[0]));
            }
        }
        return new Readout(plot.title(), UNKNOWN, OptionalDouble.empty());
    }

    private static String text(ValueAxis axis, double[] values, Locale locale) {
        String text = ValueTicks.format(values[0], axis.decimals(), locale);
        if (values.length == 3) {
            String low = ValueTicks.format(values[1], axis.decimals(), locale);
            String high = ValueTicks.format(values[2], axis.decimals(), locale);
            text += " (" + low + "–" + high + ")";
        }
        return axis.unit().isEmpty() ? text : text + "\u00A0" + axis.unit();
    }

    /** Value alone, or median with its 5 and 95 % values; empty for layers that are not read out. */
    private static double[] valuesAt(Layer layer, long epochSecond) {
        if (layer instanceof BandLayer bandLayer) {
            return bandAt(bandLayer.band(), epochSecond);
        }
        if (layer instanceof LineLayer line) {
            return new double[] {lineAt(line.series(), line.longestStepSeconds(), epochSecond)};
        }
        if (layer instanceof StripLayer strip) {
            int i = strip.steps().indexAtOrBefore(epochSecond);
            return i < 0 || epochSecond >= strip.until()
                    ? new double[0]
                    : new double[] {strip.steps().valueAt(i)};
        }
        return new double[0];
    }

    private static double lineAt(TimeSeries series, long longestStepSeconds, long epochSecond) {
        int i = series.indexAtOrBefore(epochSecond);
        if (i < 0) {
            return Double.NaN;
        }
        if (series.timeAt(i) == epochSecond) {
            return series.valueAt(i);
        }
        boolean inGap = i + 1 >= series.size() || series.timeAt(i + 1) - series.timeAt(i) > longestStepSeconds;
        return inGap ? Double.NaN : series.interpolated(epochSecond);
    }

    private static double[] bandAt(Band band, long epochSecond) {
        int i = band.indexAtOrBefore(epochSecond);
        if (i < 0 || (i == band.size() - 1 && band.timeAt(i) != epochSecond)) {
            return new double[0];
        }
        int j = Math.min(i + 1, band.size() - 1);
        double share = i == j ? 0 : (double) (epochSecond - band.timeAt(i)) / (band.timeAt(j) - band.timeAt(i));
        if (share == 0) {
            return new double[] {band.medianAt(i), band.lowAt(i), band.highAt(i)};
        }
        return new double[] {
            band.medianAt(i) + share * (band.medianAt(j) - band.medianAt(i)),
            band.lowAt(i) + share * (band.lowAt(j) - band.lowAt(i)),
            band.highAt(i) + share * (band.highAt(j) - band.highAt(i))
        };
    }
}
