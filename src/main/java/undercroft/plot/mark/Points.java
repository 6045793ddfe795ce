package undercroft.plot.mark;

import java.util.Arrays;

/** Corners of a line or an area in pixels, x to the right and y downward. Immutable. */
public final class Points {
    private final double[] coordinates;

    private Points(double[] coordinates) {
        this.coordinates = coordinates;
    }

    /** Copies x, y, x, y, …; every number finite. */
    public static Points of(double... coordinates) {
        return new Builder(coordinates.length / 2).addAll(coordinates).build();
    }

    public int size() {
        return coordinates.length / 2;
    }

    public double x(int index) {
        return coordinates[2 * index];
    }

    public double y(int index) {
        return coordinates[2 * index + 1];
    }

    /** The part with x in the given range, cut where it crosses the ends; x must not fall along the line. */
    public Points between(double fromX, double untilX) {
        Builder part = new Builder(size());
        for (int i = 0; i < size(); i++) {
            if (i > 0 && x(i - 1) < fromX && x(i) > fromX) {
                part.add(fromX, yBetween(i - 1, fromX));
            }
            if (i > 0 && x(i - 1) < untilX && x(i) > untilX) {
                part.add(untilX, yBetween(i - 1, untilX));
            }
            if (x(i) >= fromX && x(i) <= untilX) {
                part.add(x(i), y(i));
            }
        }
        return part.build();
    }

    private double yBetween(int index, double x) {
        return y(index) + (x - x(index)) / (x(index + 1) - x(index)) * (y(index + 1) - y(index));
    }

    /** A closed outline: along this line and back along the other. */
    public Points backOver(Points other) {
        Builder outline = new Builder(size() + other.size()).addAll(coordinates);
        for (int i = other.size() - 1; i >= 0; i--) {
            outline.add(other.x(i), other.y(i));
        }
        return outline.build();
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Points that && Arrays.equals(coordinates, that.coordinates);
    }

    @Override
    public int hashCode() {
        return Arrays.hashCode(coordinates);
    }

    @Override
    public String toString() {
        return "Points" + Arrays.toString(coordinates);
    }

    /** Collects corners without boxing them. */
    public static final class Builder {
        private double[] coordinates;
        private int length;

        public Builder(int points) {
            coordinates = new double[Math.max(4, 2 * points)];
        }

        public Builder add(double x, double y) {
            if (!Double.isFinite(x) || !Double.isFinite(y)) {
                throw new IllegalArgumentException("a corner is not a number");
            }
            if (length == coordinates.length) {
                coordinates = Arrays.copyOf(coordinates, 2 * length);
            }
            coordinates[length++] = x;
            coordinates[length++] = y;
            return this;
        }

        Builder addAll(double[] xy) {
            for (int i = 0; i + 1 < xy.length; i += 2) {
                add(xy[i], xy[i + 1]);
            }
            return this;
        }

        public int size() {
            return length / 2;
        }

        public Points build() {
            return new Points(Arrays.copyOf(coordinates, length));
        }
    }
}
