package undercroft.calc.conditioning;

import undercroft.series.Track;

/**
 * A bottle's temperature from capping on, in steps. Between grid points of the track it runs straight; neighbours that
 * differ little are joined and told as mean and standard deviation, which is enough because the lag and the work only
 * see what a step adds to the yeast's clock. Every instant asked for ends a step, so that nothing has to be interpolated
 * later.
 */
final class Steps {
    static final double SECONDS_PER_DAY = 86400;

    /** Widest range of temperatures in one step, K. */
    private static final double WIDEST_KELVIN = 5;

    /** Widest difference in what is known of it, K. */
    private static final double ALIKE_SPREAD_KELVIN = 0.05;

    final double[] days;
    final double[] celsius;

    /** Standard deviation of the temperature within the step, K. */
    final double[] swing;

    /** Standard deviation of what is known of the temperature, K. */
    final double[] spread;

    final double[] endEpochSecond;

    /** How many of the instants lie at or before the end of the step. */
    final int[] instantsPassed;

    /** How many instants lie at or before capping. */
    final int instantsBefore;

    final int size;

    /** The same time in fewer pieces, for what only goes on slowly. */
    final Legs legs;

    private Steps(Builder built, int instantsBefore, long[] instants) {
        this.days = built.days;
        this.celsius = built.celsius;
        this.spread = built.spread;
        this.swing = built.squares;
        for (int s = 0; s < built.size; s++) {
            swing[s] = Math.sqrt(built.squares[s] / days[s]);
        }
        this.endEpochSecond = built.end;
        this.instantsPassed = built.passed;
        this.size = built.size;
        this.instantsBefore = instantsBefore;
        this.legs = Legs.of(this, instants);
    }

    /**
     * Cuts a track into steps.
     *
     * @param instants rising epoch seconds, equal neighbours allowed
     * @param untilEpochSecond where to stop, at the latest at the track's last grid point
     */
    static Steps of(Track bottle, long cappedEpochSecond, long[] instants, long untilEpochSecond) {
        if (cappedEpochSecond < bottle.timeAt(0)) {
            throw new IllegalArgumentException("the track begins after capping");
        }
        for (int i = 1; i < instants.length; i++) {
            if (instants[i] < instants[i - 1]) {
                throw new IllegalArgumentException("the instants must rise");
            }
        }
        int before = 0;
        while (before < instants.length && instants[before] <= cappedEpochSecond) {
            before++;
        }
        long until = Math.min(untilEpochSecond, bottle.timeAt(bottle.size() - 1));
        Builder builder = new Builder(2 * (bottle.size() + instants.length));
        int next = before;
        long from = cappedEpochSecond;
        for (int i = bottle.indexAt(cappedEpochSecond); from < until && i + 1 < bottle.size(); i++) {
            double perSecond = (bottle.valueAt(i + 1) - bottle.valueAt(i)) / bottle.stepSeconds();
            double spread = (bottle.spreadAt(i) + bottle.spreadAt(i + 1)) / 2;
            long end = Math.min(until, bottle.timeAt(i + 1));
            while (from < end) {
                long cut = next < instants.length ? Math.min(end, instants[next]) : end;
                while (next < instants.length && instants[next] <= cut) {
                    next++;
                }
                long longest = longestAfter(from - cappedEpochSecond);
                double middle = (from + cut) / 2.0 - bottle.timeAt(i);
                double celsius = bottle.valueAt(i) + perSecond * middle;
                builder.add(from, cut, celsius, perSecond * (cut - from), spread, next, longest);
                from = cut;
            }
        }
        return new Steps(builder, before, instants);
    }

    /** Longest step in seconds: the lag bends the course and loss of yeast weighs most while there is much to do. */
    private static long longestAfter(long secondsSinceCapping) {
        long days = secondsSinceCapping / 86400;
        long hours = days < 14 ? 3 : days < 45 ? 6 : 12;
        return hours * 3600;
    }

    /** Collects steps in arrays that are long enough from the start, joining those that are alike. */
    private static final class Builder {
        private final double[] days;
        private final double[] celsius;
        private final double[] spread;
        private final double[] squares;
        private final double[] end;
        private final int[] passed;
        private int size;
        private double coldest;
        private double warmest;
        private boolean closedByInstant;

        private Builder(int most) {
            days = new double[most];
            celsius = new double[most];
            spread = new double[most];
            squares = new double[most];
            end = new double[most];
            passed = new int[most];
        }

        private void add(
                long from, long until, double temperature, double rise, double deviation, int instants, long longest) {
            double length = (until - from) / SECONDS_PER_DAY;
            int before = size > 0 ? passed[size - 1] : 0;
            if (joins(temperature, deviation, length, longest)) {
                int last = size - 1;
                double whole = days[last] + length;
                double away = temperature - celsius[last];
                celsius[last] += away * length / whole;
                squares[last] += away * (temperature - celsius[last]) * length;
                spread[last] += (deviation - spread[last]) * length / whole;
                days[last] = whole;
                coldest = Math.min(coldest, temperature);
                warmest = Math.max(warmest, temperature);
            } else {
                days[size] = length;
                celsius[size] = temperature;
                spread[size] = deviation;
                coldest = temperature;
                warmest = temperature;
                size++;
            }
            // A straight rise has a twelfth of its square as variance.
            squares[size - 1] += rise * rise / 12 * length;
            end[size - 1] = until;
            passed[size - 1] = instants;
            closedByInstant = instants != before;
        }

        private boolean joins(double temperature, double deviation, double length, long longest) {
            double range = Math.max(warmest, temperature) - Math.min(coldest, temperature);
            return size > 0
                    && !closedByInstant
                    && range <= WIDEST_KELVIN
                    && Math.abs(deviation - spread[size - 1]) <= ALIKE_SPREAD_KELVIN
                    && (days[size - 1] + length) * SECONDS_PER_DAY <= longest;
        }
    }
}
