package undercroft.store.logger;

import java.util.Arrays;

/** Figures that stand for a fault and not for a temperature. */
final class Sentinels {
    /** No cellar, loft or freezer is outside; a probe that says so is broken. */
    static final double COLDEST = -60;

    static final double HOTTEST = 80;

    /**
     * As written, in any unit: common practice of logger makers, no source. 32767, 65535 and their tenths and hundredths
     * are the ends of 16-bit counters.
     */
    private static final double[] WRITTEN = sorted(
            999, -999, 999.9, -999.9, 9999, -9999, 99999, -99999, 32767, -32768, 3276.7, -3276.8, 327.67, -327.68,
            65535, 6553.5, 655.35);

    /** In °C: −127 is what a common one-wire driver gives for no answer, 85 such a probe's value at power-on. */
    private static final double NO_ANSWER = -127;

    private static final double POWER_ON = 85;

    private Sentinels() {}

    static boolean isSentinel(double written, double celsius) {
        if (celsius >= COLDEST && celsius <= HOTTEST) {
            return false;
        }
        return celsius == NO_ANSWER || celsius == POWER_ON || Arrays.binarySearch(WRITTEN, written) >= 0;
    }

    private static double[] sorted(double... values) {
        Arrays.sort(values);
        return values;
    }
}
