package undercroft.plot.scale;

/** One place on a time axis: major where a new day, month or year begins among smaller steps. */
public record TimeTick(long epochSecond, String label, boolean major) {}
