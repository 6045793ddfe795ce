package undercroft.outlook;

import java.time.Instant;
import java.util.List;
import java.util.Random;
import java.util.function.DoubleUnaryOperator;
import undercroft.series.Band;
import undercroft.series.Span;
import undercroft.series.TimeSeries;

/** Invented courses for outlooks made by hand: the right shape, no physics. */
final class SampleTrajectories {
    private static final long HOUR = 3600;
    private static final long DAY = 24 * HOUR;
    private final long from;
    private final long now;
    private final long until;

    SampleTrajectories(Instant capped, Instant now) {
        this.from = capped.getEpochSecond();
        this.now = now.getEpochSecond();
        this.until = this.now + 60 * DAY;
    }

    Instant instant(double day) {
        return Instant.ofEpochSecond(from + Math.round(day * DAY));
    }

    double days() {
        return (now - from) / (double) DAY;
    }

    /** A share of the way from the residual to the end, after a lag. */
    static double share(double day, double tau) {
        return day < 1 ? 0 : 1 - Math.exp(-Math.pow((day - 1) / tau, 1.6));
    }

    Band carbonation(double residual, double end, double tau, double spread) {
        return band(6 * HOUR, day -> residual + (end - residual) * share(day, tau), day -> spread * share(day, tau));
    }

    Band pressure(double end, double tau, double celsius) {
        return band(
                2 * HOUR,
                day -> end * share(day, tau) * (1 + 0.03 * (degrees(day, celsius) - celsius)),
                day -> 0.06 * end * share(day, tau) * (isAhead(day) ? 2 : 1) + 0.03);
    }

    Band bottles(double celsius) {
        return band(2 * HOUR, day -> degrees(day, celsius), day -> isAhead(day) ? 2.5 : 0.25);
    }

    private boolean isAhead(double day) {
        return from + day * DAY > now;
    }

    private double degrees(double day, double celsius) {
        double spell = day > 20 && day < 28 && from + day * DAY < now ? 5 * Math.sin((day - 20) / 8 * Math.PI) : 0;
        return celsius + 1.2 * Math.sin(day * 2 * Math.PI / 9) + 0.5 * Math.sin(day * 2 * Math.PI) + spell;
    }

    Span gap() {
        return new Span(Math.max(from, now - 12 * DAY), Math.max(from, now - 9 * DAY));
    }

    TimeSeries air(double celsius) {
        Random noise = new Random(7);
        TimeSeries.Builder air = new TimeSeries.Builder();
        for (long at = from; at <= now; at += HOUR / 2) {
            double value = degrees((at - from) / (double) DAY, celsius) + noise.nextGaussian() * 0.25;
            if (!gap().contains(at)) {
                air.add(at, value);
            }
        }
        return air.build();
    }

    List<Span> gaps() {
        return gap().seconds() > DAY ? List.of(gap()) : List.of();
    }

    TimeSeries light(double perDay) {
        TimeSeries.Builder dose = new TimeSeries.Builder();
        for (long at = from; at <= now; at += DAY) {
            dose.add(at, perDay * (at - from) / DAY);
        }
        return dose.build();
    }

    private Band band(long step, DoubleUnaryOperator median, DoubleUnaryOperator spread) {
        int size = (int) ((until - from) / step) + 1;
        long[] times = new long[size];
        double[][] levels = new double[5][size];
        double[] widths = {-1, -0.41, 0, 0.41, 1};
        for (int i = 0; i < size; i++) {
            times[i] = from + i * step;
            double day = (times[i] - from) / (double) DAY;
            for (int level = 0; level < 5; level++) {
                levels[level][i] = median.applyAsDouble(day) + widths[level] * spread.applyAsDouble(day);
            }
        }
        return Band.of(times, levels);
    }
}
