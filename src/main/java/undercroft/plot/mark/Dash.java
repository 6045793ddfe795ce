package undercroft.plot.mark;

/** How a line is broken up, so that it can be told from others without its colour. */
public enum Dash {
    SOLID(0, 0),
    LONG(8, 3),
    DASHED(5, 4),
    DOTTED(1.5, 3);

    private final double on;
    private final double off;

    Dash(double on, double off) {
        this.on = on;
        this.off = off;
    }

    /** Pixels drawn; 0 for a line without breaks. */
    public double on() {
        return on;
    }

    /** Pixels left out; 0 for a line without breaks. */
    public double off() {
        return off;
    }
}
