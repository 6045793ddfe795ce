package undercroft.plot.mark;

/** How a line is drawn: role, width in pixels, dash, and opacity from 0 to 1. */
public record Stroke(Role role, double width, Dash dash, double opacity) {
    public Stroke {
        if (!(width > 0) || !(opacity >= 0 && opacity <= 1)) {
            throw new IllegalArgumentException("a stroke has a width and an opacity from 0 to 1");
        }
    }

    public static Stroke of(Role role, double width) {
        return new Stroke(role, width, Dash.SOLID, 1);
    }

    public Stroke with(Dash newDash) {
        return new Stroke(role, width, newDash, opacity);
    }

    public Stroke withOpacity(double newOpacity) {
        return new Stroke(role, width, dash, newOpacity);
    }
}
