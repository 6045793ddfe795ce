package undercroft.calc.gas;

import java.util.Arrays;
import java.util.Comparator;

/**
 * The warmest storage of each of many possible bottles: where its pressure, once everything has fermented, first passes
 * the working pressure. Heat limit and the chance of being over it at a temperature are read from the same values, so they
 * cannot disagree: the chance is 5 % exactly at the heat limit. Immutable.
 */
public final class LimitTemperatures {
    private static final double COLDEST = 0;
    private static final double FIVE_PERCENT = 0.05;

    private final double[] celsius;
    private final double[] below;
    private final double warmestCelsius;

    /** Pressures of all the bottles at a temperature. */
    @FunctionalInterface
    public interface Bottles {
        /** Writes the gauge pressure of every bottle at a temperature, bar. */
        void gaugeBar(double celsius, double[] bars);
    }

    private LimitTemperatures(double[] celsius, double[] below, double warmestCelsius) {
        this.celsius = celsius;
        this.below = below;
        this.warmestCelsius = warmestCelsius;
    }

    /**
     * Solves every bottle's own limit on rows of temperature 1.25 K apart from 0 to 60 °C, straight between them.
     *
     * @param weights how much each bottle counts, above 0 in all
     * @param limits working pressure, and the warmth the material is trusted with
     */
    public static LimitTemperatures of(Bottles bottles, double[] weights, PressureLimits limits) {
        int n = weights.length;
        double[] own = new double[n];
        Arrays.fill(own, Double.POSITIVE_INFINITY);
        double[] now = new double[n];
        double[] before = new double[n];
        double limit = limits.workingPressureBar();
        for (double at = COLDEST; at <= Require.WARMEST_CELSIUS; at += PressureTable.STEP_KELVIN) {
            bottles.gaugeBar(at, now);
            for (int i = 0; i < n; i++) {
                if (own[i] == Double.POSITIVE_INFINITY && now[i] > limit) {
                    own[i] = at == COLDEST
                            ? Double.NEGATIVE_INFINITY
                            : at - PressureTable.STEP_KELVIN * (now[i] - limit) / (now[i] - before[i]);
                }
            }
            double[] swap = before;
            before = now;
            now = swap;
        }
        return sorted(own, weights, limits.warmestCelsius());
    }

    private static LimitTemperatures sorted(double[] own, double[] weights, double warmestCelsius) {
        Integer[] order = new Integer[own.length];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, Comparator.comparingDouble(i -> own[i]));
        double[] celsius = new double[own.length];
        double[] below = new double[own.length];
        double sum = 0;
        for (int i = 0; i < order.length; i++) {
            sum += weights[order[i]];
            celsius[i] = own[order[i]];
            below[i] = sum;
        }
        for (int i = 0; i < below.length; i++) {
            below[i] /= sum;
        }
        return new LimitTemperatures(celsius, below, warmestCelsius);
    }

    /** The lower limit of two at every chance: at each temperature the larger chance of being over. */
    public LimitTemperatures orLower(LimitTemperatures other) {
        double[] all = Arrays.copyOf(celsius, celsius.length + other.celsius.length);
        System.arraycopy(other.celsius, 0, all, celsius.length, other.celsius.length);
        Arrays.sort(all);
        double[] larger = new double[all.length];
        for (int i = 0; i < all.length; i++) {
            larger[i] = Math.max(shareUpTo(all[i]), other.shareUpTo(all[i]));
        }
        return new LimitTemperatures(all, larger, Math.min(warmestCelsius, other.warmestCelsius));
    }

    private double shareUpTo(double limitCelsius) {
        return probabilityOver(Math.nextUp(limitCelsius));
    }

    /** The warmest storage at which at most one bottle in twenty is over its working pressure. */
    public HeatLimit heatLimit() {
        return quantile(FIVE_PERCENT);
    }

    /** The warmest storage for the bottle in the middle: what the heat limit would be if all were known. */
    public HeatLimit median() {
        return quantile(0.5);
    }

    /** The probability, 0 to 1, of being over the working pressure at a storage temperature, everything fermented. */
    public double probabilityOver(double storageCelsius) {
        int low = 0;
        int high = celsius.length;
        while (low < high) {
            int middle = (low + high) >>> 1;
            if (celsius[middle] < storageCelsius) {
                low = middle + 1;
            } else {
                high = middle;
            }
        }
        return low == 0 ? 0 : below[low - 1];
    }

    private HeatLimit quantile(double share) {
        int i = 0;
        while (i + 1 < below.length && below[i] < share) {
            i++;
        }
        return limit(celsius[i]).cappedAt(warmestCelsius);
    }

    private static HeatLimit limit(double celsius) {
        if (celsius == Double.NEGATIVE_INFINITY) {
            return new HeatLimit(COLDEST, HeatLimit.Reach.BEYOND_WHEN_COLD);
        }
        if (celsius == Double.POSITIVE_INFINITY) {
            return new HeatLimit(Require.WARMEST_CELSIUS, HeatLimit.Reach.NOT_REACHED);
        }
        return new HeatLimit(celsius, HeatLimit.Reach.PRESSURE);
    }
}
