package undercroft.calc.spell;

import java.util.Arrays;
import undercroft.series.Track;

/**
 * What a history shows of a place's days, in days of 24 h counted back from its end: the mean of each, how much they
 * wander from a season, and the shape of the day.
 */
final class DailyCycle {
    static final int DAY = 86_400;
    private static final int SHAPE_DAYS = 14;
    private static final double FEWEST_SHARE = 0.5;

    private final long end;
    /** By days before the end, 0 the last; NaN where less than half the day is known. */
    private final double[] means;

    private final double[] shape = new double[24];

    private DailyCycle(long end, double[] means) {
        this.end = end;
        this.means = means;
    }

    static DailyCycle of(BottleHistory history) {
        Track track = history.track();
        boolean[] known = known(history);
        int step = track.stepSeconds();
        long end = track.timeAt(track.size() - 1) + step;
        int days = (int) Math.max(1, ((long) track.size() * step + DAY - 1) / DAY);
        double[] sums = new double[days];
        int[] counts = new int[days];
        for (int i = 0; i < track.size(); i++) {
            if (known[i]) {
                int day = (int) ((end - 1 - track.timeAt(i)) / DAY);
                sums[day] += track.valueAt(i);
                counts[day]++;
            }
        }
        double[] means = new double[days];
        double fewest = FEWEST_SHARE * DAY / step;
        for (int day = 0; day < days; day++) {
            means[day] = counts[day] > 0 && counts[day] >= fewest ? sums[day] / counts[day] : Double.NaN;
        }
        DailyCycle habits = new DailyCycle(end, means);
        habits.learnShape(track, known);
        return habits;
    }

    /** Days with a mean. */
    int knownDays() {
        return (int) Arrays.stream(means).filter(x -> !Double.isNaN(x)).count();
    }

    int days() {
        return means.length;
    }

    /** Mean of the day that ended so many days before the end; NaN where unknown. */
    double meanBefore(int day) {
        return means[day];
    }

    /** The middle of that day. */
    long middleOf(int day) {
        return end - (long) day * DAY - DAY / 2;
    }

    /** The nearest day to the end that has a mean, or −1. */
    int lastKnownDay() {
        for (int day = 0; day < means.length; day++) {
            if (!Double.isNaN(means[day])) {
                return day;
            }
        }
        return -1;
    }

    /** By how much the hour of the (UTC) day is usually off the day's mean, K. */
    double shapeAt(long epochSecond) {
        double hour = Math.floorMod(epochSecond, (long) DAY) / 3600.0 - 0.5;
        int before = Math.floorMod((int) Math.floor(hour), 24);
        double share = hour - Math.floor(hour);
        return shape[before] + share * (shape[(before + 1) % 24] - shape[before]);
    }

    private void learnShape(Track track, boolean[] known) {
        double[] sums = new double[24];
        int[] counts = new int[24];
        for (int i = track.size() - 1; i >= 0; i--) {
            long time = track.timeAt(i);
            int day = (int) ((end - 1 - time) / DAY);
            if (day >= SHAPE_DAYS) {
                break;
            }
            if (known[i] && !Double.isNaN(means[day])) {
                int hour = (int) (Math.floorMod(time, (long) DAY) / 3600);
                sums[hour] += track.valueAt(i) - means[day];
                counts[hour]++;
            }
        }
        for (int hour = 0; hour < 24; hour++) {
            shape[hour] = counts[hour] > 0 ? sums[hour] / counts[hour] : 0;
        }
        double mean = Arrays.stream(shape).average().orElse(0);
        for (int hour = 0; hour < 24; hour++) {
            shape[hour] -= mean;
        }
    }

    /** One pass over the patches, since asking the history at each instant would search them anew. */
    private static boolean[] known(BottleHistory history) {
        Track track = history.track();
        boolean[] known = new boolean[track.size()];
        Arrays.fill(known, true);
        for (BottleHistory.Patch patch : history.patches()) {
            if (patch.filling() == BottleHistory.Filling.UNKNOWN) {
                for (int i = track.indexAt(patch.span().fromInclusive()); i < known.length; i++) {
                    if (track.timeAt(i) >= patch.span().untilExclusive()) {
                        break;
                    }
                    known[i] = false;
                }
            }
        }
        return known;
    }
}
