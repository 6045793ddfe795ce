package undercroft.plot.scale;

import java.util.Locale;

/**
 * Round values inside a range, 1, 2 or 5 times a power of ten apart (P. S. Heckbert, "Nice numbers for graph labels",
 * Graphics Gems, 1990).
 */
public record ValueTicks(double step, double first, int count, int decimals) {
    /** The closest such steps that give no more than {@code maxTicks} values from {@code low} to {@code high}. */
    public static ValueTicks of(double low, double high, int maxTicks) {
        if (!(high > low) || maxTicks < 1) {
            throw new IllegalArgumentException("ticks need a range and room for one");
        }
        int power = (int) Math.floor(Math.log10((high - low) / (maxTicks + 1)));
        while (true) {
            for (int mantissa : new int[] {1, 2, 5}) {
                double step = power < 0 ? mantissa / Math.pow(10, -power) : mantissa * Math.pow(10, power);
                double slack = step * 1e-9;
                double from = Math.ceil((low - slack) / step);
                double until = Math.floor((high + slack) / step);
                if (until - from + 1 <= maxTicks) {
                    return new ValueTicks(step, from * step, (int) (until - from + 1), Math.max(0, -power));
                }
            }
            power++;
        }
    }

    public double at(int index) {
        double value = first + index * step;
        return Math.abs(value) < step * 1e-6 ? 0 : value;
    }

    /** The value as written beside the axis. */
    public String label(int index, Locale locale) {
        return format(at(index), decimals, locale);
    }

    /** A number with fixed decimals, a true minus sign and never a minus zero. */
    public static String format(double value, int decimals, Locale locale) {
        double unit = Math.pow(10, -decimals);
        boolean zero = Math.abs(value) < unit / 2;
        String text = String.format(locale, "%." + decimals + "f", zero ? 0.0 : Math.abs(value));
        return value < 0 && !zero ? "\u2212" + text : text;
    }
}
