package undercroft.plot.mark;

import java.util.List;

/** One thing on a picture, placed in pixels, with a role instead of a colour. */
public sealed interface Mark {
    /** Draws this mark and what it holds. */
    void drawWith(Pen pen);

    record Polyline(Points points, Stroke stroke) implements Mark {
        @Override
        public void drawWith(Pen pen) {
            pen.polyline(this);
        }
    }

    record Polygon(Points points, Role role, double opacity) implements Mark {
        @Override
        public void drawWith(Pen pen) {
            pen.polygon(this);
        }
    }

    record Rect(Frame frame, double cornerRadius, Role role, double opacity) implements Mark {
        @Override
        public void drawWith(Pen pen) {
            pen.rect(this);
        }
    }

    /** A sign around a point, filled with one role and outlined with another. */
    record Marker(MarkerShape shape, double x, double y, double radius, Role fill, Role outline) implements Mark {
        /** Width of the outline in pixels. */
        public static final double OUTLINE_WIDTH = 1.6;

        /** Corners of the sign; a circle has none. All signs cover about the same area. */
        public Points corners() {
            double r = radius;
            return switch (shape) {
                case CIRCLE -> Points.of();
                case TRIANGLE -> Points.of(x, y - 1.25 * r, x + 1.15 * r, y + 0.85 * r, x - 1.15 * r, y + 0.85 * r);
                case DIAMOND -> Points.of(x, y - 1.25 * r, x + 1.25 * r, y, x, y + 1.25 * r, x - 1.25 * r, y);
                case SQUARE ->
                    Points.of(
                            x - 0.9 * r,
                            y - 0.9 * r,
                            x + 0.9 * r,
                            y - 0.9 * r,
                            x + 0.9 * r,
                            y + 0.9 * r,
                            x - 0.9 * r,
                            y + 0.9 * r);
            };
        }

        @Override
        public void drawWith(Pen pen) {
            pen.marker(this);
        }
    }

    /** A text whose base line is at {@code y}; with a halo it gets a rim of paper to lift it off what lies below. */
    record Text(String text, double x, double y, Anchor anchor, TextStyle style, Role role, boolean halo)
            implements Mark {
        /** Width of the halo's stroke in pixels, half of it outside the letters. */
        public static final double HALO_WIDTH = 3;

        @Override
        public void drawWith(Pen pen) {
            pen.text(this);
        }
    }

    /** Marks of which nothing outside the frame is seen. */
    record Clipped(Frame frame, List<Mark> marks) implements Mark {
        public Clipped {
            marks = List.copyOf(marks);
        }

        @Override
        public void drawWith(Pen pen) {
            pen.beginClip(frame);
            marks.forEach(mark -> mark.drawWith(pen));
            pen.endClip();
        }
    }
}
