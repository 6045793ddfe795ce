package undercroft.calc.spell;

import java.util.Arrays;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import undercroft.series.TimeSeries;

/**
 * A logger's series without what no room ever had: markers of a dead sensor, impossible temperatures, and spikes. Made
 * by {@link #of}; tells for each raw sample what became of it.
 */
public final class CleanSeries {
    /** What became of a sample. */
    public enum Verdict {
        /** Stays as it was. */
        KEPT(0),
        /** An isolated outlier, replaced by the straight line between the readings beside it. */
        SPIKE(1),
        /** Dropped: a number that sensors send when they are lost, such as −127 or 85. */
        SENTINEL(2),
        /** Dropped: outside −40 to 70 °C. */
        IMPOSSIBLE(3);

        private static final List<Verdict> BY_CODE = List.of(KEPT, SPIKE, SENTINEL, IMPOSSIBLE);

        private final byte code;

        Verdict(int code) {
            this.code = (byte) code;
        }
    }

    /** Coldest and warmest that is taken for a reading, °C. */
    static final double COLDEST = -40;

    static final double WARMEST = 70;

    // DS18B20 sensors send −127 when unplugged and 85 after power-on (Maxim data sheet 19-7487); the rest is common
    // practice of loggers. Only −99 to 85 could pass for a temperature at all.
    private static final double[] SENTINELS = {
        -32768, -9999, -999.9, -999, -888, -273.15, -273, -200, -127, -99.9, -99, 85, 99.9, 127, 255, 327.67, 850, 888,
        999, 999.9, 9999, 32767
    };

    private final TimeSeries raw;
    private final TimeSeries series;
    private final byte[] verdicts;
    private final Map<Verdict, Integer> counts;

    private CleanSeries(TimeSeries raw, TimeSeries series, byte[] verdicts, Map<Verdict, Integer> counts) {
        this.raw = raw;
        this.series = series;
        this.verdicts = verdicts;
        this.counts = counts;
    }

    /**
     * Cleans a series of °C. A spike is at most two samples in a row, with less than an hour between the sample before and
     * the one after, that lie more than 3 K, and more than three times what the two samples on either side differ by,
     * beyond all four of those. A filter over a wider window (Hampel 1974, JASA 69:383) was given up: it took hot
     * afternoons for faults of the sensor. The last two samples are never taken for a spike, as nothing has returned yet.
     */
    public static CleanSeries of(TimeSeries raw) {
        int size = raw.size();
        byte[] verdicts = new byte[size];
        int sound = 0;
        for (int i = 0; i < size; i++) {
            double value = raw.valueAt(i);
            Verdict verdict = isSentinel(value)
                    ? Verdict.SENTINEL
                    : value < COLDEST || value > WARMEST ? Verdict.IMPOSSIBLE : Verdict.KEPT;
            verdicts[i] = verdict.code;
            sound += verdict == Verdict.KEPT ? 1 : 0;
        }
        long[] times = new long[sound];
        double[] values = new double[sound];
        for (int i = 0, next = 0; i < size; i++) {
            if (verdicts[i] == Verdict.KEPT.code) {
                times[next] = raw.timeAt(i);
                values[next] = raw.valueAt(i);
                next++;
            }
        }
        double[] repaired = SpikeFilter.repair(times, values);
        for (int i = 0, next = 0; i < size; i++) {
            if (verdicts[i] == Verdict.KEPT.code) {
                if (repaired[next] != values[next]) {
                    verdicts[i] = Verdict.SPIKE.code;
                }
                next++;
            }
        }
        Map<Verdict, Integer> counts = new EnumMap<>(Verdict.class);
        for (Verdict verdict : Verdict.values()) {
            counts.put(verdict, 0);
        }
        for (byte verdict : verdicts) {
            counts.merge(Verdict.BY_CODE.get(verdict), 1, Integer::sum);
        }
        // A log without a fault is its own clean series, so that it is held once.
        TimeSeries series = counts.get(Verdict.KEPT) == size ? raw : TimeSeries.of(times, repaired);
        return new CleanSeries(raw, series, verdicts, counts);
    }

    /** What is kept and repaired, °C. */
    public TimeSeries series() {
        return series;
    }

    /** What came in. */
    public TimeSeries raw() {
        return raw;
    }

    /** What became of the raw sample at an index. */
    public Verdict verdictAt(int index) {
        return Verdict.BY_CODE.get(verdicts[index]);
    }

    public int count(Verdict verdict) {
        return counts.get(verdict);
    }

    /** Samples dropped for any reason. */
    public int droppedCount() {
        return count(Verdict.SENTINEL) + count(Verdict.IMPOSSIBLE);
    }

    private static boolean isSentinel(double value) {
        if (value > -99 && value < 85) {
            return false;
        }
        return Arrays.binarySearch(SENTINELS, value) >= 0;
    }
}
