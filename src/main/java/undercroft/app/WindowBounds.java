package undercroft.app;

import java.util.Comparator;
import java.util.List;

/** A rectangle on the desktop, in pixels of the toolkit. */
public record WindowBounds(double x, double y, double width, double height) {
    /** The least size the window is laid out for. */
    public static final double LEAST_WIDTH = 960;

    public static final double LEAST_HEIGHT = 540;

    public boolean isSound() {
        return Double.isFinite(x) && Double.isFinite(y) && width >= 1 && height >= 1 && width + height < 1e6;
    }

    /**
     * The nearest to it that lies on one screen with all of it: the screen that shows most of it, or the first.
     *
     * @param screens what is free on each, at least one
     */
    public WindowBounds within(List<WindowBounds> screens) {
        WindowBounds screen =
                screens.stream().max(Comparator.comparingDouble(this::shared)).orElseThrow();
        if (shared(screen) <= 0) {
            return screens.get(0).middle(width, height);
        }
        double w = Math.min(Math.max(width, LEAST_WIDTH), screen.width);
        double h = Math.min(Math.max(height, LEAST_HEIGHT), screen.height);
        return new WindowBounds(
                Math.max(screen.x, Math.min(x, screen.x + screen.width - w)),
                Math.max(screen.y, Math.min(y, screen.y + screen.height - h)),
                w,
                h);
    }

    /** A window in the middle of this screen, never larger than it. */
    public WindowBounds middle(double wantedWidth, double wantedHeight) {
        double w = Math.min(wantedWidth, width);
        double h = Math.min(wantedHeight, height);
        return new WindowBounds(x + (width - w) / 2, y + (height - h) / 2, w, h);
    }

    private double shared(WindowBounds other) {
        double across = Math.min(x + width, other.x + other.width) - Math.max(x, other.x);
        double down = Math.min(y + height, other.y + other.height) - Math.max(y, other.y);
        return across > 0 && down > 0 ? across * down : 0;
    }
}
