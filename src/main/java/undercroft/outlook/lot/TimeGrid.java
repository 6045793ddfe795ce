package undercroft.outlook.lot;

import undercroft.quantity.Interval;
import undercroft.series.Band;
import undercroft.series.Track;

/** The instants at which a lot's course is told: evenly from capping to now, then closely for three weeks, then on to the
 * horizon. */
final class TimeGrid {
    private static final int PAST = 240;
    private static final int AHEAD = 120;
    /** The first three weeks ahead are told closely: that is when something can be done. */
    private static final int NEAR = 63;

    private static final long NEAR_STEP_SECONDS = 8 * 3600;

    private final long[] instants;
    private final int present;

    private TimeGrid(long[] instants, int present) {
        this.instants = instants;
        this.present = present;
    }

    /** Epoch seconds, rising; read only. */
    long[] instants() {
        return instants;
    }

    /** The index of now. */
    int present() {
        return present;
    }

    static TimeGrid of(long capped, long now, long horizon) {
        long past = Math.max(1, now - capped);
        int pastCount = (int) Math.max(1, Math.min(PAST, past / 1800));
        long ahead = Math.max(1, horizon - now);
        int aheadCount = (int) Math.max(1, Math.min(AHEAD, ahead / 3600));
        long[] instants = new long[pastCount + 1 + aheadCount];
        for (int i = 0; i <= pastCount; i++) {
            instants[i] = now - past + Math.round((double) past * i / pastCount);
        }
        boolean far = ahead > aheadCount * NEAR_STEP_SECONDS;
        for (int i = 1; i <= aheadCount; i++) {
            long since = far
                    ? i <= NEAR
                            ? i * NEAR_STEP_SECONDS
                            : NEAR * NEAR_STEP_SECONDS
                                    + Math.round(
                                            (ahead - NEAR * NEAR_STEP_SECONDS) * (double) (i - NEAR) / (AHEAD - NEAR))
                    : Math.round((double) ahead * i / aheadCount);
            instants[pastCount + i] = now + since;
        }
        return new TimeGrid(instants, pastCount);
    }

    /** The track at these instants, with low and high from the coldest and warmest since the instant before. */
    Band temperatureBand(Track bottles) {
        int n = instants.length;
        double[][] levels = new double[5][n];
        for (int i = 0; i < n; i++) {
            int first = bottles.indexAt(i == 0 ? instants[0] : instants[i - 1]);
            int last = bottles.indexAt(instants[i]);
            double coldest = Double.POSITIVE_INFINITY;
            double warmest = Double.NEGATIVE_INFINITY;
            double sum = 0;
            for (int j = first; j <= last; j++) {
                coldest = Math.min(coldest, bottles.valueAt(j));
                warmest = Math.max(warmest, bottles.valueAt(j));
                sum += bottles.valueAt(j);
            }
            double mean = sum / (last - first + 1);
            double spread = bottles.spreadAt(last);
            levels[0][i] = coldest - Interval.NORMAL_95 * spread;
            levels[1][i] = mean - Interval.NORMAL_75 * spread;
            levels[2][i] = mean;
            levels[3][i] = mean + Interval.NORMAL_75 * spread;
            levels[4][i] = warmest + Interval.NORMAL_95 * spread;
        }
        return Band.of(instants.clone(), levels);
    }
}
