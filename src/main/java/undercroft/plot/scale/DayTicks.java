package undercroft.plot.scale;

import java.util.ArrayList;
import java.util.List;

/** Ticks that count days from an instant, such as the capping of a batch. */
public record DayTicks(long zeroEpochSecond, String word) {
    private static final long DAY = 86_400;
    private static final int[] STEPS = {1, 2, 5, 10, 20, 50, 100, 200, 500, 1000};

    /** At most so many, a word before the number of each. */
    public List<TimeTick> ticks(long from, long until, int most) {
        long days = (until - from) / DAY;
        int step = STEPS[STEPS.length - 1];
        for (int i = STEPS.length - 1; i >= 0 && days / STEPS[i] < most; i--) {
            step = STEPS[i];
        }
        List<TimeTick> ticks = new ArrayList<>();
        long first = Math.floorDiv(from - zeroEpochSecond + step * DAY - 1, step * DAY) * step;
        for (long day = first; zeroEpochSecond + day * DAY <= until; day += step) {
            ticks.add(new TimeTick(zeroEpochSecond + day * DAY, word + " " + day, day == 0));
        }
        return ticks;
    }
}
