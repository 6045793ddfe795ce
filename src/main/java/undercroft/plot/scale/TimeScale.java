package undercroft.plot.scale;

/** Straight map between a stretch of time and a stretch of pixels, with its inverse. */
public record TimeScale(long from, long until, double left, double right) {
    /** Closest look: one minute. */
    public static final long SHORTEST_SECONDS = 60;

    /** Farthest look: a hundred years. */
    public static final long LONGEST_SECONDS = 100L * 31_556_952;

    public TimeScale {
        if (until <= from || !(right > left)) {
            throw new IllegalArgumentException("a time scale needs some time and some room");
        }
    }

    public double xAt(long epochSecond) {
        return left + (double) (epochSecond - from) / (until - from) * (right - left);
    }

    public long epochAt(double x) {
        return Math.round(from + (x - left) / (right - left) * (until - from));
    }

    public double pixelsPerSecond() {
        return (right - left) / (until - from);
    }

    /** Shows {@code factor} times more closely (below 1: more widely); the instant under {@code x} stays where it is. */
    public TimeScale zoomedAbout(double x, double factor) {
        if (!(factor > 0)) {
            throw new IllegalArgumentException("a zoom factor is above zero");
        }
        double seconds = Math.max(SHORTEST_SECONDS, Math.min(LONGEST_SECONDS, (until - from) / factor));
        double share = (x - left) / (right - left);
        double held = from + share * (until - from);
        long newFrom = Math.round(held - share * seconds);
        return new TimeScale(newFrom, newFrom + Math.round(seconds), left, right);
    }

    /** Moves the picture by so many pixels; to the right brings earlier times into view. */
    public TimeScale pannedBy(double pixels) {
        long shift = Math.round(-pixels / pixelsPerSecond());
        return new TimeScale(from + shift, until + shift, left, right);
    }
}
