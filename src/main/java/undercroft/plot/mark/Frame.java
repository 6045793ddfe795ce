package undercroft.plot.mark;

/** An upright rectangle in pixels: left upper corner, width and height. */
public record Frame(double x, double y, double width, double height) {
    public Frame {
        if (!(width >= 0) || !(height >= 0)) {
            throw new IllegalArgumentException("a frame has no negative size");
        }
    }

    public double right() {
        return x + width;
    }

    public double bottom() {
        return y + height;
    }

    public boolean contains(double px, double py) {
        return px >= x && px <= right() && py >= y && py <= bottom();
    }

    public boolean contains(Frame other) {
        return other.x >= x && other.right() <= right() && other.y >= y && other.bottom() <= bottom();
    }

    public boolean overlaps(Frame other) {
        return x < other.right() && other.x < right() && y < other.bottom() && other.y < bottom();
    }
}
