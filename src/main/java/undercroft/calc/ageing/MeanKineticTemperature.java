package undercroft.calc.ageing;

import java.util.Arrays;
import undercroft.series.Track;

/**
 * The one temperature that would have aged a product as much as the changing one did. Source: Haynes 1971, J. Pharm.
 * Sci. 60:927; USP &lt;1160&gt;, with an activation energy of 83.144 kJ/mol. Not for frozen goods.
 */
public final class MeanKineticTemperature {
    /** The pharmacopoeia's activation energy, kJ/mol: 10,000 K times the gas constant. */
    public static final double KILOJOULES_PER_MOLE = 83.144;

    private static final double REFERENCE_CELSIUS = 20;

    private MeanKineticTemperature() {}

    /**
     * Of single temperatures.
     *
     * @param celsius one or more, °C, above −273
     * @param weights time spent at each, zero or more, not all zero; any unit
     * @return °C, between the weighted mean and the highest
     */
    public static double of(double[] celsius, double[] weights) {
        if (celsius.length == 0 || celsius.length != weights.length) {
            throw new IllegalArgumentException("every temperature needs its weight");
        }
        double kelvin = KILOJOULES_PER_MOLE / Arrhenius.GAS_CONSTANT;
        double sum = 0;
        double total = 0;
        for (int i = 0; i < celsius.length; i++) {
            if (!(celsius[i] > -Arrhenius.ZERO_CELSIUS) || !(weights[i] >= 0) || !Double.isFinite(weights[i])) {
                throw new IllegalArgumentException("temperature " + i + " or its weight is impossible");
            }
            sum += weights[i] * Arrhenius.factor(kelvin, REFERENCE_CELSIUS, celsius[i]);
            total += weights[i];
        }
        if (!(total > 0)) {
            throw new IllegalArgumentException("the weights are all zero");
        }
        return celsiusAt(sum / total, kelvin);
    }

    /** Of single temperatures that count alike, °C. */
    public static double of(double... celsius) {
        double[] weights = new double[celsius.length];
        Arrays.fill(weights, 1);
        return of(celsius, weights);
    }

    /**
     * Of a stretch of a track, weighted by time, with 83.144 kJ/mol.
     *
     * @return °C; of a stretch without length or outside the track, the track's nearest value
     */
    public static double of(Track track, long fromEpochSecond, long untilEpochSecond) {
        return of(track, fromEpochSecond, untilEpochSecond, KILOJOULES_PER_MOLE);
    }

    /** The same with another activation energy, kJ/mol, above 0. */
    public static double of(Track track, long fromEpochSecond, long untilEpochSecond, double kilojoulesPerMole) {
        long from = Math.max(fromEpochSecond, track.timeAt(0));
        long until = Math.min(untilEpochSecond, track.timeAt(track.size() - 1));
        if (from >= until) {
            return track.valueAt(track.indexAt(fromEpochSecond));
        }
        double kelvin = kilojoulesPerMole / Arrhenius.GAS_CONSTANT;
        double days = (until - from) / Arrhenius.SECONDS_PER_DAY;
        return celsiusAt(Arrhenius.days(track, from, until, kelvin, REFERENCE_CELSIUS) / days, kelvin);
    }

    private static double celsiusAt(double factor, double kelvin) {
        double inverse = 1 / (REFERENCE_CELSIUS + Arrhenius.ZERO_CELSIUS) - Math.log(factor) / kelvin;
        return 1 / inverse - Arrhenius.ZERO_CELSIUS;
    }
}
