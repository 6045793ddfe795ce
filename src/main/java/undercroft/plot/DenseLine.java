package undercroft.plot;

import undercroft.plot.mark.Points;

/** The area a line of many points a pixel covers: from column to column as high as it goes and as deep. */
record DenseLine(Points area) {
    /** The line's x must not fall; {@code width} is that of its stroke. */
    static DenseLine of(Points line, double width) {
        Points.Builder upper = new Points.Builder(64);
        Points.Builder lower = new Points.Builder(64);
        int i = 0;
        while (i < line.size()) {
            double column = Math.floor(line.x(i));
            // The stroke from the column before comes in at this height, and is part of what is covered here.
            double top = i == 0 ? line.y(i) : line.y(i - 1);
            double bottom = top;
            double left = line.x(i);
            double right = left;
            for (; i < line.size() && Math.floor(line.x(i)) == column; i++) {
                top = Math.min(top, line.y(i));
                bottom = Math.max(bottom, line.y(i));
                right = line.x(i);
            }
            double x = (left + right) / 2;
            upper.add(x, top - width / 2);
            lower.add(x, bottom + width / 2);
        }
        return new DenseLine(upper.build().backOver(lower.build()));
    }
}
